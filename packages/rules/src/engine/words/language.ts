import type { Figures, Interval } from '../../quantity';
import type { Medium, Say, Values } from './value';

/** Makes words of the values of one code; as a method, so that each code may want values of its own. */
export type Worder = { of(values: Values, say: Say): string }['of'];

/** How a term of the trade is heard, and what it is. */
export type Term = {
  readonly heard: RegExp;
  readonly says: string;
  /** Where this is heard as well, it has been said. */
  readonly unless?: RegExp;
};

/** A language: words for every code, numbers with their units, and the texts of rule sets in it. */
export type Language = {
  /** By BCP 47, such as `en-US`. */
  readonly tag: string;
  readonly words: Readonly<Record<string, Worder>>;
  readonly quantity: (figures: Figures, medium: Medium) => string;
  readonly years: (from: Interval, medium: Medium) => string;
  /** A text of a rule set, its holes still open. */
  readonly text: (text: string, medium: Medium) => string;
  /** A text with its holes filled: where two figures meet, what is said once. Absent: as it is. */
  readonly joined?: (text: string, medium: Medium) => string;
  readonly heading: (label: string, medium: Medium) => string;
  readonly option: (option: string, medium: Medium) => string;
  readonly own: (words: string, medium: Medium) => string;
  /** What a listener may not know, with a short sentence that says what it is; the hardest first. */
  readonly terms?: readonly Term[];
};
