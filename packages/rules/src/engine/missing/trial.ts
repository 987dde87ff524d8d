import { rounded } from '../../quantity';
import type { Ends } from '../answer/shapes';
import type { ConditionRule } from '../condition/rules';
import { inUnit } from '../formula/words';
import { type Reading, readings, type Setting } from './open';
import type { Plausible } from './plausible';

/** A number is tried at the ends of its plausible range and at places evenly between. */
export const finely = 16;
export const coarsely = 4;

/** How the conditions stand at each value tried; `at` in base units, for a choice its option. */
export type Tried = {
  readonly at: readonly (number | string)[];
  /** By place, then by condition. */
  readonly found: readonly (readonly Reading[])[];
};

export function tryAll(
  setting: Setting,
  rules: readonly ConditionRule[],
  fact: string,
  values: Plausible,
  places: number,
): Tried {
  if (values.kind === 'options') {
    const found = values.options.map((option) =>
      readings(setting, rules, new Map([[fact, values.input(option)]])),
    );
    return { at: values.options, found };
  }
  const { from, to } = values;
  const at = Array.from({ length: places + 1 }, (_, i) => from + ((to - from) * i) / places);
  const found = at.map((value) => readings(setting, rules, new Map([[fact, values.input(value)]])));
  return { at, found };
}

/** The share of the values tried of which something holds. */
export function shareOf(tried: Tried, test: (found: readonly Reading[]) => boolean): number {
  return tried.found.filter(test).length / Math.max(1, tried.found.length);
}

/** Between which values of a number a condition turns from not stopping to stopping. */
export type Tip = Ends & { readonly side: 'above' | 'below' };

/** From where on a condition stops whatever the other facts are. */
export type Sure = { readonly at: number; readonly unit: string; readonly side: 'above' | 'below' };

/** Comparisons round to a millionth, so an edge is found half a millionth off where it stands. */
const tidy = (value: number): number => rounded(Math.round(value * 1e5) / 1e5);

/** The last point, going from `good` to `bad`, of which `test` is still true. */
function edge(good: number, bad: number, test: (at: number) => boolean): number {
  let [from, to] = [good, bad];
  for (let i = 0; i < 60 && Math.abs(to - from) > 1e-6; i += 1) {
    const middle = (from + to) / 2;
    if (test(middle)) from = middle;
    else to = middle;
  }
  return from;
}

export type Edges = { readonly tip?: Tip; readonly sure?: Sure };

/**
 * Where one condition tips as one number moves. A tip is told where one end of the range stops and
 * the other does not, whatever the rest is; `sure` where at one end it stops and at the other the
 * rest still decides.
 */
export function edgesOf(
  setting: Setting,
  rule: ConditionRule,
  fact: string,
  values: Plausible,
  tried: Tried,
  index: number,
): Edges {
  if (values.kind !== 'number' || values.unit === undefined) return {};
  const { unit } = values;
  const at = tried.at.flatMap((each) => (typeof each === 'number' ? [each] : []));
  const found = tried.found.map((each) => each[index] ?? 'undecided');
  const [first, last] = [found[0], found.at(-1)];
  if (first === last || (first !== 'over' && last !== 'over')) return {};
  const overLast = last === 'over';
  const order = overLast ? at : at.toReversed();
  const read = overLast ? found : found.toReversed();
  const is = (value: number) =>
    readings(setting, [rule], new Map([[fact, values.input(value)]]))[0] ?? 'undecided';
  const shown = (value: number) => tidy(inUnit({ lo: value, hi: value }, unit).lo);
  const side = overLast ? 'above' : 'below';

  const overFrom = read.findLastIndex((each) => each !== 'over') + 1;
  const before = order[overFrom - 1] ?? 0;
  const firstOver = edge(order[overFrom] ?? 0, before, (value) => is(value) === 'over');
  if (read[0] === 'undecided') return { sure: { at: shown(firstOver), unit, side } };
  const lastWithinAt = read.findIndex((each) => each !== 'within') - 1;
  const justBefore = firstOver + (overLast ? -3e-6 : 3e-6);
  const lastWithin =
    is(justBefore) === 'within'
      ? firstOver
      : edge(order[lastWithinAt] ?? 0, order[lastWithinAt + 1] ?? 0, (v) => is(v) === 'within');
  const [a, b] = [shown(lastWithin), shown(firstOver)];
  return { tip: { lo: Math.min(a, b), hi: Math.max(a, b), unit, side } };
}
