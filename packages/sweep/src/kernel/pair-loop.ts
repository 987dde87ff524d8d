import type { Ref } from './graph';
import { fillWith, padded, partOf, type Vector, vector } from './lanes';
import type { Kin, Side } from './places';
import type { Special } from './specialize';
import { bindAll, block, type Kept, readySides, stageOf } from './staged';

/** What comes out for pairs, side by side. */
export type Found = {
  readonly levels: Uint8Array;
  /** The place of the binding limit among the topic's, or -1. */
  readonly bindings: Int8Array;
  readonly leftLo: Float64Array;
  readonly leftHi: Float64Array;
};

export const roomFor = (pairs: number): Found => ({
  levels: new Uint8Array(pairs),
  bindings: new Int8Array(pairs),
  leftLo: new Float64Array(pairs),
  leftHi: new Float64Array(pairs),
});

/** Written where a kernel cannot tell, and the engine itself must be asked. */
export const askEngine = 255;

const numbersOf = (found: Float64Array | Uint8Array | undefined): Float64Array => {
  if (found instanceof Float64Array) return found;
  throw new Error('A level is a number.');
};

/** What comes out, place by place: the least and the greatest level, and what else is wanted. */
type Ends = readonly (Float64Array | Uint8Array)[];

/** The verdict of some columns told alike, each in its place behind where a row begins. */
function putLevels(into: Uint8Array, start: number, members: Int32Array, ends: Ends): void {
  const [least, most] = [numbersOf(ends[0]), numbersOf(ends[1])];
  for (let i = 0; i < members.length; i += 1) {
    const level = least[i] ?? askEngine;
    into[start + (members[i] ?? 0)] = level === most[i] ? level : askEngine;
  }
}

/** What binds, both ends of what is left of it, and whether the engine must be asked, where that is wanted. */
export function putRoom(into: Found, start: number, members: Int32Array, ends: Ends): void {
  const [binding, lo, hi, unsure] = ends;
  if (!binding || !lo || !hi || !unsure) return;
  for (let i = 0; i < members.length; i += 1) {
    const to = start + (members[i] ?? 0);
    if (unsure[i] !== 0) into.levels[to] = askEngine;
    into.bindings[to] = binding[i] ?? -1;
    into.leftLo[to] = lo[i] ?? 0;
    into.leftHi[to] = hi[i] ?? 0;
  }
}

/** Judges one row of a kin, by its place in it, with all columns of another. */
export type KinJudge = (at: number, into: Found) => void;

/** What hangs on the case, on each row and on each column of two kins, by the steps made for them. */
function throughKins(special: Special, kept: Kept, rows: Kin, columns: Kin) {
  const part = (stage: Side | 'case', whole: Vector): Vector => {
    if (stage === 'case') return whole;
    const { from, size } = stage === 'rows' ? rows : columns;
    return partOf(whole, from, size);
  };
  const places = { rows: padded(rows.size), columns: padded(columns.size) };
  return readySides(special.staged, places, (stage, ref) => {
    const whole = kept[stage].get(special.inputs.get(ref) ?? -1);
    return whole && part(stage, whole);
  });
}

/** What comes out, as numbers or as truths. */
const endOf = ({ sort, of }: Vector): Float64Array | Uint8Array => {
  if (sort === 'bits') throw new Error('What comes out of a pair is no bits.');
  return of;
};

/** The steps of a pair over some columns, for whatever row is put in. */
export type PairSteps = {
  /** Takes in columns and a case that are others than before. */
  readonly refresh: () => void;
  readonly run: (row: number) => void;
  /** Puts what came out of the row where it belongs, behind where the row begins. */
  readonly put: (into: Found, start: number, members: Int32Array) => void;
};

/** Steps of some columns, bound for whatever row is put in. */
export function columnsBound(special: Special, kept: Kept, from: number, n: number): PairSteps {
  const { steps, stages } = special.staged;
  const ends = new Set(special.outputs);
  const out = new Map<Ref, Vector>();
  for (const ref of stages.pairs.own) {
    const step = steps[ref];
    if (step && ends.has(ref)) out.set(ref, vector(step.sort, n));
  }
  const leaves = new Map<Ref, Vector>();
  /** What a row tells stands at every place of a vector, anew for each row; what a case tells, for each case. */
  const ofRow: { readonly into: Vector; readonly of: Vector }[] = [];
  const ofCase: { readonly into: Vector; readonly of: Vector }[] = [];
  const leaf = (ref: Ref): Vector => {
    const before = leaves.get(ref);
    if (before) return before;
    const step = steps[ref];
    const stage = step ? stageOf(step) : 'case';
    const column = stage === 'columns' ? kept.columns.get(ref) : undefined;
    const found = column ? partOf(column, from, n) : vector(step?.sort ?? 'number', n);
    const row = stage === 'rows' ? kept.rows.get(ref) : undefined;
    const same = stage === 'case' ? kept.case.get(ref) : undefined;
    if (row) ofRow.push({ into: found, of: row });
    else if (same) ofCase.push({ into: found, of: same });
    else if (!column) fillWith(found, step?.value ?? 0);
    leaves.set(ref, found);
    return found;
  };
  const bounds = bindAll(steps, stages.pairs.own, n, leaf, (ref) => out.get(ref));
  const found = special.outputs.map((ref) => out.get(ref) ?? leaf(ref)).map(endOf);
  const run = (row: number): void => {
    for (const { into, of } of ofRow) fillWith(into, of.of[row] ?? 0);
    for (const step of bounds) step();
  };
  const refresh = (): void => {
    for (const { into, of } of ofCase) fillWith(into, of.of[0] ?? 0);
  };
  const room = found.slice(2);
  const put: PairSteps['put'] = (into, start, members) => {
    putLevels(into.levels, start, members, found);
    putRoom(into, start, members, room);
  };
  return { refresh, run, put };
}

/** A program made for two kins, ready to be run over them in one case after another. */
export type ReadyKins = {
  /** Takes in what another case makes of the sides. */
  readonly refresh: () => void;
  readonly judge: KinJudge;
};

export function kinsReady(special: Special, whole: Kept, rows: Kin, columns: Kin): ReadyKins {
  const { kept, run: reckonSides } = throughKins(special, whole, rows, columns);
  const parts = Array.from({ length: Math.ceil(columns.size / block) }, (_, part) => {
    const from = part * block;
    const n = Math.min(block, columns.size - from);
    const steps = columnsBound(special, kept, from, n);
    return { ...steps, members: columns.members.subarray(from, from + n) };
  });
  const refresh = (): void => {
    reckonSides();
    for (const part of parts) part.refresh();
  };
  const judge: KinJudge = (row, into) => {
    for (const { run, put, members } of parts) {
      run(row);
      put(into, 0, members);
    }
  };
  return { refresh, judge };
}
