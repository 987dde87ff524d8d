import {
  catalogueFile,
  columnsFor,
  columnsOfTable,
  entryMoves,
  type RefusedRow,
  readAccessories,
  readCatalogue,
  readOffers,
  readSheet,
  type Side,
  sideOfSheet,
  type TableFile,
  tableOfSheet,
  underHeads,
  unknownInTable,
} from '@tarebook/sweep';
import type { OwnTexts } from '../state/own-catalogue';
import type { ImportAsked, Imported } from './asked';
import { besideOf } from './beside-of';
import { inventedFiles } from './invented';

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** What columns of a file are called: as somebody said before, and as somebody says now. */
function columnsSaid(
  before: string | undefined,
  file: string,
  now: Readonly<Record<string, string>>,
): string {
  const said = readSheet('columns.csv', before ?? '').rows.flatMap(({ cells }) =>
    cells.file === file && Object.hasOwn(now, cells.theirs ?? '')
      ? []
      : [[cells.file ?? '', cells.theirs ?? '', cells.ours ?? '']],
  );
  const fresh = Object.entries(now).flatMap(([theirs, ours]) =>
    ours === '' ? [] : [[file, theirs, ours]],
  );
  const lines = [...said, ...fresh].map((cells) => cells.map(quoted).join(','));
  return `${['file,theirs,ours', ...lines].join('\n')}\n`;
}

/** Vehicles or trailers, row by row, in our columns. */
function entriesOf(side: Side, { text, files, columns }: ImportAsked): Imported {
  const file = side === 'vehicle' ? 'vehicles.csv' : 'trailers.csv';
  const kind = side === 'vehicle' ? 'vehicles' : 'trailers';
  const said = columnsSaid(files?.['columns.csv'], file, columns);
  const read = readCatalogue({ [file]: text, 'columns.csv': said });
  const now = readCatalogue({ ...inventedFiles, ...files });
  const isOwn = files?.[file] !== undefined;
  return {
    file,
    text: catalogueFile(read[kind]),
    count: read[kind].length,
    refused: read.refused,
    notes: [],
    unknown: read.unknown[file] ?? [],
    mayBe: columnsFor(side),
    // Against the invented catalogue all would be new.
    moves: isOwn ? entryMoves(now[kind], read[kind]) : [],
    columns: Object.keys(columns).length === 0 ? undefined : said,
  };
}

type Read = {
  readonly count: number;
  readonly refused: readonly RefusedRow[];
  readonly notes?: readonly RefusedRow[];
};

/** Any other table, read as it will be once it is kept beside what there is. */
function tableRead(file: TableFile, text: string, files: OwnTexts | undefined): Read {
  const whole: OwnTexts = { ...files, [file]: text };
  if (file === 'loads.csv') {
    const { loads, refused } = readCatalogue({ 'loads.csv': text });
    return { count: loads.length, refused };
  }
  if (file === 'rates.csv') {
    const { rates } = readAccessories({ 'rates.csv': text });
    return { count: rates.rates.length, refused: rates.refused };
  }
  if (file === 'options.csv') {
    const { options, refused } = readOffers({
      ...{ 'offers.csv': '', 'options.csv': text, 'floor-plans.csv': '' },
    });
    return { count: options.size, refused };
  }
  const { accessories, offers } = besideOf(whole);
  const of = ({ file: each }: RefusedRow): boolean => each === file;
  if (file === 'offers.csv') {
    return { count: offers.offers.length, refused: offers.refused.filter(of) };
  }
  const { plans, fits, refused, notes } = accessories;
  if (file === 'floor-plans.csv') {
    return { count: plans.size, refused: offers.refused.filter(of) };
  }
  const count = file === 'accessories.csv' ? accessories.accessories.length : fits.length;
  return { count, refused: refused.filter(of), notes: notes.filter(of) };
}

/** What a table's own columns are called here, by what is said of them. */
const calledIn = (said: string, file: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readSheet('columns.csv', said).rows.flatMap(({ cells }) =>
      cells.file === file && cells.theirs && cells.ours ? [[cells.theirs, cells.ours]] : [],
    ),
  );

/** Any other table, with the columns that somebody named under our names. */
function tableOf(file: TableFile, asked: ImportAsked): Imported {
  const { text, files, columns } = asked;
  const said = columnsSaid(files?.['columns.csv'], file, columns);
  const called = underHeads(text, calledIn(said, file));
  const { heads } = readSheet(file, text);
  const ours = readSheet(file, called).heads;
  const unknown = new Set(unknownInTable(file, ours));
  const read = tableRead(file, called, files);
  return {
    ...{ file, text: called, notes: [], moves: [] },
    ...read,
    unknown: heads.filter((_, i) => unknown.has(ours[i] ?? '')),
    mayBe: columnsOfTable(file),
    columns: Object.keys(columns).length === 0 ? undefined : said,
  };
}

/** What stands in a sheet: as somebody says, else by what it is called and by its columns. */
function standsIn(asked: ImportAsked, heads: readonly string[]): Side | TableFile {
  const { from, as } = asked;
  if (as === 'vehicles.csv') return 'vehicle';
  if (as === 'trailers.csv') return 'trailer';
  const found = as ?? tableOfSheet(from, heads) ?? sideOfSheet(from, heads);
  if (found !== undefined) return found;
  const told = heads.filter((head) => head !== '').slice(0, 8);
  throw new Error(
    `Nobody can tell what stands in ${from}: it has the columns ${told.join(', ')}. Say it below.`,
  );
}

/** What somebody’s file says, row by row; nothing of it counts yet. */
export function importOf(asked: ImportAsked): Imported {
  const { from, text } = asked;
  const { heads, refused } = readSheet(from, text);
  const [first] = refused;
  if (heads.length === 0) {
    throw new Error(
      first
        ? `${from}, line ${first.line}: ${first.says}`
        : `${from} is empty; its first row names the columns.`,
    );
  }
  const stands = standsIn(asked, heads);
  return stands === 'vehicle' || stands === 'trailer'
    ? entriesOf(stands, asked)
    : tableOf(stands, asked);
}
