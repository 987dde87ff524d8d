import type { Source } from './source';

/** What a silent fact is taken to be; it is then listed as assumed, unless `quiet`. */
export type Default<V> = {
  readonly value: V;
  readonly says: string;
  readonly source: Source;
  readonly quiet?: boolean;
};

type FactWords = {
  readonly label: string;
  /** How it is named inside a sentence (“the dry tongue”); absent: its label. */
  readonly noun?: string;
  /** The question that gets it, as said to the owner. */
  readonly ask: string;
  /** Where it can be read. */
  readonly where: string;
  /** Taken as written, not as measured: a rating, a count, a size stamped on the part. */
  readonly exact?: boolean;
  /** How to know it better, as an instruction: “Weigh the tongue”. */
  readonly instead?: string;
  /** What it is, for someone who has never heard of it. */
  readonly means?: string;
};

export type QuantityFact = FactWords & {
  readonly kind: 'quantity';
  /** A unit symbol, or '' for a count. */
  readonly unit: string;
  /** How many there are of something: nothing lies between two counts. */
  readonly counted?: boolean;
  /** It is read from a label and never changed, though nothing is held against it by itself. */
  readonly isRating?: boolean;
  /** It is a year, and no amount. */
  readonly year?: boolean;
  /** The least and most it can sensibly be, in `unit`; outside is refused. */
  readonly least: number;
  readonly most: number;
  readonly silent?: Default<number>;
};

export type ChoiceFact = FactWords & {
  readonly kind: 'choice';
  readonly options: readonly string[];
  /** The options stand in the order of a scale, such as gauges from thin to thick. */
  readonly scale?: boolean;
  readonly silent?: Default<string>;
};

export type YesNoFact = FactWords & {
  readonly kind: 'yes-no';
  readonly silent?: Default<'yes' | 'no'>;
};

export type Column = {
  readonly label: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly required: boolean;
  /** The question that gets it, where it is asked by itself. */
  readonly ask?: string;
  /** Where it can be read; absent: where the list is. */
  readonly where?: string;
};

/** A list of rows, such as what is loaded; not mentioned, it has none. */
export type RowsFact = FactWords & {
  readonly kind: 'rows';
  readonly columns: Readonly<Record<string, Column>>;
  readonly silent: Default<'none'>;
};

export type Fact = QuantityFact | ChoiceFact | YesNoFact | RowsFact;
