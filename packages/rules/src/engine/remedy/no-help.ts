import { rounded, show } from '../../quantity';
import { endsOf } from '../answer/named';
import { listed } from '../answer/phrases';
import type { Inputs } from '../formula/values';
import type { NoHelp } from './shapes';
import { type Bench, inTheWay, type Judged, judge, upset, worth } from './trial';
import type { Way } from './way';
import { barred } from './ways';
import { changeOf, instruction, labelOf } from './words';

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What a change does to one thing that stands in the way, by its numbers before and after. */
function effect(bench: Bench, of: string, before: Judged, after: Judged): string {
  const name = lower(labelOf(bench.topic, of));
  const limit = bench.topic.limits[of.slice('limit.'.length)];
  const still = after.states.get(of) ?? 'ok';
  const level = before.states.get(of) ?? 'ok';
  if (!of.startsWith('limit.') || !limit) {
    return still === level ? `it changes nothing about ${name}` : `it settles ${name}`;
  }
  const [was, is] = [before, after].map(({ run }) => ({
    used: endsOf(bench.compiled, run, limit.used),
    limit: endsOf(bench.compiled, run, limit.limit),
  }));
  if (!was || !is) return '';
  const over = (at: typeof was): number => rounded(at.used.hi - at.limit.lo);
  const [then, now] = [was.used, is.used].map((at) => show(at, at.unit, bench.units));
  const against = show(is.limit, is.limit.unit, bench.units);
  if (over(was) === over(is)) return `it does nothing for ${name}, ${now} of ${against} as before`;
  if (over(is) > over(was))
    return `${name} goes from ${then} to ${now} of ${against}, and that is worse`;
  if (still === level) {
    return `${name} goes from ${then} to ${now} of ${against}, and that is not enough`;
  }
  return `${name} comes right`;
}

/** Why a change does not help, reckoned from what it does as far as it goes. */
function whyNot(
  bench: Bench,
  before: Judged,
  after: Judged,
  rights: readonly string[] = [],
): string {
  const inWay = inTheWay(before, before.level);
  const parts = inWay.map((of) => effect(bench, of, before, after));
  const broken = [...after.states].flatMap(([of, state]) =>
    state !== 'not-asked' && worth[state] >= worth[before.level] && !inWay.includes(of) ? [of] : [],
  );
  const all = new Set([...broken, ...upset(after, before, rights)]);
  const names = [...all].map((of) => lower(labelOf(bench.topic, of)));
  const but = names.length === 0 ? '' : `; but then it fails on ${listed(names)}`;
  return `${parts.join('; ')}${but}`;
}

/** A change as far as it goes one way, that turns nothing on that way. */
export type Vain = { readonly way: Way; readonly x: number };

/** The ways a change can go on which it turned nothing. */
export function vainOf(way: Way, turned: readonly number[]): readonly Vain[] {
  const { line } = way;
  if (!line) return turned.length > 0 ? [] : [{ way, x: 0 }];
  const { start, ends } = line;
  const helps = (end: number) => turned.some((x) => (x - start) * (end - start) >= 0);
  return ends.filter((end) => !helps(end)).map((x) => ({ way, x }));
}

/** Each of them told with its reason. */
export function noHelpOf(
  bench: Bench,
  inputs: Inputs,
  before: Judged,
  vain: readonly Vain[],
): readonly NoHelp[] {
  return vain.map(({ way, x }) => {
    const after = judge(bench, way.edit(inputs, x));
    const { rights } = way.change;
    const why = barred(inputs, way.change) ?? `${whyNot(bench, before, after, rights)}.`;
    const turns = worth[after.level] < worth[before.level];
    const lead = turns ? 'That will not do' : 'That does not turn it';
    return { ...changeOf(way, x), says: `${instruction(way, x, bench.units)} ${lead}: ${why}` };
  });
}
