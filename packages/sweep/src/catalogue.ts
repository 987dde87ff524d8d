import {
  type FactsGiven,
  refuseUnless,
  refuseUnlessParts,
  sayProblem,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { isUnitless, readCell } from './cells';
import { type Column, columnsOf, factOf, nameCalled, ofOtherSide, type Side } from './columns';
import { factReader } from './kernel/inputs';
import { lackingSaid } from './lacking';
import { type NamedLoad, readLoads } from './loads';
import { namesSeen } from './names-seen';
import type { RefusedRow, SheetRow } from './sheet';
import { readSheet } from './sheet';

/** One vehicle or trailer of a catalogue: what tow fit asks of it, and everything else beside. */
export type Entry = {
  readonly name: string;
  readonly facts: FactsGiven;
  /** Every cell by its column, for choosing by (`body`, `lot`, `length` …). */
  readonly cells: Readonly<Record<string, string>>;
};

export type Catalogue = {
  readonly vehicles: readonly Entry[];
  readonly trailers: readonly Entry[];
  readonly loads: readonly NamedLoad[];
  /** What was not taken, each with the file, the line and the reason. */
  readonly refused: readonly RefusedRow[];
  /** Columns that nobody knows by their name, by file; their cells are kept as they are. */
  readonly unknown: Readonly<Record<string, readonly string[]>>;
};

export type CatalogueFiles = {
  readonly 'vehicles.csv'?: string;
  readonly 'trailers.csv'?: string;
  readonly 'loads.csv'?: string;
  /** What the dealer’s own columns are called here: `file,theirs,ours`. */
  readonly 'columns.csv'?: string;
};

type CellsRead = { readonly cells: Record<string, string>; readonly says: string | undefined };

/** The cells of a row under our names, each as a fact says it; or the first that cannot be taken. */
function cellsOf(side: Side, columns: readonly Column[], row: SheetRow, semicolons: boolean) {
  const found: CellsRead = { cells: {}, says: undefined };
  for (const { theirs, ours, unit } of columns) {
    const column = ours ?? theirs;
    const read = readCell(row.cells[theirs] ?? '', factOf(side, column)?.fact, unit, semicolons);
    if ('says' in read) return { ...found, says: `under “${theirs}”, ${read.says}` };
    if (theirs !== '') found.cells[column] = read.text;
  }
  return found;
}

function factsIn(side: Side, cells: SheetRow['cells']): FactsGiven {
  const given: Record<string, string> = {};
  for (const [column, cell] of Object.entries(cells)) {
    const found = factOf(side, column);
    if (!found || cell === '') continue;
    const unit = found.fact.kind === 'quantity' ? found.fact.unit : '';
    given[found.id] = unit !== '' && isUnitless(cell) ? `${cell} ${unit}` : cell;
  }
  return given;
}

/** What spreadsheets put below their columns; no vehicle and no trailer is called so. */
const isSum = (name: string): boolean =>
  /^(grand |sub-?)?(totals?|sums?|averages?|mean)\b\W*$/i.test(name);

/** Reads rows of one file, one after another: each an entry, or refused with the reason. */
export function entryReader(
  file: string,
  side: Side,
  columns: readonly Column[],
  semicolons: boolean,
) {
  const isSeen = namesSeen();
  const read = factReader(towFit);
  return (row: SheetRow): { readonly entry: Entry } | { readonly refused: RefusedRow } => {
    const { line } = row;
    const { cells, says } = cellsOf(side, columns, row, semicolons);
    const name = cells.name ?? '';
    const refuse = (why: string) => ({ refused: { file, line, says: why } });
    if (says !== undefined) return refuse(says);
    if (name === '') return refuse('it has no name; give each row one.');
    if (isSum(name)) return refuse(`“${name}” sums up other rows; nothing stands on the lot.`);
    const given = factsIn(side, cells);
    const [first] = read(given).problems;
    if (first) return refuse(sayProblem(first));
    if (Object.keys(given).length === 0) {
      return refuse(`of “${name}” nothing is told that can be reckoned with.`);
    }
    if (isSeen(name)) {
      return refuse(`“${name}” stands in the file already; give it another name.`);
    }
    return { entry: { name, facts: given, cells } };
  };
}

/** Why no row of a table can be taken: none of its columns is the name, or they are of the other side. */
export function notTaken(
  side: Side,
  heads: readonly string[],
  columns: readonly Column[],
): string | undefined {
  if (heads.length === 0) return undefined;
  if (columns.some(({ ours }) => ours === 'name')) return ofOtherSide(side, heads, columns);
  const known = new Set(
    columns.flatMap(({ theirs, ours }) => (ours === undefined ? [] : [theirs])),
  );
  const free = heads.filter((head) => head !== '' && !known.has(head));
  return lackingSaid(heads, ['name'], [{ column: 'name', called: nameCalled }], free);
}

function entriesOf(file: string, side: Side, text: string, own: Readonly<Record<string, string>>) {
  const { heads, rows, refused, semicolons } = readSheet(file, text);
  const columns = columnsOf(side, heads, own);
  const says = notTaken(side, heads, columns);
  if (says !== undefined) {
    return { entries: [], refused: [...refused, { file, line: 1, says }], columns };
  }
  const read = rows.map(entryReader(file, side, columns, semicolons));
  const entries = read.flatMap((each) => ('entry' in each ? [each.entry] : []));
  const troubles = read.flatMap((each) => ('refused' in each ? [each.refused] : []));
  return { entries, refused: [...refused, ...troubles], columns };
}

const fileNames = ['vehicles.csv', 'trailers.csv', 'loads.csv', 'columns.csv'];
/** Tables of the same folder that others read. */
const besideThem = [
  ...['accessories.csv', 'accessory-fits.csv', 'rates.csv', 'offers.csv', 'options.csv'],
  'floor-plans.csv',
];

/** What a file's columns are called here, as somebody once said in `columns.csv`. */
export function ownColumns(file: string, text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    readSheet('columns.csv', text).rows.flatMap(({ cells }) =>
      cells.file === file && cells.theirs && cells.ours ? [[cells.theirs, cells.ours]] : [],
    ),
  );
}

