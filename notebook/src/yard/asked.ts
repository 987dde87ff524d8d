import type { FactsGiven, Level } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { CatalogueFiles, EntryMove, RefusedRow, Wish } from '@tarebook/sweep';
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
  /** How many people ride along. */
  readonly people: number;
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
  /** Of those that may go, the ones in which all can sleep; '' where that says nothing. */
  readonly sleeps: string;
  readonly rows: readonly YardRow[];
  readonly cautions: readonly string[];
  /** Milliseconds of reckoning. */
  readonly took: number;
};

/** A file as somebody's spreadsheet wrote it, to be read row by row. */
export type ImportAsked = {
  readonly kind: 'import';
  /** What the file is called. */
  readonly from: string;
  readonly text: string;
  /** The catalogue that counts until then. */
  readonly files: CatalogueFiles | undefined;
  /** What columns nobody knows are called, as somebody just said: theirs to ours. */
  readonly columns: Readonly<Record<string, string>>;
};

/** What was read of a file; nothing of it counts until somebody says so. */
export type Imported = {
  readonly file: 'vehicles.csv' | 'trailers.csv';
  /** In our columns. */
  readonly text: string;
  readonly count: number;
  readonly refused: readonly RefusedRow[];
  /** Columns nobody knows, and what they may be called. */
  readonly unknown: readonly string[];
  readonly mayBe: readonly string[];
  /** What is otherwise than in the catalogue that counts now. */
  readonly moves: readonly EntryMove[];
};

export type AnyAsked = YardAsked | ImportAsked;
export type AnyTold = YardTold | { readonly imported: Imported } | { readonly refused: string };

export type YardTold = { readonly found: YardFound } | { readonly refused: string };
