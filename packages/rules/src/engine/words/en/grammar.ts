import type { Say, Sayable } from '../value';

/** The first letter large, as at the beginning of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A name with its number, as of a floor plan: “Rushlight 8”. */
const named = /^\p{Lu}\p{Ll}+ \d+\b/u;

/** A word that is not written small anywhere: “AGM”, “LiFePO₄”. */
const abbreviated = /^\p{Lu}(?:\p{Lu}|\p{Ll}\p{Lu})/u;

/** The first letter small, as inside a sentence; a label that must not be lowered has a noun. */
export const small = (text: string): string =>
  named.test(text) || abbreviated.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);

/** “a”, “a and b”, “a, b and c” */
export function listed(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** Sentences one after another. */
export const spaced = (parts: readonly string[]): string =>
  parts.filter((each) => each !== '').join(' ');

const smallNumbers = [
  ...['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'],
  ...['eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen'],
  ...['eighteen', 'nineteen', 'twenty'],
];

/** A small count in letters. */
export const inLetters = (count: number): string => smallNumbers[count] ?? `${count}`;

/** In quotation marks, which nobody hears. */
export const quoted = (value: Sayable, say: Say): string =>
  say.medium === 'spoken' ? say(value) : `“${say(value)}”`;

/** A list, a thing a line; without those of which nothing is said. */
export const bullets = (of: readonly string[]): string =>
  of
    .filter((each) => each !== '')
    .map((each) => `– ${each}`)
    .join('\n');
