import type { Between, Closeness, Interval } from '../../quantity';

/**
 * What is said is kept as codes with values; a language makes words of them (see say.ts).
 *
 *     { code: 'runs-out', values: { short: { text: 'payload' }, left: { lo: 52, hi: 52, unit: 'lb' } } }
 *                              │
 *                              ▼  written, spoken, in print; US or metric; any language
 *     “Payload runs out first: 52 lb left of 1,400 lb.”
 */

/** Both ends in a unit; an open end is ±Infinity, which JSON writes as null. */
export type Ends = Interval & { readonly unit: string };

/**
 * A quantity, and how closely it is told; a year is no amount, and has no comma. What lies between
 * two sides is a margin, unless it is to be told more closely.
 */
export type Quantity = Ends & Between & { readonly style?: Closeness | 'year' };

/** A text of a rule set, which is its own key in another language; `{name}` in it is filled. */
export type Text = { readonly text: string; readonly values?: Values };

/** A label of a rule set where it stands inside a sentence. */
export type Heading = { readonly heading: string };

/** An option of a choice, as cases write it. */
export type Option = { readonly option: string };

/** What a person wrote: told as it stands, in whatever language. */
export type Own = { readonly own: string };

/** A code with its values. */
export type Said = { readonly code: string; readonly values: Values };

export type Sayable = Quantity | Text | Heading | Option | Own | Said;

/** Words, numbers and yes or no among the values steer the sentence and are not said themselves. */
export type Value = Sayable | string | number | boolean | null | readonly Sayable[];
export type Values = Readonly<Record<string, Value | undefined>>;

export type Medium = 'written' | 'spoken' | 'print';

/** Words of one value, by the language, units and medium in hand. */
export type Say = {
  (value: Sayable): string;
  readonly medium: Medium;
};

export const text = (words: string, values?: Values): Text =>
  values === undefined ? { text: words } : { text: words, values };
export const heading = (label: string): Heading => ({ heading: label });
export const own = (words: string): Own => ({ own: words });

/** How a thing of a rule set is called inside a sentence: by its noun, else by its label. */
export const nounOr = (
  entry: { readonly noun?: string | undefined; readonly label: string } | undefined,
  id: string,
): Sayable => {
  if (entry === undefined) return own(id);
  return entry.noun === undefined ? heading(entry.label) : text(entry.noun);
};
