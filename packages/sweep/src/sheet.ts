import { parse } from 'csv-parse/sync';

export type SheetRow = {
  /** In the file, from 1. */
  readonly line: number;
  readonly cells: Readonly<Record<string, string>>;
};

export type RefusedRow = { readonly file: string; readonly line: number; readonly says: string };

export type Sheet = {
  readonly heads: readonly string[];
  readonly rows: readonly SheetRow[];
  readonly refused: readonly RefusedRow[];
  readonly semicolons: boolean;
};

/** More than this is no catalogue that a person keeps, and is refused before it is read. */
const mostCharacters = 5_000_000;
const mostRows = 10_000;
const mostColumns = 200;
const longestCell = 2_000;

type Raw = {
  readonly info: { readonly lines: number; readonly bytes: number };
  readonly record: readonly string[];
};

export const isRaw = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && 'info' in value && 'record' in value;

/** As spreadsheets write it: a mark at the beginning, quotes, blank rows, comment lines. */
export const sheetOptions = {
  bom: true,
  comment: '#',
  comment_no_infix: true,
  info: true,
  relax_column_count: true,
  relax_quotes: true,
  skip_empty_lines: true,
  trim: true,
} as const;

/** What stands between the cells of a line, and how many of them say something. */
function delimitedBy(line: string): { readonly delimiter: string; readonly told: number } {
  const plain = line.replace(/"[^"]*"/g, 'x');
  const count = (each: string): number => plain.split(each).length;
  const delimiter = [',', ';', '\t'].toSorted((a, b) => count(b) - count(a))[0] ?? ',';
  return { delimiter, told: plain.split(delimiter).filter((cell) => cell.trim() !== '').length };
}

/** What stands between cells, by the first line that is none of ours and no title above the columns. */
export function delimiterOf(text: string): string {
  const lines = text
    .replace(/^\ufeff/, '')
    .slice(0, 20_000)
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map(delimitedBy);
  return (lines.find(({ told }) => told > 1) ?? lines[0])?.delimiter ?? ',';
}

/** Of two columns that are called the same each keeps its own cells. */
export function headsOf(record: readonly string[]): readonly string[] {
  const seen = new Map<string, number>();
  return record.map((head) => {
    const count = (seen.get(head) ?? 0) + 1;
    seen.set(head, count);
    return count === 1 || head === '' ? head : `${head} (${count})`;
  });
}

/** A line that stands alone in its row is a title, where columns follow further down. */
export const isTitle = (record: readonly string[]): boolean =>
  record.filter((cell) => cell !== '').length < 2;

const nothingIn = (refused: readonly RefusedRow[]): Sheet => ({
  heads: [],
  rows: [],
  refused,
  semicolons: false,
});

/** What is wrong with a whole row, in one sentence; undefined where nothing is. */
function wrongWith(record: readonly string[], heads: readonly string[]): string | undefined {
  if (record.length > heads.length) {
    return `it has ${record.length} cells under ${heads.length} columns; put quotes around a cell with a comma.`;
  }
  const long = record.findIndex((cell) => cell.length > longestCell);
  return long < 0
    ? undefined
    : `the cell under “${heads[long]}” is longer than ${longestCell} characters.`;
}

/** One row under the heads of its columns, or why it cannot be read; undefined where nothing is in it. */
export function sheetRow(
  file: string,
  heads: readonly string[],
  { info, record }: Raw,
): SheetRow | RefusedRow | undefined {
  if (record.every((cell) => cell === '')) return undefined;
  const says = wrongWith(record, heads);
  if (says !== undefined) return { file, line: info.lines, says };
  const cells = heads.map((name, i) => [name, record[i] ?? ''] as const);
  return { line: info.lines, cells: Object.fromEntries(cells) };
}

/**
 * The rows of a CSV file as spreadsheets write it: a mark at the beginning, quotes, blank rows,
 * semicolons or tabs between cells, and comment lines (`#`) are read as what they are. The first row
 * names the columns.
 */
export function readSheet(file: string, text: string): Sheet {
  if (text.trim() === '') return nothingIn([]);
  const whole = (says: string, line = 1): Sheet => nothingIn([{ file, line, says }]);
  if (text.length > mostCharacters) return whole('the file is over 5 MB; split it.');
  if (text.includes('\0')) return whole('it is no text; save it as CSV from the spreadsheet.');
  const delimiter = delimiterOf(text);
  let found: unknown;
  try {
    found = parse(text, { ...sheetOptions, delimiter, to: mostRows + 2 });
  } catch (problem) {
    const at = problem instanceof Error && 'lines' in problem ? Number(problem.lines) : 1;
    return whole('a quote that begins a cell is never closed; close it.', at);
  }
  const all = Array.isArray(found) ? found.filter(isRaw) : [];
  const from = Math.max(
    0,
    all.findIndex(({ record }) => !isTitle(record)),
  );
  const [head, ...body] = all.slice(from);
  const heads = headsOf(head?.record ?? []);
  if (heads.length > mostColumns) return whole(`it has over ${mostColumns} columns.`);
  if (body.length > mostRows) return whole(`it has over ${mostRows} rows; split it.`);
  const refused: RefusedRow[] = [];
  const rows = body.flatMap((raw): SheetRow[] => {
    const row = sheetRow(file, heads, raw);
    if (row === undefined) return [];
    if (!('says' in row)) return [row];
    refused.push(row);
    return [];
  });
  return { heads, rows, refused, semicolons: delimiter === ';' };
}
