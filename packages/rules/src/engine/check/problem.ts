import type { mistakes } from './mistakes';

/** A kind of mistake within a rule set, as `checkTopic` tells it; mistakes.ts has them all, with their words. */
export type Mistake = keyof typeof mistakes;

/** What is wrong with something given, as data: one code a kind of mistake; said in words by messages.ts alone. */
export type Problem = {
  readonly code: // A case
    | 'not-a-case'
    | 'not-facts'
    | 'not-an-answer'
    | 'not-options'
    | 'wrong-argument'
    | 'not-a-day'
    | 'no-such-asking'
    | 'no-such-part'
    | 'not-a-whole-number'
    // A fact of it
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
    | 'not-a-row'
    | 'no-such-column'
    | 'missing-cell'
    | 'not-plain'
    | 'given-twice'
    // A document, a ledger
    | 'in-document'
    | 'not-a-ledger'
    // A house layer
    | 'not-json'
    | 'not-a-house-layer'
    | 'other-topic'
    | 'no-house-name'
    | 'no-such-house-key'
    | 'no-such-parameter'
    | 'not-a-house-choice'
    | 'not-a-parameter'
    | 'not-one-value'
    | 'beyond-house-range'
    | 'no-reason'
    | 'loosens-a-rating'
    // A rule set, or an answer that was saved
    | 'not-a-topic'
    | 'no-value-on'
    | 'not-a-saved-answer'
    // Within a rule set
    | Mistake;
  /** The fact, or the place in what was given; of a list, with the row (from 1) and the column's label. */
  readonly fact: string;
  readonly row?: number;
  readonly column?: string;
  /** The column's id. */
  readonly columnId?: string;
  readonly found: string;
  /** What would be right, for a sentence. */
  readonly wanted: string;
  /** The unit a number is kept in; '' of a count. */
  readonly unit?: string;
  /** What a number can be, in that unit. */
  readonly least?: number;
  readonly most?: number;
  /** What may stand there. */
  readonly options?: readonly string[];
  /** The limit whose rating a house would loosen, by its label. */
  readonly limit?: string;
  readonly near?: string;
  /** What else belongs to what was found: the choice, the table or the other side of a comparison. */
  readonly of?: string;
};

/** Every code that a problem may have. */
export type ProblemCode = Problem['code'];

export class InputError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[], say: (problem: Problem) => string) {
    super(problems.map(say).join('\n'));
    this.name = 'InputError';
    this.problems = problems;
  }
}
