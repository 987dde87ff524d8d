import type { FactsGiven } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { CatalogueFiles } from '@tarebook/sweep';
import type { House } from '../state/house';

/** Rows are dealt out to so many workers, one after another; this one has every `of`-th from `at` on. */
export type Share = { readonly at: number; readonly of: number };

/** Which yard is meant from here on; told once, and again when it is another. */
export type YardMeant = {
  readonly kind: 'yard';
  readonly share: Share;
  /** Which yard it is: its workers tell the same of it. */
  readonly yard: number;
  readonly house: House | undefined;
  readonly files: CatalogueFiles | undefined;
};

/** All pairs of the yard, with so many people and so much packed. */
export type MatrixAsked = {
  readonly kind: 'all';
  /** Which asking it is: of an earlier one nothing more is told. */
  readonly turn: number;
  readonly adults: number;
  /** Pounds packed in the trailer. */
  readonly cargo: number;
};

/** One pair, as it is told on looking closer. */
export type PairAsked = {
  readonly kind: 'pair';
  readonly vehicle: string;
  readonly trailer: string;
  readonly facts: FactsGiven;
  readonly system: UnitSystem;
};

export type PairTold = {
  readonly vehicle: string;
  readonly trailer: string;
  readonly words: string;
  /** What decides it, and what is left of that: `Payload: 120 lb left`; '' where none does. */
  readonly decides: string;
  readonly says: string;
  readonly facts: FactsGiven;
};

export type Named = { readonly name: string; readonly cells: Readonly<Record<string, string>> };

export type MatrixTold =
  | {
      readonly kind: 'begun';
      readonly yard: number;
      readonly vehicles: readonly Named[];
      readonly trailers: readonly Named[];
    }
  | {
      /** Rows of a share one after another, from this one of all on, `of` apart. */
      readonly kind: 'rows';
      readonly turn: number;
      readonly from: number;
      readonly of: number;
      readonly levels: Uint8Array;
    }
  /** Milliseconds of reckoning alone, as the worker's own clock has them. */
  | { readonly kind: 'done'; readonly turn: number; readonly took: number }
  | { readonly kind: 'pair'; readonly pair: PairTold }
  | { readonly kind: 'refused'; readonly says: string };
