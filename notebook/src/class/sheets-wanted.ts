import type { GroupCase } from '../state/group';

/** What is printed: to be written on, with what came out, or first the one and then the other. */
export type Sheets = 'worksheets' | 'key' | 'both';

/** A lesson, or a class that was walked, is wanted on paper. */
export class SheetsWanted extends CustomEvent<{
  readonly sheets: Sheets;
  readonly cases: readonly GroupCase[];
  /** A worksheet for each of them; nobody named: one, with a line for the name. */
  readonly learners: readonly string[];
}> {
  constructor(sheets: Sheets, cases: readonly GroupCase[], learners: readonly string[]) {
    super('sheets-wanted', { detail: { sheets, cases, learners }, bubbles: true });
  }
}
