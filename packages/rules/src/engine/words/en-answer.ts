import { type Interval, showFigures } from '../../quantity';
import { catalogue } from './en/catalogue';
import { finding } from './en/finding';
import { small } from './en/grammar';
import { house } from './en/house';
import { missing } from './en/missing';
import { sentence } from './en/sentence';
import type { Language } from './language';

/** The words of an answer itself; those of its working stand in en-aloud.ts, the others in en.ts. */
export const answerWords = {
  ...sentence,
  ...finding,
  ...catalogue,
  ...house,
  ...missing,
};

const hundredths = (value: number): string => `${Math.round(value * 100) / 100}`;

/** A year has no comma. */
export function yearsSaid(
  { lo, hi }: Interval,
  { unknown, to }: { readonly unknown: string; readonly to: string },
): string {
  if (lo === -Infinity && hi === Infinity) return unknown;
  if (hi === Infinity) return `${hundredths(lo)} or later`;
  if (lo === -Infinity) return `${hundredths(hi)} or earlier`;
  return lo === hi ? hundredths(lo) : `${hundredths(lo)}${to}${hundredths(hi)}`;
}

/** American English as it is written, as far as an answer wants it. */
export const answerEnglish: Language = {
  tag: 'en-US',
  words: answerWords,
  quantity: (figures, medium) => showFigures(figures, medium === 'print' ? '\u00a0' : ' '),
  years: (ends) => yearsSaid(ends, { unknown: 'unknown', to: '–' }),
  text: (text) => text,
  heading: small,
  option: (option) => option,
  own: (words) => words,
};
