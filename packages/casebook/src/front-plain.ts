import type { Place } from './shapes';

export type Point = Pick<Place, 'line' | 'column'>;

export type EntryWords = { readonly text: string; readonly at: Point };

/** One row of a list whose rows have keys of their own. */
export type EntryRow = { readonly at: Point; readonly cells: Readonly<Record<string, EntryWords>> };

/** One key of the front matter with its words, if it has any; lines count from the front's first. */
export type Entry = {
  readonly key: string;
  readonly at: Point;
  readonly value?: EntryWords | 'list';
  /** Of a list, its rows, where every one of them has keys. */
  readonly rows?: readonly EntryRow[];
  /** Of a list of plain words, those. */
  readonly items?: readonly EntryWords[];
};

/**
 * A line of `key: plain words`, of which YAML and this say the same: the words begin with nothing
 * that YAML gives a meaning, hold no `: ` and no ` #`, and end in no colon.
 *
 *     title: A five-seat crossover and a single-axle trailer
 *     key    words
 */
const line = /^([a-z][a-z-]{0,30}): {1,20}([\p{L}\p{N}“‘(](?:[^\p{C}\p{Z}]| (?!#))*)$/u;

/**
 * The keys and words of a front matter in which every line is as plain as that; undefined where any
 * is not, for YAML to read.
 */
export function plainEntries(source: string): readonly Entry[] | undefined {
  const entries = new Map<string, Entry>();
  for (const [index, text] of source.split(/\r?\n/).entries()) {
    const [whole, key, words] = line.exec(text) ?? [];
    if (whole === undefined || key === undefined || words === undefined) return undefined;
    if (/:(?: |$)/.test(words) || words.endsWith(' ') || entries.has(key)) return undefined;
    const at = { line: index + 1, column: 1 };
    const value = { text: words, at: { line: index + 1, column: text.length - words.length + 1 } };
    entries.set(key, { key, at, value });
  }
  return [...entries.values()];
}
