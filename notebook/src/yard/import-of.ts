import {
  catalogueFile,
  columnsFor,
  entryMoves,
  readCatalogue,
  readSheet,
  sideOfSheet,
} from '@tarebook/sweep';
import type { ImportAsked, Imported } from './asked';
import { inventedFiles } from './invented';

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** What somebody's file says, row by row, in our columns. */
export function importOf({ from, text, files, columns }: ImportAsked): Imported {
  const { heads, refused } = readSheet(from, text);
  const [first] = refused;
  if (heads.length === 0) {
    throw new Error(
      first
        ? `${from}, line ${first.line}: ${first.says}`
        : `${from} is empty; its first row names the columns.`,
    );
  }
  const side = sideOfSheet(from, heads);
  if (!side) {
    throw new Error(
      `${from} may be of vehicles or of trailers; call it vehicles.csv or trailers.csv, or name its columns: it has ${heads.slice(0, 6).join(', ')}.`,
    );
  }
  const file = side === 'vehicle' ? 'vehicles.csv' : 'trailers.csv';
  const kind = side === 'vehicle' ? 'vehicles' : 'trailers';
  const own = Object.entries(columns).map(
    ([theirs, ours]) => `${file},${quoted(theirs)},${quoted(ours)}`,
  );
  const read = readCatalogue({
    [file]: text,
    'columns.csv': ['file,theirs,ours', ...own].join('\n'),
  });
  const now = readCatalogue({ ...inventedFiles, ...files });
  const isOwn = files?.[file] !== undefined;
  return {
    file,
    text: catalogueFile(read[kind]),
    count: read[kind].length,
    refused: read.refused,
    unknown: read.unknown[file] ?? [],
    mayBe: columnsFor(side),
    // Against the invented catalogue all would be new.
    moves: isOwn ? entryMoves(now[kind], read[kind]) : [],
  };
}
