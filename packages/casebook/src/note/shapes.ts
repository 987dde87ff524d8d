import type { RootContent } from 'mdast';
import type { Expectation, Front, Trouble } from '../shapes';

/** What a note is about: what people ask that nothing has to be reckoned for. */
export const abouts = [
  'maker',
  'wish',
  'community',
  'places',
  'service',
  'accessory',
  'story',
  'house',
] as const;
export type About = (typeof abouts)[number];

/** Whether everybody may be told, or whoever owns the note is asked before. */
export const sayings = ['everybody', 'ask-first'] as const;
export type Saying = (typeof sayings)[number];

export type NoteLink = { readonly label: string; readonly address: string };

/** An answer that is no calculation: who keeps it, until when it is good, where more is read. */
export type NoteDocument = {
  readonly text: string;
  readonly front: Front;
  readonly about: About;
  /** ISO 8601 day, the last on which it may be said unchecked. */
  readonly goodUntil: string;
  readonly say: Saying;
  /** A role, such as “service lead”. */
  readonly owner?: string;
  readonly links: readonly NoteLink[];
  /** The path of a case whose verdict it shows, as it is written. */
  readonly leansOn?: string;
  /** What follows the front matter, without what it expects. */
  readonly blocks: readonly RootContent[];
  readonly expectations: readonly Expectation[];
  /** All that is wrong, in the order of the text; a note with any is not told. */
  readonly troubles: readonly Trouble[];
};

export type NoteOutcome = 'holds' | 'expired';
