import type { FactsGiven, Level } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { CatalogueFiles, Wish } from '@tarebook/sweep';
import type { Bar } from '../state/bar';
import type { House } from '../state/house';

/** One vehicle or one trailer as told, to be set against the yard. */
export type YardAsked = {
  readonly kind: 'which';
  readonly facts: FactsGiven;
  /** What of the catalogue is meant; a fact that is told counts before its. */
  readonly chosen: { readonly side: 'vehicles' | 'trailers'; readonly name: string } | undefined;
  readonly system: UnitSystem;
  readonly house: House | undefined;
  /** The dealer's own catalogue; absent: the invented one. */
  readonly files: CatalogueFiles | undefined;
  readonly wishes: readonly Wish[];
};

/** One of the yard, as the list shows it. */
export type YardRow = {
  readonly name: string;
  readonly level: Level;
  readonly words: string;
  /** The limit that runs out first and how much is left; absent where none was asked. */
  readonly limit?: { readonly label: string; readonly bar: Bar; readonly left: string };
  /** What has to be looked up, and what it must come to. */
  readonly needs: readonly string[];
  /** What else has to be known before anything can be said. */
  readonly asks: readonly string[];
  /** The answer in one sentence. */
  readonly says: string;
  readonly cells: Readonly<Record<string, string>>;
  /** What was judged, to be opened as a case. */
  readonly facts: FactsGiven;
};

export type YardFound = {
  readonly against: 'trailers' | 'vehicles';
  readonly sentence: string;
  readonly next: string;
  readonly rows: readonly YardRow[];
  readonly cautions: readonly string[];
  /** Milliseconds of reckoning. */
  readonly took: number;
};

export type YardTold = { readonly found: YardFound } | { readonly refused: string };
