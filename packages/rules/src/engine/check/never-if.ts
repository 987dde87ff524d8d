import { namesCompared, rulingsAt } from '../condition/rules';
import { anyOf, conditionFrom } from '../condition/text';
import type { Condition, Finding, Topic } from '../define/shapes';
import { allFormulas, declaredUnit } from '../define/topic';
import { FormulaError } from '../formula/grammar/problem';
import type { Note } from './noted';
import { wordsOf } from './words-of';

/** What a name is in one of the ways a case may tell it. */
type Way = ReadonlyMap<string, string>;
const untold = ' untold';
const told = ' told';

/** A formula that only says whether a fact is told: `!known(gas.tested)`. */
const guard = /^(!?)(?:known|given)\(([\w.]+)\)$/;

/** More ways than these are not gone through; nothing is then said. */
const mostWays = 20_000;

type Truth = 'yes' | 'no' | 'maybe';
const not: Readonly<Record<Truth, Truth>> = { yes: 'no', no: 'yes', maybe: 'maybe' };

/** The ways in which what a finding compares can be told, each name for itself; none: too many. */
function waysOf(topic: Topic, conditions: readonly Condition[]): readonly Way[] {
  const formulas = allFormulas(topic);
  const unit = (name: string) => formulas.get(name)?.unit ?? declaredUnit(topic, name);
  const choices = new Map<string, readonly string[]>();
  const visit = (name: string): void => {
    if (choices.has(name)) return;
    const [, , guarded] = guard.exec(formulas.get(name)?.is ?? '') ?? [];
    if (guarded !== undefined) {
      visit(guarded);
      return;
    }
    const words = wordsOf(topic, unit, name) ?? [told];
    const isFact = Object.hasOwn(topic.facts, name);
    choices.set(name, isFact ? [...words, untold] : words);
  };
  for (const each of conditions) namesCompared(each).forEach(visit);
  const count = [...choices.values()].reduce((product, { length }) => product * length, 1);
  if (count > mostWays) return [];
  return [...choices].reduce<readonly Way[]>(
    (ways, [name, words]) =>
      ways.flatMap((way) => words.map((word) => new Map([...way, [name, word]]))),
    [new Map()],
  );
}

/** What a name is in a way; what only says whether a fact is told follows from that fact. */
function wordIn(topic: Topic, name: string, way: Way): string | undefined {
  const [, turned, guarded = ''] = guard.exec(topic.formulas[name]?.is ?? '') ?? [];
  if (turned === undefined) return way.get(name);
  return (way.get(guarded) === untold) === (turned === '!') ? 'yes' : 'no';
}

/** Whether a condition holds in a way, where numbers that are told compare as `numbers` says. */
function holds(topic: Topic, condition: Condition, way: Way, numbers: Truth): Truth {
  const within = (each: Condition): Truth => holds(topic, each, way, numbers);
  if ('all' in condition) {
    const of = condition.all.map(within);
    return of.includes('no') ? 'no' : of.includes('maybe') ? 'maybe' : 'yes';
  }
  if ('any' in condition) {
    const of = condition.any.map(within);
    return of.includes('yes') ? 'yes' : of.includes('maybe') ? 'maybe' : 'no';
  }
  const { operator, value } = condition;
  const words = namesCompared(condition).map((name) => wordIn(topic, name, way));
  if (words.includes(untold)) return 'maybe';
  if (typeof value === 'object' && 'fact' in value) return numbers;
  const isAmong = [value].flat().some((each) => each === words[0]) ? 'yes' : 'no';
  return operator === 'notEqual' || operator === 'notIn' ? not[isAmong] : isAmong;
}

function neverIf(topic: Topic, finding: Finding): boolean {
  const [stop = [], proviso = []] = (['stop', 'if'] as const).map((level) =>
    rulingsAt(finding, level).map(({ when }) => conditionFrom(when)),
  );
  if (finding.stopOpen !== undefined || stop.length === 0 || proviso.length === 0) return false;
  const [stops, ifs] = [anyOf(stop), anyOf(proviso)];
  const ways = waysOf(topic, [stops, ifs]);
  const comesTo = (way: Way): boolean =>
    holds(topic, stops, way, 'no') === 'no' && holds(topic, ifs, way, 'yes') !== 'no';
  return ways.length > 0 && !ways.some(comesTo);
}

/**
 * An `if` that no case ever comes to: wherever it may hold, the stop beside it may hold too, and a
 * stop that may be counts as unknown.
 *
 *     stop: tied == 'no'    if: tied != 'yes'    untold: both may be, and it is never an if
 */
export function checkNeverIf(topic: Topic, note: Note): void {
  for (const [id, finding] of Object.entries(topic.findings)) {
    try {
      if (!neverIf(topic, finding)) continue;
    } catch (problem) {
      if (!(problem instanceof FormulaError)) throw problem;
      continue; // Told where the condition is read.
    }
    note('never-an-if', `finding.${id}.if`, '');
  }
}
