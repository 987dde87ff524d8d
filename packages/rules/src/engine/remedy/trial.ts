import { compiledOf } from '../answer/answer';
import { verdictLevel } from '../answer/grounds';
import { allStates } from '../answer/levels';
import { modelByModel, modelsOpen } from '../answer/model-by-model';
import { namedValues } from '../answer/named';
import { inBase, parametersOn } from '../answer/parameters';
import { conditionRules } from '../condition/rules';
import { rulesHolding } from '../condition/walk';
import type { Condition, Level, State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, run as reckonRun, runLike } from '../formula/run';
import type { Inputs } from '../value/values';
import { sayer } from '../words/say';
import type { Voice } from '../words/speaker';
import type { Say } from '../words/value';

/** One topic on one day, ready to judge facts without any trace. */
export type Bench = {
  readonly topic: Topic;
  readonly compiled: Compiled;
  readonly parameters: ParameterValues;
  /** Puts sentences into words. */
  readonly say: Say;
  readonly purse: Purse;
  /** The facts as they are, from which trials take what they do not touch. */
  readonly base: Run;
};

/**
 * How much may still be tried. What one trial costs grows with the rows of a case and with the square
 * of its ranges, and how many there are with the square of its rows: a long list would take minutes.
 */
export type Purse = { left: number; readonly each: number };

/** More than any filed case comes to; about half a second of trials. */
const filled = 8_000;

function purseFor(inputs: Inputs): Purse {
  const lists = [...inputs.values()].flatMap((input) => (input.kind === 'rows' ? input.rows : []));
  const ranges = [...inputs.values(), ...lists.flatMap((row) => Object.values(row))].filter(
    (input) => input.kind === 'number' && !input.open && input.lo < input.hi,
  ).length;
  // Measured: 100 rows take 4 times as long as none; 20, 40, 120 and 200 ranges take 4, 8, 40, 96 times.
  return { left: filled, each: 1 + lists.length / 30 + ranges / 8 + ranges ** 2 / 600 };
}

export const isSpent = ({ purse }: Bench): boolean => purse.left <= 0;

export const pay = ({ purse }: Bench, times: number): void => {
  purse.left -= purse.each * times;
};

export function benchOf(topic: Topic, asOf: string, inputs: Inputs, voice: Voice = {}): Bench {
  const compiled = compiledOf(topic);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  return {
    topic,
    compiled,
    parameters,
    say: sayer(voice),
    purse: purseFor(inputs),
    base: reckonRun(compiled, inputs, parameters),
  };
}

export type Judged = {
  readonly level: Level;
  readonly states: ReadonlyMap<string, State>;
  readonly run: Run;
};

/** What the rules say of facts; the same walk as `answerNow`. */
export function judge(bench: Bench, inputs: Inputs): Judged {
  const { topic, compiled, parameters } = bench;
  // All conditions are asked, where a comparison along a line looks at a few numbers; of every model.
  pay(bench, 3 * (1 + modelsOpen(topic, inputs)));
  const run = runLike(bench.base, compiled, inputs, parameters);
  const values = namedValues(compiled, run);
  const rules = conditionRules(topic);
  const plain = {
    certain: rulesHolding(rules, 'certain', values),
    possible: rulesHolding(rules, 'possible', values),
  };
  const { holding } = modelByModel(compiled, inputs, parameters, plain, run);
  const states = allStates(topic, run, holding);
  return { level: verdictLevel(compiled, run, states), states, run };
}

/** Better comes first. */
export const worth: Readonly<Record<Level, number>> = {
  ok: 0,
  care: 1,
  if: 2,
  unknown: 3,
  stop: 4,
};

/** Limits and findings that stand in the way of anything better than a level. */
export const inTheWay = ({ states }: Judged, level: Level): readonly string[] =>
  [...states].flatMap(([of, state]) =>
    state !== 'not-asked' && worth[state] >= worth[level] ? [of] : [],
  );

/** What is not asked is nothing against it. */
const gravity = (state: State): number => (state === 'not-asked' ? worth.ok : worth[state]);

/** Limits and findings that are worse than they were. */
export const worsened = (after: Judged, asTheyWere: Judged): readonly string[] =>
  [...after.states].flatMap(([of, state]) =>
    gravity(state) > gravity(asTheyWere.states.get(of) ?? 'not-asked') ? [of] : [],
  );

/** What is worse than it was, and findings that a change was to right and has not. */
export function upset(
  after: Judged,
  asTheyWere: Judged,
  rights: readonly string[] = [],
): readonly string[] {
  const unrighted = rights
    .map((id) => `finding.${id}`)
    .filter((of) => gravity(after.states.get(of) ?? 'not-asked') > worth.ok);
  return [...new Set([...worsened(after, asTheyWere), ...unrighted])];
}

type Compared = readonly (readonly [string, string])[];

function comparisons(condition: Condition): Compared {
  if ('all' in condition) return condition.all.flatMap(comparisons);
  if ('any' in condition) return condition.any.flatMap(comparisons);
  const { fact, value } = condition;
  return typeof value === 'object' && 'fact' in value ? [[fact, value.fact]] : [];
}

type Comparing = { readonly of: string; readonly type: string; readonly compared: Compared };
const comparing = new WeakMap<Topic, readonly Comparing[]>();

function allComparing(topic: Topic): readonly Comparing[] {
  const before = comparing.get(topic);
  if (before) return before;
  const made = conditionRules(topic).map(({ event, conditions }) => {
    return { of: event.params.of, type: event.type, compared: comparisons(conditions) };
  });
  comparing.set(topic, made);
  return made;
}

/** Which numbers the asked conditions set against one another, each two once. */
export function comparedIn(
  { topic }: Bench,
  { states }: Judged,
  wanted: (of: string, type: string) => boolean = () => true,
): Compared {
  const pairs = new Map<string, readonly [string, string]>();
  for (const { of, type, compared } of allComparing(topic)) {
    if (states.get(of) === 'not-asked' || !wanted(of, type)) continue;
    for (const pair of compared) pairs.set(pair.join(' '), pair);
  }
  return [...pairs.values()];
}

/**
 * How far apart they are, by the ends that each of the two questions of a condition sets against
 * one another. A level can change only where one of these crosses zero.
 */
export function gaps(bench: Bench, inputs: Inputs, compared: Compared): readonly number[] {
  const { compiled, parameters } = bench;
  pay(bench, 1);
  const { value } = runLike(bench.base, compiled, inputs, parameters);
  return compared.flatMap(([left, right]) => {
    const [a, b] = [value(left), value(right)];
    if (a.kind !== 'number' || b.kind !== 'number') return [Number.NaN, Number.NaN];
    return [a.lo - b.hi, a.hi - b.lo];
  });
}
