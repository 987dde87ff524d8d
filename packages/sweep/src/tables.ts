import { accessoryColumns, fitColumns } from './accessories';
import { columnsOf, type Side } from './columns';
import { loadColumns } from './loads';
import { offerColumns, optionColumns, planColumns } from './offers';
import { rateColumns } from './rates';
import { knownIn, type Wanted } from './table';

/** The tables of a catalogue beside its vehicles and trailers. */
const tableFiles = [
  'loads.csv',
  'accessories.csv',
  'accessory-fits.csv',
  'rates.csv',
  'offers.csv',
  'options.csv',
  'floor-plans.csv',
] as const;
export type TableFile = (typeof tableFiles)[number];

const byName: readonly (readonly [RegExp, TableFile])[] = [
  [/\bfits?\b/, 'accessory-fits.csv'],
  [/\baccessor(?:y|ies)\b/, 'accessories.csv'],
  [/\brates?\b|\brate book\b/, 'rates.csv'],
  [/\boffers?\b/, 'offers.csv'],
  [/\boptions?\b/, 'options.csv'],
  [/\b(?:floor )?plans?\b/, 'floor-plans.csv'],
  [/\bloads?\b/, 'loads.csv'],
];

const byColumns: readonly (readonly [TableFile, Readonly<Record<string, Wanted>>])[] = [
  ['offers.csv', offerColumns],
  ['accessory-fits.csv', fitColumns],
  ['rates.csv', rateColumns],
  ['accessories.csv', accessoryColumns],
  ['loads.csv', loadColumns],
];

const columnsByFile: Readonly<Record<TableFile, Readonly<Record<string, Wanted>>>> = {
  'loads.csv': loadColumns,
  'accessories.csv': accessoryColumns,
  'accessory-fits.csv': fitColumns,
  'rates.csv': rateColumns,
  'offers.csv': offerColumns,
  'options.csv': optionColumns,
  'floor-plans.csv': planColumns,
};

/** The names a column of a table may be given by hand. */
export const columnsOfTable = (file: TableFile): readonly string[] =>
  Object.keys(columnsByFile[file]);

/** The columns of a table that nobody knows by their name. */
export function unknownInTable(file: TableFile, heads: readonly string[]): readonly string[] {
  const known = new Set(knownIn(heads, columnsByFile[file]).map(({ theirs }) => theirs));
  return heads.filter((head) => head !== '' && !known.has(head));
}

/** Without one of these nobody takes a sheet for a list of vehicles or trailers. */
const telling = ['dryWeight', 'gvwr', 'maxTrailerWeight', 'placardPayload', 'curbWeight'];

/**
 * Which table a sheet is, by what it is called, else by its columns; undefined where it is none, or
 * rather a list of vehicles or trailers.
 */
export function tableOfSheet(file: string, heads: readonly string[]): TableFile | undefined {
  const name = file.toLowerCase().replace(/[^a-z]+/g, ' ');
  if (/\b(?:vehicle|trailer)s?\b/.test(name)) return undefined;
  const isOfSide = (side: Side): boolean =>
    columnsOf(side, heads).some(({ ours }) => ours !== undefined && telling.includes(ours));
  if (isOfSide('vehicle') || isOfSide('trailer')) return undefined;
  const called = byName.find(([words]) => words.test(name))?.[1];
  if (called !== undefined) return called;
  return byColumns.find(([, wanted]) => {
    const known = new Set(knownIn(heads, wanted).map(({ ours }) => ours));
    return Object.entries(wanted).every(([column, { isNeeded }]) => !isNeeded || known.has(column));
  })?.[0];
}