/**
 * A dealer's catalogue from its files; any may be missing. Columns are the facts of tow fit without
 * `vehicle.` or `trailer.`, or what people call them; values in the facts' own units, in the unit that
 * the head of the column names, or with a unit; an empty cell is not told.
 * A row that cannot be read is left out and told, and never half read.
 *
 * @throws InputError for what are no files by their names, or is no text
 */
export function readCatalogue(files: CatalogueFiles): Catalogue {
  const wanted = `the texts of the files by name: ${fileNames.join(', ')}`;
  refuseUnlessParts('files', files, {}, wanted, [...fileNames, ...besideThem]);
  for (const [name, text] of Object.entries(files)) {
    const isTold = text === undefined || typeof text === 'string';
    refuseUnless(isTold, `files.${name}`, text, 'the text of the file');
  }
  const read = (file: 'vehicles.csv' | 'trailers.csv', side: Side) =>
    entriesOf(file, side, files[file] ?? '', ownColumns(file, files['columns.csv'] ?? ''));
  const [vehicles, trailers] = [read('vehicles.csv', 'vehicle'), read('trailers.csv', 'trailer')];
  const loads = readLoads(
    files['loads.csv'] ?? '',
    ownColumns('loads.csv', files['columns.csv'] ?? ''),
  );
  const unknownIn = ({ columns }: typeof vehicles) =>
    columns.flatMap(({ theirs, ours }) => (ours === undefined && theirs !== '' ? [theirs] : []));
  return {
    vehicles: vehicles.entries,
    trailers: trailers.entries,
    loads: loads.loads,
    refused: [...vehicles.refused, ...trailers.refused, ...loads.refused],
    unknown: { 'vehicles.csv': unknownIn(vehicles), 'trailers.csv': unknownIn(trailers) },
  };
}
