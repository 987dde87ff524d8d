import type { Ends } from '../answer/shapes';
import type { FactsGiven } from '../check/given';
import type { Source } from '../define/source';
import type { Sayable } from '../words/value';

/** A value before or after: a range in a unit, an option, `none` for a row left out, null: untold. */
export type Told = Ends | string | null;

/** One change of one fact. */
export type FactChange = {
  readonly fact: string;
  /** Of a list: which row, from 1, and what it is called where it has a name. */
  readonly row?: number;
  readonly rowName?: string;
  readonly column?: string;
  /** Of several facts changed in one proportion: the result that `from` and `to` are about. */
  readonly shown?: string;
  readonly from: Told;
  readonly to: Told;
};

export type Remedy = FactChange & {
  /** The change as an instruction, and what comes out then. */
  readonly says: string;
  readonly message: Sayable;
  /** The outcome it yields, as an answer names it; seen by judging the changed facts again. */
  readonly outcome: string;
  readonly words: string;
  /** How much it asks, small first; equal ones are ordered by `size`. */
  readonly asks: number;
  /** How much of the fact changes, in base units; of options and the like nothing. */
  readonly size: number;
  readonly source: Source;
  /** The second change of a pair. */
  readonly with?: FactChange;
  /** All facts as they then are. */
  readonly facts: FactsGiven;
};

/** A change that, as far as it goes, does not turn the outcome, or turns it and upsets something. */
export type NoHelp = FactChange & { readonly says: string; readonly message: Sayable };

export type Remedies = {
  /** What the facts as they are come to. */
  readonly outcome: string;
  /** Single changes, those that ask least first; if there is none, the smallest pair, if any. */
  readonly remedies: readonly Remedy[];
  readonly noHelp: readonly NoHelp[];
  /** Not all changes were tried, as there were too many for the time there is. */
  readonly cutShort?: true;
};
