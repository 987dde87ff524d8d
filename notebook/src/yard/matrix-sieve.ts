import { levels } from '@tarebook/rules/engine';
import { numberIn } from '@tarebook/sweep';
import type { Named } from './matrix-asked';

/** What of all pairs is looked at; '' and undefined for whatever it be. */
export type Sieve = {
  readonly group: string;
  readonly line: string;
  /** Where trailers stand: here, ordered, sold. */
  readonly lot: string;
  readonly axles: string;
  /** Feet. */
  readonly longest: number | undefined;
  /** In the money of the catalogue. */
  readonly dearest: number | undefined;
  /** People that must find a place to sleep. */
  readonly sleeps: number | undefined;
  /** Levels that are left out, by their places among all. */
  readonly without: ReadonlySet<number>;
};

export const wholeYard: Sieve = {
  group: '',
  line: '',
  lot: '',
  axles: '',
  longest: undefined,
  dearest: undefined,
  sleeps: undefined,
  without: new Set(),
};

/** What is left: places among all vehicles, and among all trailers. */
export type Seen = { readonly rows: readonly number[]; readonly columns: readonly number[] };

/** A trailer's line: as its catalogue says, else what its name begins with. */
export const lineOf = ({ name, cells }: Named): string =>
  cells.line || (name.split(/\s+/)[0] ?? name);

/** What nobody tells is on neither side of any number. */
const figure = ({ cells }: Named, column: string): number =>
  numberIn(cells[column] ?? '') ?? Number.NaN;

const isWished = (trailer: Named, { line, lot, axles, longest, dearest, sleeps }: Sieve): boolean =>
  (line === '' || lineOf(trailer) === line) &&
  (lot === '' || trailer.cells.lot === lot) &&
  (axles === '' || trailer.cells.axles === axles) &&
  (longest === undefined || figure(trailer, 'length') <= longest) &&
  (dearest === undefined || figure(trailer, 'price') <= dearest) &&
  (sleeps === undefined || figure(trailer, 'sleeps') >= sleeps);

/** Every word once, in the order of the alphabet. */
export const kindsOf = (words: readonly string[]): readonly string[] =>
  [...new Set(words)].filter((word) => word !== '').toSorted((a, b) => a.localeCompare(b));

/**
 * What of the pairs is shown. Of a level that is left out no vehicle and no trailer stays for its
 * sake alone; a trailer whose length nobody tells is not short enough, nor cheap enough without a price.
 *
 * @param found levels row by row; a pair that is not judged yet counts as wanted
 */
export function seenThrough(
  sieve: Sieve,
  vehicles: readonly Named[],
  trailers: readonly Named[],
  found: Uint8Array,
): Seen {
  const { group, without } = sieve;
  const rows = [...vehicles.keys()].filter(
    (row) => group === '' || vehicles[row]?.cells.group === group,
  );
  const columns = [...trailers.keys()].filter((column) => {
    const trailer = trailers[column];
    return trailer !== undefined && isWished(trailer, sieve);
  });
  if (without.size === 0) return { rows, columns };
  const isWanted = Uint8Array.from({ length: 256 }, (_, level) => (without.has(level) ? 0 : 1));
  const at = (row: number, column: number): number =>
    isWanted[found[row * trailers.length + column] ?? 255] ?? 1;
  return {
    rows: rows.filter((row) => columns.some((column) => at(row, column) === 1)),
    columns: columns.filter((column) => rows.some((row) => at(row, column) === 1)),
  };
}

/** How many of the pairs that are seen have each level. */
export function countsOf({ rows, columns }: Seen, wide: number, found: Uint8Array): number[] {
  const counts = levels.map(() => 0);
  for (const row of rows) {
    for (const column of columns) {
      const level = found[row * wide + column] ?? 255;
      if (level < counts.length) counts[level] = (counts[level] ?? 0) + 1;
    }
  }
  return counts;
}
