import { oneUnit, readAloud, spokenQuantity } from './en/spoken';
import { told } from './en/told';
import { working } from './en/working';
import { answerEnglish, answerWords, yearsSaid } from './en-answer';
import type { Language } from './language';
import type { Medium } from './value';

/** The words of an answer and of its working. */
export const aloudWords = { ...answerWords, ...working, ...told };

const written = answerEnglish;
const aloud =
  (read: (words: string) => string, otherwise: (words: string, medium: Medium) => string) =>
  (words: string, medium: Medium): string =>
    medium === 'spoken' ? read(words) : otherwise(words, medium);

/** American English, written and spoken, as far as an answer and its working want it. */
export const aloudEnglish: Language = {
  tag: written.tag,
  words: aloudWords,
  quantity: (figures, medium) =>
    medium === 'spoken' ? spokenQuantity(figures) : written.quantity(figures, medium),
  years: (ends, medium) =>
    medium === 'spoken'
      ? yearsSaid(ends, { unknown: 'not known', to: ' to ' })
      : written.years(ends, medium),
  text: aloud(readAloud, written.text),
  joined: aloud(oneUnit, (text) => text),
  heading: aloud((label) => written.heading(readAloud(label), 'spoken'), written.heading),
  option: aloud(
    (option) => readAloud(option.replaceAll('-', ' ').replace('inwc', 'inWC')),
    written.option,
  ),
  own: aloud(readAloud, written.own),
};
