import {
  type Dimension,
  dimensionName,
  joined,
  plain,
  sameDimension,
  unitOf,
} from '../../../quantity';
import type { Topic } from '../../define/shapes';
import type { Node } from './nodes';
import { FormulaError, type FormulaFound, type FormulaMistake } from './problem';

/** What a part of a formula is: a number of some dimension, a truth, a word, or any number. */
export type Sort =
  | { readonly kind: 'number'; readonly dimension: Dimension }
  | { readonly kind: 'truth' }
  | {
      readonly kind: 'word';
      /** Which words it may be; absent: any. */
      readonly options?: readonly string[];
      /** Whose options they are; absent: a word as it is written. */
      readonly of?: string;
    }
  | { readonly kind: 'any-number' };

/** What the rules of units know of their surroundings. */
export type Sorting = {
  readonly topic: Topic;
  /** The unit a name is kept in; refuses one that is not there. */
  readonly unitOf: (name: string) => string;
  readonly of: (node: Node) => Sort;
};

export const number = (dimension: Dimension): Sort => ({ kind: 'number', dimension });
export const plainNumber = number(plain);
export const truth: Sort = { kind: 'truth' };
export const word: Sort = { kind: 'word' };
export const anyNumber: Sort = { kind: 'any-number' };

export function clash(text: string, code?: FormulaMistake, beside?: FormulaFound): never {
  throw new FormulaError(text, code, beside);
}

export function sortOfUnit(unit: string): Sort {
  if (unit === 'yes-no') return truth;
  if (unit === 'choice') return word;
  return unit === '' ? plainNumber : number(unitOf(unit).dimension);
}

export function numeric(sort: Sort, what: string): Sort {
  if (sort.kind === 'number' || sort.kind === 'any-number') return sort;
  return clash(`${what} wants a number, found a ${sort.kind}`, 'wrong-kind');
}

export const truthful = (sort: Sort, what: string): Sort =>
  sort.kind === 'truth'
    ? sort
    : clash(`${what} wants a yes or no, found a ${sort.kind}`, 'wrong-kind');

/** Both sides of +, −, a comparison or a choice must be of one kind. */
export function alike(a: Sort, b: Sort, what: string): Sort {
  if (a.kind === 'any-number') return numeric(b, what);
  if (b.kind === 'any-number') return numeric(a, what);
  if (a.kind === 'number' && b.kind === 'number') {
    if (sameDimension(a.dimension, b.dimension)) return a;
    const [one, other] = [dimensionName(a.dimension), dimensionName(b.dimension)];
    return clash(`${what} joins ${one} with ${other}`, 'mixed-units');
  }
  if (a.kind === 'word' && b.kind === 'word') return alikeWords(a, b);
  if (a.kind === b.kind) return a;
  return clash(`${what} joins a ${a.kind} with a ${b.kind}`, 'wrong-kind');
}

type Words = Extract<Sort, { kind: 'word' }>;

/** A word that is written must be an option of the choice beside it; two choices must share one. */
function alikeWords(a: Words, b: Words): Sort {
  const [ours, theirs] = [a.options, b.options];
  if (!ours || !theirs) return ours ? a : b;
  const named = a.of === undefined ? b : a;
  if (ours.some((each) => theirs.includes(each))) return named;
  const [said, choice] = named === a ? [b, a] : [a, b];
  if (choice.of === undefined) return word;
  const options = choice.options?.filter((each) => each !== '') ?? [];
  if (said.of === undefined) {
    const found = `${said.options}`;
    return clash(
      `“${found}” is no option of ${choice.of}: ${options.join(', ')}`,
      'not-an-option',
      {
        ...{ found, of: choice.of, options },
      },
    );
  }
  return clash(`${said.of} and ${choice.of} have no option in common`, 'words-apart');
}

export function product(op: '*' | '/', a: Sort, b: Sort): Sort {
  const [left, right] = [numeric(a, op), numeric(b, op)];
  if (left.kind !== 'number' || right.kind !== 'number') return anyNumber;
  return number(joined(left.dimension, right.dimension, op === '*' ? 1 : -1));
}
