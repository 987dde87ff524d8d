import type { FactsGiven, Level } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { Accessories, Entry, EntryMove, Offers, RefusedRow, Wish } from '@tarebook/sweep';
import type { Bar } from '../state/bar';
import type { House } from '../state/house';
import type { LoadRow } from '../state/loads';
import type { OwnFileName, OwnTexts } from '../state/own-catalogue';

/** One vehicle or one trailer as told, to be set against the yard. */
export type YardAsked = {
  readonly kind: 'which';
  readonly facts: FactsGiven;
  /** What of the catalogue is meant; a fact that is told counts before its. */
  readonly chosen: { readonly side: 'vehicles' | 'trailers'; readonly name: string } | undefined;
  readonly system: UnitSystem;
  readonly house: House | undefined;
  /** The dealer's own catalogue; absent: the invented one. */
  readonly files: OwnTexts | undefined;
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
  readonly cells: Readonly<Record<string, string>>;
  /** What was judged, to be opened as a case. */
  readonly facts: FactsGiven;
};

/** Why one of the yard comes out so; told after all are counted, those that are looked at first. */
export type YardWhy = {
  readonly name: string;
  /** What else has to be known before anything can be said. */
  readonly asks: readonly string[];
  /** The answer in one sentence. */
  readonly says: string;
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
  readonly files: OwnTexts | undefined;
  /** What stands in it, where somebody said so; absent: by its name and columns. */
  readonly as?: Imported['file'] | undefined;
  /** What columns nobody knows are called, as somebody just said: theirs to ours. */
  readonly columns: Readonly<Record<string, string>>;
};

/** What was read of a file; nothing of it counts until somebody says so. */
export type Imported = {
  readonly file: Exclude<OwnFileName, 'columns.csv'>;
  /** Of vehicles and trailers in our columns, else as it came. */
  readonly text: string;
  readonly count: number;
  readonly refused: readonly RefusedRow[];
  /** What of a row that was taken was not understood. */
  readonly notes: readonly RefusedRow[];
  /** Columns nobody knows, and what they may be called. */
  readonly unknown: readonly string[];
  readonly mayBe: readonly string[];
  /** What is otherwise than in the catalogue that counts now. */
  readonly moves: readonly EntryMove[];
  /** What columns are called, to be remembered for the next file; undefined where nobody said anything. */
  readonly columns: string | undefined;
};

/** What stands beside vehicles and trailers is asked for. */
type BesideAsked = { readonly kind: 'beside'; readonly files: OwnTexts | undefined };

/** Accessories with the rate book, what is offered on which line, and loads, of one's own or invented. */
export type Beside = {
  readonly accessories: Accessories;
  readonly offers: Offers;
  readonly trailers: readonly Entry[];
  /** Undefined where there are none of one's own. */
  readonly loads: readonly LoadRow[] | undefined;
  /** What of it is one's own. */
  readonly isOwn: Readonly<Record<'accessories' | 'rates' | 'offers', boolean>>;
};

export type AnyAsked = YardAsked | ImportAsked | BesideAsked;
/** Whys come after what was found, some at a time, with the turn they belong to. */
type WhysTold = { readonly whys: readonly YardWhy[]; readonly turn: number };
export type AnyTold =
  | YardTold
  | WhysTold
  | { readonly imported: Imported }
  | { readonly beside: Beside }
  | { readonly refused: string };

export type YardTold = { readonly found: YardFound } | { readonly refused: string };
