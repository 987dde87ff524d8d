import { calmOf } from '../danger/calm';
import { lookedAt } from '../danger/find';
import type { Sign } from '../danger/shapes';
import { isSoon } from '../danger/soon';
import type { Terms } from './linear';

/** In so many sizes a text is told: two words, four, eight …; short ones tell more in each word. */
const sizes = 7;

const sizeOf = (text: string): number =>
  Math.min(sizes, Math.floor(Math.log2(1 + text.trim().split(/\s+/).length)));

/** Whether a sign names a danger outright, may be a mere mention, or counts only where something is told. */
const howOf = ({ told, mention }: Sign): string => (told ? 'told' : mention ? 'mention' : 'named');

/**
 * What is weighed of a text to tell whether somebody may be hurt: its words and pairs of words, the
 * lists of the signs of danger that it has a word of, the signs it shows, and how it is told.
 */
export function urgentTerms(text: string): Terms {
  const { words, stems, named, dangers } = lookedAt(text);
  const terms = new Map<string, string>();
  const add = (term: string, said: string): void => {
    if (!terms.has(term)) terms.set(term, said);
  };
  stems.forEach((stem, at) => {
    if (/^\d/.test(stem)) return;
    const word = words[at] ?? '';
    add(stem, word);
    const before = stems[at - 1];
    if (before !== undefined) {
      add(/^\d/.test(before) ? `0 ${stem}` : `${before} ${stem}`, `${words[at - 1]} ${word}`);
    }
  });
  for (const [list, said] of named) add(`~${list}`, said);
  for (const { sign, because } of dangers) {
    const how = howOf(sign);
    add(`!${how}`, because.join(' … '));
    add(`!${how} ${sign.kind}`, because.join(' … '));
  }
  if (dangers.length === 0) add('!none', '');
  const joined =
    text
      .toLowerCase()
      .replace(/[’']/g, '')
      .match(/[a-z]+/g) ?? [];
  joined.forEach((word, at) => {
    if (at > 0) add(`=${joined[at - 1]} ${word}`, `${joined[at - 1]} ${word}`);
  });
  for (const sentence of text.split(/(?<=[.?!])\s|\n+/)) {
    const calm = calmOf(sentence);
    if (calm !== undefined) add(`:${calm}`, '');
    const asks = sentence.trim().endsWith('?') ? '?' : '.';
    for (const { sign } of lookedAt(sentence).dangers) add(`${asks}${howOf(sign)}`, '');
  }
  add(text.includes('?') ? '?' : '.', '');
  if (/\?\s*$/.test(text)) add('?$', '');
  if (isSoon(text)) add(':soon', '');
  add(`#${sizeOf(text)}`, '');
  return terms;
}

/** Whether a term may say what kind of danger it is: single words, lists and signs do. */
export const saysKind = (term: string): boolean => /^(?:[~!].*|[a-z]\S*)$/.test(term);
