import { type Interval, showFigures } from '../../quantity';
import { catalogue } from './en/catalogue';
import { finding } from './en/finding';
import { forms } from './en/forms';
import { small } from './en/grammar';
import { house } from './en/house';
import { missing } from './en/missing';
import { note } from './en/note';
import { remedy } from './en/remedy';
import { sentence } from './en/sentence';
import { readAloud, spokenQuantity } from './en/spoken';
import { told } from './en/told';
import { why } from './en/why';
import { working } from './en/working';
import type { Language } from './language';
import type { Medium } from './value';

export const words = {
  ...sentence,
  ...finding,
  ...catalogue,
  ...house,
  ...missing,
  ...remedy,
  ...working,
  ...told,
  ...why,
  ...forms,
  ...note,
};

const hundredths = (value: number): string => `${Math.round(value * 100) / 100}`;

/** A year has no comma. */
function years({ lo, hi }: Interval, medium: Medium): string {
  if (lo === -Infinity && hi === Infinity) return medium === 'spoken' ? 'not known' : 'unknown';
  if (hi === Infinity) return `${hundredths(lo)} or later`;
  if (lo === -Infinity) return `${hundredths(hi)} or earlier`;
  if (lo === hi) return hundredths(lo);
  return medium === 'spoken'
    ? `${hundredths(lo)} to ${hundredths(hi)}`
    : `${hundredths(lo)}–${hundredths(hi)}`;
}

const between = { written: ' ', print: '\u00a0' } as const;

/** American English. */
export const english: Language = {
  tag: 'en-US',
  words,
  quantity: (figures, medium) =>
    medium === 'spoken' ? spokenQuantity(figures) : showFigures(figures, between[medium]),
  years,
  text: (text, medium) => (medium === 'spoken' ? readAloud(text) : text),
  heading: (label, medium) => small(medium === 'spoken' ? readAloud(label) : label),
  option: (option, medium) => (medium === 'spoken' ? option.replaceAll('-', ' ') : option),
  own: (words, medium) => (medium === 'spoken' ? readAloud(words) : words),
};
