import type { FactsGiven, OldId, Topic } from '@tarebook/rules/engine';
import type { PhrasingContent, RootContent } from 'mdast';

/** A place in a document: line and column from 1, offset from 0. */
export type Place = { readonly line: number; readonly column: number; readonly offset: number };

/** A stretch of the document's text, from `start` up to, not including, `end`. */
export type Span = { readonly start: Place; readonly end: Place };

/** Something wrong with a document, in one sentence, and where. */
export type Trouble = { readonly line: number; readonly column: number; readonly says: string };

export type Front = {
  readonly title: string;
  readonly topic: string;
  readonly asked?: string;
  readonly level?: 'starter' | 'working' | 'hard';
  /** ISO 8601 day. */
  readonly asOf?: string;
  /** Which of the topic's askings is answered first. */
  readonly asking?: string;
  /** Who asked; with `credit`, how that may be said. Both stay on the device. */
  readonly asker?: string;
  readonly credit?: 'yes' | 'no' | 'first-name';
  readonly askedOn?: string;
  readonly status?: 'open' | 'waiting' | 'answered';
};

/** One row of a table of facts. */
export type FactRow = {
  readonly id: string;
  /** The author's words after the id; '' where there are none. */
  readonly words: string;
  readonly idPlace: Place;
  readonly value: string;
  readonly valueSpan: Span;
  readonly readFrom: string;
};

/** One row of a list fact: what it is called, and its cells by column id. */
export type ListRow = {
  readonly label: string;
  readonly cells: Readonly<Record<string, { readonly text: string; readonly span: Span }>>;
};

export type Expectation = {
  readonly name: string;
  readonly text: string;
  readonly place: Place;
  readonly valueSpan: Span;
};

/** The document from top to bottom. */
export type Block =
  | { readonly kind: 'prose'; readonly node: RootContent }
  | { readonly kind: 'facts'; readonly rows: readonly FactRow[]; readonly end: Place }
  | {
      readonly kind: 'list';
      readonly fact: string;
      readonly columns: readonly string[];
      readonly rows: readonly ListRow[];
      readonly end: Place;
    }
  | {
      readonly kind: 'predict';
      readonly result: string;
      readonly within: string;
      readonly children: readonly RootContent[];
    }
  | { readonly kind: 'expect'; readonly rows: readonly Expectation[] };

export type CaseDocument = {
  readonly text: string;
  readonly front: Front;
  /** Undefined when the topic is missing or not known. */
  readonly topic?: Topic;
  readonly blocks: readonly Block[];
  /** By their present ids, whatever ids the document has. */
  readonly facts: FactsGiven;
  /** The old ids that the document has. */
  readonly renamed: readonly OldId[];
  readonly readFrom: Readonly<Record<string, string>>;
  readonly expectations: readonly Expectation[];
  /** All that is wrong, in the order of the text; a case with any is not run. */
  readonly troubles: readonly Trouble[];
};

/** In prose, a code span that begins with `=` shows the live value of a result. */
export function liveValueIn(node: PhrasingContent): string | undefined {
  if (node.type !== 'inlineCode' || !node.value.startsWith('=')) return undefined;
  return node.value.slice(1).trim();
}
