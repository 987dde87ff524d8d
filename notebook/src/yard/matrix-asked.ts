import type { FactsGiven } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { CatalogueFiles } from '@tarebook/sweep';
import type { House } from '../state/house';

/** All pairs of the yard, with so many people and so much packed. */
export type MatrixAsked = {
  readonly kind: 'all';
  /** Which asking it is: of an earlier one nothing more is told. */
  readonly turn: number;
  readonly facts: FactsGiven;
  readonly house: House | undefined;
  readonly files: CatalogueFiles | undefined;
};

/** One pair, as it is told on looking closer. */
export type PairAsked = {
  readonly kind: 'pair';
  readonly vehicle: string;
  readonly trailer: string;
  readonly facts: FactsGiven;
  readonly system: UnitSystem;
  readonly house: House | undefined;
  readonly files: CatalogueFiles | undefined;
};

export type PairTold = {
  readonly vehicle: string;
  readonly trailer: string;
  readonly words: string;
  readonly says: string;
  readonly facts: FactsGiven;
};

type Named = { readonly name: string; readonly cells: Readonly<Record<string, string>> };

export type MatrixTold =
  | {
      readonly kind: 'begun';
      readonly turn: number;
      readonly vehicles: readonly Named[];
      readonly trailers: readonly Named[];
    }
  | {
      readonly kind: 'row';
      readonly turn: number;
      readonly row: number;
      readonly levels: Uint8Array;
    }
  | { readonly kind: 'done'; readonly turn: number; readonly took: number }
  | { readonly kind: 'pair'; readonly pair: PairTold }
  | { readonly kind: 'refused'; readonly says: string };
