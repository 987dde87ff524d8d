import type { Interval } from '../../quantity';
import type { Limit, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { ParameterValues, Run } from '../formula/run';
import type { Inputs } from '../value/values';
import type { Say, Sayable } from '../words/value';
import type { Holding } from './levels';
import type { RankingAnswer, SelectionAnswer } from './shapes';

/** What catalogues add to an answer; kept as formula/brought.ts keeps what they add to formulas. */
type Listed = {
  readonly lists: (topic: Topic, run: Run, say: Say) => readonly SelectionAnswer[];
  readonly rankings: (topic: Topic, run: Run, say: Say) => readonly RankingAnswer[];
  /** The wishes that stand against an order. */
  readonly against: (topic: Topic, run: Run) => readonly Sayable[];
  /** Where it is open which model is meant: what holds whichever it is, and what each limit leaves. */
  readonly byModel: (
    compiled: Compiled,
    inputs: Inputs,
    parameters: ParameterValues,
    holding: Holding,
    like: Run,
  ) => { readonly holding: Holding; readonly rooms: Rooms };
};

/** What a limit leaves, over all models; undefined where one is meant. */
export type Rooms = (limit: Pick<Limit, 'used' | 'limit'>) => Interval | undefined;

const nothing: Listed = {
  lists: () => [],
  rankings: () => [],
  against: () => [],
  byModel: (_, __, ___, holding) => ({ holding, rooms: () => undefined }),
};

let here = nothing;

export function bringListed(code: Listed): void {
  here = code;
}

/** Where a topic has catalogues, its formulas have seen to it that the code is here. */
export const fromCatalogues = (): Listed => here;
