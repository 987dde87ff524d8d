import { askEngine, type Found } from './found';
import { padded, partOf, type Vector } from './lanes';
import { columnsBound } from './pair-steps';
import type { Kin, Side } from './places';
import type { Special } from './specialize';
import { type Kept, type Moving, movingIn, readySides } from './staged';

/**
 * Columns gone through at once. Where all of them are stopped nothing more is asked, and the lightest
 * stand first: of fewer at once more often all are.
 */
const lanes = 64;

/**
 * Judges one row of a kin, by its place in it, with all columns of another.
 *
 * @param isRest columns whose levels stand there already are gone through only beside one that is not
 */
export type KinJudge = (at: number, into: Found, isRest?: boolean) => void;

/** Whether any of these is not judged yet. */
function isAnyOpen(levels: Uint8Array, members: Int32Array): boolean {
  for (let i = 0; i < members.length; i += 1) {
    if (levels[members[i] ?? 0] === askEngine) return true;
  }
  return false;
}

/** What hangs on the case, on each row and on each column of two kins, by the steps made for them. */
function throughKins(special: Special, { kept, byLists }: Sides, rows: Kin, columns: Kin) {
  const part = (stage: Side | 'case', whole: Vector): Vector => {
    if (stage === 'case') return whole;
    const { from, size } = stage === 'rows' ? rows : columns;
    return partOf(whole, from, size);
  };
  const places = { rows: padded(rows.size), columns: padded(columns.size) };
  const moving = movingIn(special.staged, (ref) => byLists.has(special.inputs.get(ref) ?? -1));
  return readySides(special.staged, moving, places, (stage, ref) => {
    const whole = kept[stage].get(special.inputs.get(ref) ?? -1);
    return whole && part(stage, whole);
  });
}

/** What a program comes to on its sides, and which of it moves with a case's lists. */
type Sides = {
  readonly kept: Kept;
  readonly byLists: Moving;
  /** How often what does not move was reckoned. */
  readonly times: () => number;
};

/** A program made for two kins, ready to be run over them in one case after another. */
export type ReadyKins = {
  /** Takes in what another case makes of the sides. */
  readonly refresh: () => void;
  readonly judge: KinJudge;
};

export function kinsReady(special: Special, whole: Sides, rows: Kin, columns: Kin): ReadyKins {
  const { kept, run: reckonSides } = throughKins(special, whole, rows, columns);
  const parts = Array.from({ length: Math.ceil(columns.size / lanes) }, (_, part) => {
    const from = part * lanes;
    const n = Math.min(lanes, columns.size - from);
    const steps = columnsBound(special, kept, from, n);
    return { ...steps, members: columns.members.subarray(from, from + n) };
  });
  let before = -1;
  const refresh = (): void => {
    const now = whole.times();
    reckonSides(now !== before);
    before = now;
    for (const part of parts) part.refresh();
  };
  const judge: KinJudge = (row, into, isRest = false) => {
    for (const { run, put, members } of parts) {
      if (isRest && !isAnyOpen(into.levels, members)) continue;
      run(row);
      put(into, 0, members);
    }
  };
  return { refresh, judge };
}
