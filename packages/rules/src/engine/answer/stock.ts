import { refuseAsked, refuseOnlyJudging, refuseTopic } from '../check/asked';
import { sayProblem } from '../check/messages';
import { InputError } from '../check/problem';
import { shapeProblems } from '../check/shaped';
import type { Named } from '../condition/operators';
import { conditionRules } from '../condition/rules';
import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { type Asked, type AskedOf, compiledOf, reckoned, today } from './answer';
import { isAsked } from './levels';
import { namedValues as rangesOf } from './named';
import { missingRules } from './stock-missing';

/** What a program with a stock json-rules-engine hands over, and what it must know beside. */
export type NamedValues = {
  /**
   * Every name that the published conditions compare: a number in its declared unit, a word, or
   * `unknown` where it is a range, open, or one of several words. Nothing ever compares with that,
   * and the `missing` rules notice it.
   */
  readonly facts: Readonly<Record<string, number | string>>;
  /** Those that are `unknown`. */
  readonly missing: readonly string[];
  /** The limits and findings that this case does not ask, as `limit.payload`: their events say nothing. */
  readonly notAsked: readonly string[];
};

const unknown = 'unknown';

/** One number or one word, or none. What has no end is further off than anything that has. */
function single(value: Named): number | string {
  if ('among' in value) return value.among.length === 1 ? (value.among[0] ?? unknown) : unknown;
  if (value.lo !== value.hi) return unknown;
  return Math.max(-Number.MAX_VALUE, Math.min(Number.MAX_VALUE, value.lo));
}

/**
 * All names that the published conditions of a topic compare, reckoned from a case: what to hand to
 * a stock json-rules-engine beside them.
 *
 * @throws InputError as `answer` does
 */
export function namedValues<const T extends Topic>(topic: T, asked: AskedOf<T>): NamedValues;
export function namedValues(topic: Topic, asked: Asked): NamedValues {
  refuseAsked(topic, asked);
  const { run } = reckoned(topic, asked, asked.asOf ?? today());
  const ranges = rangesOf(compiledOf(topic), run);
  const facts = Object.fromEntries([...ranges].map(([name, value]) => [name, single(value)]));
  const asking = [
    ...Object.entries(topic.limits).map(([id, limit]) => [`limit.${id}`, limit] as const),
    ...Object.entries(topic.findings).map(([id, finding]) => [`finding.${id}`, finding] as const),
  ];
  return {
    facts,
    missing: Object.keys(facts).filter((name) => facts[name] === unknown),
    notAsked: asking.flatMap(([of, declared]) => (isAsked(declared, run) ? [] : [of])),
  };
}

/**
 * What a dealer tool that already runs json-rules-engine imports: rules, formulas, facts, sources.
 *
 * @throws InputError for what is no rule set, or has a part that is of another kind than it must be
 */
export function publish(topic: Topic): object {
  refuseTopic(topic);
  refuseOnlyJudging(topic);
  const problems = shapeProblems(topic);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  return {
    ...topic,
    formulas: Object.fromEntries(allFormulas(topic)),
    conditions: conditionRules(topic),
    missing: missingRules(topic),
  };
}
