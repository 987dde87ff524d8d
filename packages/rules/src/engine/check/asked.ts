import { isLookedAt, isOnlyJudging } from '../define/looked-at';
import type { Topic } from '../define/shapes';
import type { Voice } from '../words/speaker';
import { described, isPlain } from './given';
import { sayGiven } from './messages-given';
import { nearest } from './near';
import { InputError, type Problem } from './problem';

const parts = ['facts', 'parameters', 'formulas', 'limits', 'findings', 'outcomes'] as const;

/** Text in its quotes, so that a message shows what is no rule set and no case. */
const quoted = (given: unknown): string =>
  typeof given === 'string' ? `“${described(given)}”` : described(given);

/** @throws InputError where there is any */
export function refuse(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new InputError(problems, sayGiven);
}

/** Why something is no rule set at all; what is wrong with one, `checkTopic` says. */
export function topicProblems(topic: unknown): readonly Problem[] {
  if (isPlain(topic) && typeof topic.id === 'string') {
    const lacking = parts.find((part) => !isPlain(topic[part]));
    if (lacking === undefined) return [];
  }
  const wanted = 'the rule set itself, such as `towFit` from this package';
  return [{ code: 'not-a-topic', fact: 'topic', found: quoted(topic), wanted }];
}

/** @throws InputError for what is no rule set */
export function refuseTopic(topic: unknown): void {
  refuse(topicProblems(topic));
}

/**
 * Nothing is asked of a rule set that nobody looks through.
 *
 * @throws InputError for one that was merely written down, or a changed copy; whatever is told against
 *   one that is looked through
 */
export function refuseUndefined(topic: Topic): void {
  if (isLookedAt(topic)) return;
  const found = `“${topic.id}”, as it was written or copied,`;
  const wanted = '`defineTopic(…)` of it, which has it looked through before it is asked';
  refuse([{ code: 'not-a-topic', fact: 'topic', found, wanted }]);
}

const oneOf = (place: string, given: unknown, options: readonly string[]): readonly Problem[] => {
  if (given === undefined || options.some((each) => each === given)) return [];
  const near = typeof given === 'string' ? nearest(given, options) : undefined;
  const found = described(given);
  const wanted = options.join(', ');
  return [{ code: 'no-such-option', fact: place, found, wanted, options, ...(near && { near }) }];
};

/** A key that nothing reads was meant to be one that is read: `asof` would leave the day out. */
const strangeIn = (
  place: string,
  given: Readonly<Record<string, unknown>>,
  options: readonly string[],
): readonly Problem[] =>
  // What is like none of them came along with a whole case, and is nobody's mistake.
  Object.keys(given).flatMap((key) => oneOf(place, key, options).filter(({ near }) => near));

const askedKeys = ['facts', 'asOf', 'readFrom', 'units', 'medium', 'language'];

/** What is wrong with the frame of what is asked; its facts are read by facts.ts. */
function askedProblems(asked: unknown): readonly Problem[] {
  if (!isPlain(asked)) {
    const wanted = '{ facts, asOf } with the facts by id';
    return [{ code: 'not-a-case', fact: 'asked', found: quoted(asked), wanted }];
  }
  const problems: Problem[] = [];
  if (!isPlain(asked.facts)) {
    const wanted = 'the facts by id, such as { "trailer.gvwr": "5,000 lb" }';
    problems.push({ code: 'not-facts', fact: 'facts', found: quoted(asked.facts), wanted });
  }
  if (asked.asOf !== undefined && typeof asked.asOf !== 'string') {
    const wanted = 'a day such as 2026-11-01';
    problems.push({ code: 'not-a-day', fact: 'as-of', found: described(asked.asOf), wanted });
  }
  const { readFrom = {} } = asked;
  if (!isPlain(readFrom) || Object.values(readFrom).some((from) => typeof from !== 'string')) {
    const wanted = 'by fact a text that says where it was read';
    problems.push({ code: 'not-facts', fact: 'readFrom', found: quoted(readFrom), wanted });
  }
  const { language = {} } = asked;
  if (typeof language !== 'object' || language === null) {
    const wanted = 'a language, as `english` is';
    problems.push({ code: 'not-facts', fact: 'language', found: quoted(language), wanted });
  }
  return [
    ...problems,
    ...strangeIn('asked', asked, askedKeys),
    ...oneOf('units', asked.units, ['us', 'metric']),
    ...oneOf('medium', asked.medium, ['written', 'spoken', 'print']),
  ];
}

/**
 * Looks at what an entry is called with before anything reaches into it, so that a plain mistake is
 * told as one.
 *
 * @throws InputError for what is no rule set, or no case
 */
export function refuseAsked(topic: Topic, asked: unknown): void {
  refuse([...topicProblems(topic), ...askedProblems(asked)]);
}

/** @throws InputError for a rule set that only judges, where more of it is wanted */
export function refuseOnlyJudging(topic: Topic): void {
  if (!isOnlyJudging(topic)) return;
  const found = `“${topic.id}” as far as it judges`;
  const wanted = `\`topics['${topic.id}']\`, or what \`@tarebook/rules/${topic.id}\` exports, the whole of it`;
  refuse([{ code: 'not-a-topic', fact: 'topic', found, wanted }]);
}

/** @throws InputError where an answer is to be spoken and nobody handed in how */
export function refuseAloud({ medium, language }: Voice): void {
  if (medium !== 'spoken' || language) return;
  const wanted = '`language: english` beside it, which has the words, or ask `answerTraced`';
  refuse([{ code: 'not-options', fact: 'medium', found: '“spoken” alone', wanted }]);
}

/** @throws InputError for options that are no object with names, or have others than `known` */
export function refuseOptions(options: unknown, known?: readonly string[]): void {
  const found = quoted(options);
  const wanted = 'an object with the options by name, or leave it out';
  if (!isPlain(options)) refuse([{ code: 'not-options', fact: 'options', found, wanted }]);
  else if (known) refuse(strangeIn('options', options, known));
}

/** @throws InputError for an asking that a topic does not have; undefined is the one implied */
export function refuseAsking({ id, askings = {} }: Topic, given: unknown): void {
  if (given !== undefined) refuseName('no-such-asking', id, given, Object.keys(askings));
}

/** @throws InputError for what is no answer */
export function refuseUnlessAnswer(answer: unknown): void {
  if (typeof answer === 'object' && answer !== null && 'outcome' in answer) return;
  const found = quoted(answer);
  const wanted = 'an answer, as `answer` or `answerNow` gives it';
  refuse([{ code: 'not-an-answer', fact: 'answer', found, wanted }]);
}

/** @throws InputError for a name that is none of those */
export function refuseName(
  code: 'no-such-asking' | 'no-such-part',
  of: string,
  given: unknown,
  options: readonly string[],
): void {
  if (options.some((each) => each === given)) return;
  const near = typeof given === 'string' ? nearest(given, options) : undefined;
  const found = described(given);
  const wanted = options.length > 0 ? `one of ${options.join(', ')}` : 'none';
  const problem = { code, fact: of, found, wanted, options, ...(near && { near }) };
  refuse([problem]);
}

/** @throws InputError for a number that is not a whole one within its ends */
export function refuseUnlessWhole(fact: string, given: unknown, least: number, most: number): void {
  if (Number.isInteger(given) && Number(given) >= least && Number(given) <= most) return;
  const ends = [least, most].map((end) => end.toLocaleString('en-US')).join(' to ');
  const wanted = `a whole number from ${ends}`;
  const found = described(given);
  refuse([{ code: 'not-a-whole-number', fact, found, wanted, unit: '', least, most }]);
}
