/** What a formula can be told: its kind of mistake, of which check/mistakes.ts says what would be right. */
export type FormulaMistake =
  | 'unreadable-formula'
  | 'no-such-function'
  | 'circular-formulas'
  | 'not-a-condition'
  | 'reckoned-in-condition'
  | 'not-a-value'
  | 'word-without-quotes'
  | 'not-an-option'
  | 'words-apart'
  | 'not-a-list'
  | 'not-a-table'
  | 'not-a-simulation'
  | 'not-in-catalogue'
  | 'wrong-kind'
  | 'mixed-units';

/** What stands there that is wrong, whose it would be, and what may stand there. */
export type FormulaFound = {
  readonly found: string;
  readonly of?: string;
  readonly options?: readonly string[];
};

/** A formula that cannot be read: which part, and of which kind the mistake is. */
export class FormulaError extends Error {
  constructor(
    text: string,
    readonly code: FormulaMistake = 'unreadable-formula',
    readonly beside?: FormulaFound,
  ) {
    super(text);
  }
}
