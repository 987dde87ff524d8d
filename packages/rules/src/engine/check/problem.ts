/** What is wrong with something given, as data; said in words by messages.ts alone. */
export type Problem = {
  readonly code:
    | 'no-such-fact'
    | 'not-a-quantity'
    | 'no-unit'
    | 'no-such-unit'
    | 'two-units'
    | 'two-ways'
    | 'wrong-unit'
    | 'back-to-front'
    | 'out-of-range'
    | 'no-such-option'
    | 'not-rows'
    | 'too-many-rows'
    | 'no-such-column'
    | 'missing-cell'
    | 'not-plain'
    | 'no-such-parameter'
    | 'no-value-on'
    | 'not-a-day'
    | 'given-twice'
    | 'house'
    | 'rule-set';
  /** The fact; of a list, with the row (from 1) and the column's label. */
  readonly fact: string;
  readonly row?: number;
  readonly column?: string;
  readonly found: string;
  readonly wanted: string;
  readonly near?: string;
};

export class InputError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[], say: (problem: Problem) => string) {
    super(problems.map(say).join('\n'));
    this.name = 'InputError';
    this.problems = problems;
  }
}
