import { type Interval, showFigures } from '../../quantity';
import { catalogue } from './en/catalogue';
import { finding } from './en/finding';
import { small } from './en/grammar';
import { house } from './en/house';
import { missing } from './en/missing';
import { sentence } from './en/sentence';
import { oneUnit, readAloud, spokenQuantity } from './en/spoken';
import { told } from './en/told';
import { working } from './en/working';
import type { Language } from './language';
import type { Medium } from './value';

/** The words of an answer itself; those of what is made of answers stand in en.ts. */
export const answerWords = {
  ...sentence,
  ...finding,
  ...catalogue,
  ...house,
  ...missing,
  ...working,
  ...told,
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

/** American English, as far as an answer speaks it. */
export const answerEnglish: Language = {
  tag: 'en-US',
  words: answerWords,
  quantity: (figures, medium) =>
    medium === 'spoken' ? spokenQuantity(figures) : showFigures(figures, between[medium]),
  years,
  text: (text, medium) => (medium === 'spoken' ? readAloud(text) : text),
  joined: (text, medium) => (medium === 'spoken' ? oneUnit(text) : text),
  heading: (label, medium) => small(medium === 'spoken' ? readAloud(label) : label),
  option: (option, medium) =>
    medium === 'spoken' ? readAloud(option.replaceAll('-', ' ').replace('inwc', 'inWC')) : option,
  own: (words, medium) => (medium === 'spoken' ? readAloud(words) : words),
};
