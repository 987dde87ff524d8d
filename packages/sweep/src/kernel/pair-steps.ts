import { levels } from '@tarebook/rules/engine';
import { askEngine, type Found, putRoom } from './found';
import type { Ref } from './graph';
import { type Bound, fillWith, partOf, type Vector, vector } from './lanes';
import type { Special } from './specialize';
import { bindAll, type Kept, stageOf } from './staged';
import { type StopGroup, stopsFirst } from './stops';

const stop = levels.indexOf('stop');
/** Four truths that hold. */
const everyPlace = 0x01010101;

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

function putStops(into: Uint8Array, start: number, members: Int32Array): void {
  for (let i = 0; i < members.length; i += 1) into[start + (members[i] ?? 0)] = stop;
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

/** Steps gone through together, with what of a row they are the first to want. */
type Group = {
  readonly ofRow: readonly { readonly into: Vector; readonly of: Vector }[];
  readonly bounds: readonly Bound[];
  readonly stops: Uint32Array | undefined;
};

/** Takes in what else stops, and says whether now every place is stopped. */
function areStopped(stopped: Uint32Array, by: Uint32Array): boolean {
  let all = everyPlace;
  for (let i = 0; i < stopped.length; i += 1) {
    const now = (stopped[i] ?? 0) | (by[i] ?? 0);
    stopped[i] = now;
    all &= now;
  }
  return all === everyPlace;
}

const groupsKept = new WeakMap<Special, readonly StopGroup[]>();

function groupsOf(special: Special): readonly StopGroup[] {
  const found = groupsKept.get(special) ?? stopsFirst(special);
  groupsKept.set(special, found);
  return found;
}

/** Steps of some columns, bound for whatever row is put in; none is gone through once all are stopped. */
export function columnsBound(special: Special, kept: Kept, from: number, n: number): PairSteps {
  const { steps } = special.staged;
  const ordered = groupsOf(special);
  const order = ordered.flatMap(({ own }) => own);
  const wanted = new Set([...special.outputs, ...ordered.flatMap(({ stops }) => stops ?? [])]);
  const out = new Map<Ref, Vector>();
  for (const ref of order) {
    const step = steps[ref];
    if (step && wanted.has(ref)) out.set(ref, vector(step.sort, n));
  }
  const leaves = new Map<Ref, Vector>();
  /** What a row tells stands at every place of a vector, anew for each row; what a case tells, for each case. */
  const ofRow = new Map<Ref, { readonly into: Vector; readonly of: Vector }>();
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
    if (row) ofRow.set(ref, { into: found, of: row });
    else if (same) ofCase.push({ into: found, of: same });
    else if (!column) fillWith(found, step?.value ?? 0);
    leaves.set(ref, found);
    return found;
  };
  const at = (ref: Ref): Vector => out.get(ref) ?? leaf(ref);
  const bounds = bindAll(steps, order, n, leaf, (ref) => out.get(ref));
  const ends = special.outputs.map(at).map(endOf);
  let [bound, filled] = [0, new Set<Ref>()];
  const groups = ordered.map(({ own, stops }): Group => {
    const truths = stops === undefined ? undefined : at(stops);
    // What comes out may be what a row tells and nothing else.
    const last = stops === undefined ? special.outputs : [stops];
    const read = [...own.flatMap((ref) => steps[ref]?.args ?? []), ...last];
    const anew = [...new Set(read)].filter((ref) => ofRow.has(ref) && !filled.has(ref));
    filled = new Set([...filled, ...anew]);
    const first = bound;
    bound += own.length;
    return {
      ofRow: anew.flatMap((ref) => ofRow.get(ref) ?? []),
      bounds: bounds.slice(first, bound),
      stops: truths?.sort === 'truth' ? truths.fours : undefined,
    };
  });
  const stopped = new Uint32Array(Math.ceil(n / 4));
  let isStopped = false;
  const run = (row: number): void => {
    stopped.fill(0);
    isStopped = false;
    for (const { ofRow: told, bounds: own, stops } of groups) {
      for (const { into, of } of told) fillWith(into, of.of[row] ?? 0);
      for (const step of own) step();
      isStopped = stops !== undefined && areStopped(stopped, stops);
      if (isStopped) return;
    }
  };
  const refresh = (): void => {
    for (const { into, of } of ofCase) fillWith(into, of.of[0] ?? 0);
  };
  const room = ends.slice(2);
  const put: PairSteps['put'] = (into, start, members) => {
    if (isStopped) return putStops(into.levels, start, members);
    putLevels(into.levels, start, members, ends);
    putRoom(into, start, members, room);
  };
  return { refresh, run, put };
}
