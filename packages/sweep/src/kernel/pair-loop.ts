import type { Found } from './found';
import { padded, partOf, type Vector } from './lanes';
import { columnsBound } from './pair-steps';
import type { Kin, Side } from './places';
import type { Special } from './specialize';
import { block, type Kept, readySides } from './staged';

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
