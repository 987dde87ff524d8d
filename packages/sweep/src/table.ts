import {
  convert,
  findUnit,
  readQuantity,
  sameDimension,
  wasMisread,
} from '@tarebook/rules/quantity';
import { type CellRead, isBare, quantity, readCell } from './cells';
import { unitIn, wordsOf } from './columns';
import { lackingSaid } from './lacking';
import { type RefusedRow, readSheet, type SheetRow } from './sheet';

/** What a column of a dealer's own table may hold, and what people call it. */
export type Wanted = {
  readonly called?: readonly string[];
  readonly isNeeded?: boolean;
  /** One of these words. */
  readonly words?: readonly string[];
  /** Words that are taken too and not offered. */
  readonly elseWords?: readonly string[];
  /** A quantity that is kept as it is written; a bare number is in this unit. */
  readonly measure?: string;
  /** A number in this unit, `''` for a bare one, from `least` to `most`. */
  readonly unit?: string;
  readonly least?: number;
  readonly most?: number;
};

export type TableRow = {
  readonly line: number;
  readonly texts: Readonly<Record<string, string>>;
  readonly numbers: Readonly<Record<string, number>>;
};

export type Table = {
  readonly rows: readonly TableRow[];
  readonly refused: readonly RefusedRow[];
  /** Columns that nobody knows by their name. */
  readonly unknown: readonly string[];
};

type Known = { readonly theirs: string; readonly ours: string; readonly unit: string | undefined };

/** Under a name that is known whole, what ends in a unit is a word: “From year” is no number of years. */
export function knownIn(
  heads: readonly string[],
  wanted: Readonly<Record<string, Wanted>>,
): Known[] {
  const taken = new Set<string>();
  const named = (words: string): string | undefined =>
    Object.entries(wanted).find(
      ([column, { called = [] }]) =>
        !taken.has(column) && [column, ...called].some((each) => wordsOf(each) === words),
    )?.[0];
  return heads.flatMap((theirs) => {
    const { bare, unit } = unitIn(theirs);
    const whole = named(wordsOf(theirs));
    const ours = whole ?? named(wordsOf(bare));
    if (ours === undefined) return [];
    taken.add(ours);
    return [{ theirs, ours, unit: whole === undefined ? unit : undefined }];
  });
}

/** `$145` is 145 of whatever money a column is in. */
const withoutMoney = (cell: string): string => cell.replace(/^\s*(?:\$|USD)\s*/i, '');

type NumberRead = { readonly value: number } | { readonly says: string };

function numberOf(cell: string, wanted: Wanted & { readonly unit: string }): NumberRead {
  const { unit, least = 0, most = Infinity } = wanted;
  const plain = withoutMoney(cell);
  const read = readQuantity(isBare(plain) && unit !== '' ? `${plain} ${unit}` : plain);
  const right = `a number${unit === '' ? '' : ` in ${unit}`}${most < Infinity ? ` from ${least} to ${most}` : ''}`;
  const wrong = { says: `“${cell.slice(0, 40)}” is not ${right}.` };
  if (wasMisread(read) || read.from !== read.to) return wrong;
  const own = findUnit(unit);
  if (read.unit && !(own && sameDimension(read.unit.dimension, own.dimension))) return wrong;
  const value = read.unit && own ? convert(read.from, read.unit, own) : read.from;
  return value < least || value > most ? wrong : { value };
}

/** A quantity of the dimension that is wanted, as it is written. */
function measured(cell: string, unit: string, wanted: string, semicolons: boolean): CellRead {
  const found = quantity(cell, unit, semicolons);
  if ('says' in found) return found;
  const [read, own] = [readQuantity(found.text), findUnit(wanted)];
  const isSo =
    !wasMisread(read) && read.unit && own && sameDimension(read.unit.dimension, own.dimension);
  return isSo ? found : { says: `“${cell.slice(0, 40)}” is no number in ${wanted}.` };
}

type RowRead = { readonly row: TableRow } | { readonly says: string };

function rowOf(
  { line, cells }: SheetRow,
  known: readonly Known[],
  wanted: Readonly<Record<string, Wanted>>,
  semicolons: boolean,
): RowRead {
  const texts: Record<string, string> = {};
  const numbers: Record<string, number> = {};
  for (const [column, each] of Object.entries(wanted)) {
    const { theirs, unit } = known.find(({ ours }) => ours === column) ?? {};
    const read = readCell(
      theirs === undefined ? '' : (cells[theirs] ?? ''),
      undefined,
      undefined,
      semicolons,
    );
    const under = (says: string): RowRead => ({ says: `under “${theirs ?? column}”, ${says}` });
    if ('says' in read) return under(read.says);
    if (read.text === '') {
      if (each.isNeeded) return { says: `it has no ${column}; tell it.` };
      continue;
    }
    if (each.words) {
      const known = [...each.words, ...(each.elseWords ?? [])];
      const word = known.find((one) => wordsOf(one) === wordsOf(read.text));
      if (word === undefined) {
        return under(`“${read.text.slice(0, 40)}” is none of ${each.words.join(', ')}.`);
      }
      texts[column] = word;
    } else if (each.measure !== undefined) {
      const found = measured(read.text, unit ?? each.measure, each.measure, semicolons);
      if ('says' in found) return under(found.says);
      texts[column] = found.text;
    } else if (each.unit !== undefined) {
      const text = semicolons ? read.text.replace(/^([-+−]?\d+),(\d+)/, '$1.$2') : read.text;
      const found = numberOf(isBare(text) && unit ? `${text} ${unit}` : text, {
        ...each,
        unit: each.unit,
      });
      if ('says' in found) return under(found.says);
      numbers[column] = found.value;
    } else texts[column] = read.text;
  }
  return { row: { line, texts, numbers } };
}

/**
 * A table of a dealer's own: columns under whatever people call them, values with or without a unit.
 * A row that cannot be read is told with its line and left out whole.
 *
 * @param key the column whose cells may stand but once
 */
export function readTable(
  file: string,
  text: string,
  wanted: Readonly<Record<string, Wanted>>,
  key?: string,
): Table {
  const { heads, rows, refused, semicolons } = readSheet(file, text);
  const known = knownIn(heads, wanted);
  const unknown = heads.filter(
    (head) => head !== '' && !known.some(({ theirs }) => theirs === head),
  );
  const needed = Object.entries(wanted).filter(([, { isNeeded }]) => isNeeded);
  const lacking = needed.flatMap(([column, { called = [] }]) =>
    known.some(({ ours }) => ours === column) ? [] : [{ column, called }],
  );
  if (heads.length > 0 && lacking.length > 0) {
    const names = needed.map(([column]) => column);
    const says = lackingSaid(heads, names, lacking, unknown);
    return { rows: [], refused: [...refused, { file, line: 1, says }], unknown };
  }
  const seen = new Set<string>();
  const troubles: RefusedRow[] = [];
  const taken = rows.flatMap((each): TableRow[] => {
    const read = rowOf(each, known, wanted, semicolons);
    const name = key !== undefined && 'row' in read ? (read.row.texts[key] ?? '') : undefined;
    const says =
      'says' in read
        ? read.says
        : name !== undefined && seen.has(name)
          ? `“${name}” stands in the file already; give it another ${key}.`
          : undefined;
    if (says !== undefined || 'says' in read) {
      troubles.push({ file, line: each.line, says: says ?? '' });
      return [];
    }
    if (name !== undefined) seen.add(name);
    return [read.row];
  });
  return { rows: taken, refused: [...refused, ...troubles], unknown };
}
