import type { Ref } from './graph';
import { fillWith, numbersIn, padded, partOf, type Vector, vector } from './lanes';
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

/** Steps of some columns, bound for whatever row is put in. */
export function columnsBound(special: Special, kept: Kept, from: number, n: number) {
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
  const [least, most, binding, lo, hi, unsure] = special.outputs.map(
    (ref) => out.get(ref) ?? leaf(ref),
  );
  const run = (row: number): void => {
    for (const { into, of } of ofRow) fillWith(into, of.of[row] ?? 0);
    for (const step of bounds) step();
  };
  const refresh = (): void => {
    for (const { into, of } of ofCase) fillWith(into, of.of[0] ?? 0);
  };
  const room = unsure && { binding, lo, hi, unsure: unsure.of };
  return { refresh, run, least, most, room };
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
    const { refresh, run, least, most, room } = columnsBound(special, kept, from, n);
    const levels = { least: numbersIn(least), most: numbersIn(most) };
    const left = room && {
      binding: numbersIn(room.binding),
      lo: numbersIn(room.lo),
      hi: numbersIn(room.hi),
      unsure: room.unsure,
    };
    return { refresh, run, n, members: columns.members.subarray(from, from + n), levels, left };
  });
  const refresh = (): void => {
    reckonSides();
    for (const part of parts) part.refresh();
  };
  const judge: KinJudge = (row, into) => {
    for (const { run, n, members, levels, left } of parts) {
      run(row);
      for (let i = 0; i < n; i += 1) {
        const to = members[i] ?? 0;
        const level = levels.least[i] ?? askEngine;
        into.levels[to] = level === levels.most[i] ? level : askEngine;
      }
      if (!left) continue;
      for (let i = 0; i < n; i += 1) {
        const to = members[i] ?? 0;
        if (left.unsure[i] !== 0) into.levels[to] = askEngine;
        into.bindings[to] = left.binding[i] ?? -1;
        into.leftLo[to] = left.lo[i] ?? 0;
        into.leftHi[to] = left.hi[i] ?? 0;
      }
    }
  };
  return { refresh, judge };
}
