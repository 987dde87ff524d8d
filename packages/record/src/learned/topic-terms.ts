import { stemmer } from 'stemmer';
import { termOf, wordsOf } from '../terms';
import type { Terms } from './linear';

const sizes = 6;
const mostFigures = 3;

/** What is weighed of a text to tell what it asks about: its telling words, alone and by twos, and how it is told. */
export function topicTerms(text: string): Terms {
  const words = wordsOf(text.replace(/\d[\d,.]*/g, ' ')).filter(
    (word) => termOf(word) !== undefined,
  );
  const stems = words.map((word) => stemmer(word.toLowerCase()));
  const terms = new Map<string, string>();
  stems.forEach((stem, at) => {
    const word = words[at] ?? '';
    if (!terms.has(stem)) terms.set(stem, word);
    const pair = `${stems[at - 1]} ${stem}`;
    if (at > 0 && !terms.has(pair)) terms.set(pair, `${words[at - 1]} ${word}`);
  });
  const joined =
    text
      .toLowerCase()
      .replace(/[’']/g, '')
      .match(/[a-z]+/g) ?? [];
  joined.forEach((word, at) => {
    if (at > 0) terms.set(`=${joined[at - 1]} ${word}`, '');
  });
  if (text.includes('?')) terms.set('?', '');
  terms.set(`#${Math.min(sizes, Math.floor(Math.log2(1 + text.trim().split(/\s+/).length)))}`, '');
  terms.set(`0${Math.min(mostFigures, (text.match(/\d+/g) ?? []).length)}`, '');
  return terms;
}
