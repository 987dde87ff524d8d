import { rounded } from '../../quantity';
import { endsOf } from '../answer/named';
import type { Inputs } from '../value/values';
import { message } from '../words/message';
import type { Sayable } from '../words/value';
import type { NoHelp } from './shapes';
import { type Bench, inTheWay, isSpent, type Judged, judge, upset, worth } from './trial';
import type { Way } from './way';
import { barred } from './ways';
import { changeOf, instruction, nameOf } from './words';

/** What a change does to one thing that stands in the way, by its numbers before and after. */
function effect(bench: Bench, of: string, before: Judged, after: Judged): Sayable {
  const name = nameOf(bench.topic, of);
  const limit = bench.topic.limits[of.slice('limit.'.length)];
  const still = after.states.get(of) ?? 'ok';
  const level = before.states.get(of) ?? 'ok';
  if (!of.startsWith('limit.') || !limit) {
    return message(still === level ? 'changes-nothing' : 'settles', { name });
  }
  const at = ({ run }: Judged) => ({
    used: endsOf(bench.compiled, run, limit.used),
    limit: endsOf(bench.compiled, run, limit.limit),
  });
  const [was, is] = [at(before), at(after)];
  const over = ({ used, limit: most }: ReturnType<typeof at>): number => rounded(used.hi - most.lo);
  const style = 'exact';
  const [now, most] = [
    { ...is.used, style },
    { ...is.limit, style },
  ] as const;
  if (over(was) === over(is)) return message('does-nothing', { name, now, most });
  const from = { ...was.used, style } as const;
  if (over(is) > over(was)) return message('makes-worse', { name, from, now, most });
  return still === level
    ? message('not-enough', { name, from, now, most })
    : message('comes-right', { name });
}

/** Why a change does not help, reckoned from what it does as far as it goes. */
function whyNot(
  bench: Bench,
  before: Judged,
  after: Judged,
  rights: readonly string[] = [],
): Sayable {
  const inWay = inTheWay(before, before.level);
  const of = inWay.map((each) => effect(bench, each, before, after));
  const broken = [...after.states].flatMap(([each, state]) =>
    state !== 'not-asked' && worth[state] >= worth[before.level] && !inWay.includes(each)
      ? [each]
      : [],
  );
  // Of a limit within its rating nobody says that anything fails on it, where more is wrong than that.
  const turns = worth[after.level] < worth[before.level];
  const upsets = upset(after, before, rights).filter(
    (each) => turns || !each.startsWith('limit.') || after.states.get(each) !== 'care',
  );
  const all = new Set([...broken, ...upsets]);
  return message('why-not', { of, fails: [...all].map((each) => nameOf(bench.topic, each)) });
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
  return vain.flatMap(({ way, x }) => {
    if (isSpent(bench)) return [];
    const after = judge(bench, way.edit(inputs, x));
    const { rights } = way.change;
    const told = message('no-help', {
      change: instruction(way, x),
      turns: worth[after.level] < worth[before.level],
      why: barred(inputs, way.change) ?? whyNot(bench, before, after, rights),
    });
    return { ...changeOf(way, x), says: bench.say(told), message: told };
  });
}
