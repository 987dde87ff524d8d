import { distance } from 'fastest-levenshtein';
import { lookalikes } from './lookalikes';

/** A shorter word with a letter changed is another word. */
const shortest = 5;
/** From this length on two letters may be wrong. */
const long = 9;

/**
 * Finds the listed word that was meant by one that is not listed: it begins alike, and a letter is
 * wrong, missing or too much. A word that is one of its own is taken as it stands.
 */
export function speller(listed: ReadonlySet<string>): (word: string) => string | undefined {
  const byLetter = new Map<string, string[]>();
  for (const word of listed) {
    const [letter = ''] = word;
    const both = word.endsWith('s') ? [word] : [word, `${word}s`];
    const long = both.filter((each) => each.length >= shortest);
    byLetter.set(letter, [...(byLetter.get(letter) ?? []), ...long]);
  }
  const meant = new Map<string, string | undefined>();
  return (word) => {
    // A short word may be a long one that lacks a letter.
    if (word.length < shortest - 1 || word.length > 20 || /\d/.test(word) || lookalikes.has(word))
      return undefined;
    if (meant.has(word)) return meant.get(word);
    const far = word.length >= long ? 2 : 1;
    const near = byLetter
      .get(word[0] ?? '')
      ?.map((each) => ({
        each,
        away: swapped(each, word) || isHeard(each, word) ? 1 : distance(each, word),
        isAlike: heard(each) === heard(word) ? 0 : 1,
      }))
      .filter(({ each, away }) => away <= far && each.length >= Math.min(shortest, word.length + 1))
      .toSorted(
        (a, b) =>
          a.away - b.away ||
          a.isAlike - b.isAlike ||
          // A letter is left out oftener than it is changed.
          b.each.length - a.each.length ||
          a.each.localeCompare(b.each),
      )[0]?.each;
    if (meant.size < 20_000) meant.set(word, near);
    return near;
  };
}

/** What is heard alike though its vowels are others: “tounge”, “weels”. */
const heard = (word: string): string =>
  word[0] +
  word
    .slice(1)
    .replace(/[aeiouyhw]/g, '')
    .replace(/(.)\1+/g, '$1');

/** From this length on what is heard alike is the same word with two letters wrong. */
const alike = 6;

const isHeard = (listed: string, word: string): boolean =>
  Math.min(listed.length, word.length) >= alike &&
  heard(listed) === heard(word) &&
  distance(listed, word) <= 2;

/** Two letters that changed their places. */
function swapped(a: string, b: string): boolean {
  if (a.length !== b.length) return false;
  const at = [...a].findIndex((letter, i) => letter !== b[i]);
  return (
    at >= 0 && a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2)
  );
}
