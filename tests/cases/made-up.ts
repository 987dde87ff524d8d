import { english, type Language } from '@tarebook/rules/engine';

const bracketed = (text: string): string => (text === '' ? '' : `⟦${text}⟧`);

/**
 * A made-up second language: every sentence, name and number of English in brackets. What stands
 * outside of brackets was said outside of the words.
 */
export const madeUp: Language = {
  tag: 'x-bracketed',
  words: Object.fromEntries(
    Object.entries(english.words).map(([code, word]) => [
      code,
      (values, say) => bracketed(word(values, say)),
    ]),
  ),
  quantity: (figures, medium) => bracketed(english.quantity(figures, medium)),
  years: (from, medium) => bracketed(english.years(from, medium)),
  text: (text, medium) => bracketed(english.text(text, medium)),
  heading: (label, medium) => bracketed(english.heading(label, medium)),
  option: (option, medium) => bracketed(english.option(option, medium)),
  own: (words, medium) => bracketed(english.own(words, medium)),
};

/** What is left of a text once everything in brackets is taken out. */
export function outside(text: string): string {
  const inner = /⟦[^⟦⟧]*⟧/g;
  let [before, after] = ['', text];
  while (before !== after) [before, after] = [after, after.replace(inner, '')];
  return after;
}
