import type { Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import type { Say, Sayable } from '../words/value';
import type { RankingAnswer, SelectionAnswer } from './shapes';

/** What catalogues add to an answer; kept as formula/brought.ts keeps what they add to formulas. */
type Listed = {
  readonly lists: (topic: Topic, run: Run, say: Say) => readonly SelectionAnswer[];
  readonly rankings: (topic: Topic, run: Run, say: Say) => readonly RankingAnswer[];
  /** The wishes that stand against an order. */
  readonly against: (topic: Topic, run: Run) => readonly Sayable[];
};

const nothing: Listed = { lists: () => [], rankings: () => [], against: () => [] };

let here = nothing;

export function bringListed(code: Listed): void {
  here = code;
}

/** Where a topic has catalogues, its formulas have seen to it that the code is here. */
export const fromCatalogues = (): Listed => here;
