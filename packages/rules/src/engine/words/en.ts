import { showFigures } from '../../quantity';
import { catalogue } from './en/catalogue';
import { finding } from './en/finding';
import { small } from './en/grammar';
import { house } from './en/house';
import { missing } from './en/missing';
import { remedy } from './en/remedy';
import { sentence } from './en/sentence';
import { readAloud, spokenQuantity } from './en/spoken';
import type { Language } from './language';

export const words = { ...sentence, ...finding, ...catalogue, ...house, ...missing, ...remedy };

const between = { written: ' ', print: '\u00a0' } as const;

/** American English. */
export const english: Language = {
  tag: 'en-US',
  words,
  quantity: (figures, medium) =>
    medium === 'spoken' ? spokenQuantity(figures) : showFigures(figures, between[medium]),
  year: (value) => `${value}`,
  text: (text, medium) => (medium === 'spoken' ? readAloud(text) : text),
  heading: (label, medium) => small(medium === 'spoken' ? readAloud(label) : label),
  option: (option, medium) => (medium === 'spoken' ? option.replaceAll('-', ' ') : option),
  own: (words, medium) => (medium === 'spoken' ? readAloud(words) : words),
};
