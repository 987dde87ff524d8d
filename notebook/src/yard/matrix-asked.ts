import type { FactsGiven } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { CatalogueFiles } from '@tarebook/sweep';
import type { House } from '../state/house';

/** Which yard is meant from here on; told once, and again when it is another. */
export type YardMeant = {
  readonly kind: 'yard';
  readonly house: House | undefined;
  readonly files: CatalogueFiles | undefined;
};

/** All pairs of the yard, with so many people and so much packed. */
export type MatrixAsked = {
  readonly kind: 'all';
  /** Which asking it is: of an earlier one nothing more is told. */
  readonly turn: number;
  readonly facts: FactsGiven;
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
      readonly vehicles: readonly Named[];
      readonly trailers: readonly Named[];
    }
  | {
      /** Rows one after another, from this one on. */
      readonly kind: 'rows';
      readonly turn: number;
      readonly from: number;
      readonly levels: Uint8Array;
    }
  /** Milliseconds of reckoning alone, as the worker's own clock has them. */
  | { readonly kind: 'done'; readonly turn: number; readonly took: number }
  | { readonly kind: 'pair'; readonly pair: PairTold }
  | { readonly kind: 'refused'; readonly says: string };
