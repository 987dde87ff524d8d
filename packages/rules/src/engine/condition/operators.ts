import type { Interval } from '../../quantity';
import { operators } from '../define/shapes';

/** What conditions compare: a range of a number, or the options a choice or yes/no may be. */
export type Named = Interval | { readonly among: readonly string[] };

/** Asked of a condition: is it certainly so, or could it be so? */
export type Question = 'certain' | 'possible';

/** A word or a list of words, as a condition writes it on its right-hand side. */
export type Literal = string | readonly string[];

const isAmong = (value: Named): value is { readonly among: readonly string[] } => 'among' in value;

type NumberTest = (a: Interval, b: Interval) => boolean;

const certainly: Readonly<Record<string, NumberTest>> = {
  greaterThan: (a, b) => a.lo > b.hi,
  greaterThanInclusive: (a, b) => a.lo >= b.hi,
  lessThan: (a, b) => a.hi < b.lo,
  lessThanInclusive: (a, b) => a.hi <= b.lo,
  equal: (a, b) => a.lo === a.hi && b.lo === b.hi && a.lo === b.lo,
  notEqual: (a, b) => a.hi < b.lo || b.hi < a.lo,
};

const possibly: Readonly<Record<string, NumberTest>> = {
  greaterThan: (a, b) => a.hi > b.lo,
  greaterThanInclusive: (a, b) => a.hi >= b.lo,
  lessThan: (a, b) => a.lo < b.hi,
  lessThanInclusive: (a, b) => a.lo <= b.hi,
  equal: (a, b) => a.hi >= b.lo && b.hi >= a.lo,
  notEqual: (a, b) => !(a.lo === a.hi && b.lo === b.hi && a.lo === b.lo),
};

const negated: Readonly<Record<string, string>> = { notEqual: 'equal', notIn: 'in' };

export const operatorNames: readonly string[] = operators;

function compareWords(
  question: Question,
  operator: string,
  among: readonly string[],
  words: readonly string[],
): boolean {
  const positive = negated[operator];
  if (positive !== undefined) {
    const opposite = question === 'certain' ? 'possible' : 'certain';
    return !compareWords(opposite, positive, among, words);
  }
  return question === 'certain'
    ? among.length > 0 && among.every((option) => words.includes(option))
    : among.some((option) => words.includes(option));
}

/** One comparison, for one of the two questions. */
export function compare(
  question: Question,
  operator: string,
  left: Named,
  right: Named | Literal,
): boolean {
  if (isAmong(left)) {
    if (typeof right === 'string') return compareWords(question, operator, left.among, [right]);
    if (isWords(right)) return compareWords(question, operator, left.among, right);
    throw new Error(`A choice is compared with words (${operator}).`);
  }
  if (typeof right === 'string' || isWords(right) || isAmong(right)) {
    throw new Error(`A number is compared with numbers (${operator}).`);
  }
  const test = (question === 'certain' ? certainly : possibly)[operator];
  if (!test) throw new Error(`“${operator}” does not compare numbers.`);
  return test(left, right);
}

function isWords(value: Named | readonly string[]): value is readonly string[] {
  return Array.isArray(value);
}
