import { parse } from 'csv-parse/sync';

export type SheetRow = {
  /** In the file, from 1. */
  readonly line: number;
  readonly cells: Readonly<Record<string, string>>;
};

export type RefusedRow = { readonly file: string; readonly line: number; readonly says: string };

/** More than this is no catalogue that a person keeps, and is refused before it is read. */
const mostBytes = 20_000_000;

type Raw = { readonly info: { readonly lines: number }; readonly record: readonly string[] };

const isRaw = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && 'info' in value && 'record' in value;

/**
 * The rows of a CSV file as spreadsheets write it: a mark at the beginning, quotes, blank rows and
 * comment lines (`#`) are read as what they are. The first row names the columns.
 */
export function readSheet(
  file: string,
  text: string,
): { readonly rows: readonly SheetRow[]; readonly refused: readonly RefusedRow[] } {
  if (text.trim() === '') return { rows: [], refused: [] };
  if (text.length > mostBytes) {
    return { rows: [], refused: [{ file, line: 1, says: 'the file is over 20 MB; split it.' }] };
  }
  const refused: RefusedRow[] = [];
  const found: unknown = parse(text, {
    bom: true,
    comment: '#',
    comment_no_infix: true,
    info: true,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    trim: true,
  });
  const [head, ...body] = Array.isArray(found) ? found.filter(isRaw) : [];
  const names = head?.record ?? [];
  const rows = body.flatMap(({ info, record }): SheetRow[] => {
    if (record.every((cell) => cell === '')) return [];
    if (record.length > names.length) {
      const says = `it has ${record.length} cells under ${names.length} columns; put quotes around a cell with a comma.`;
      refused.push({ file, line: info.lines, says });
      return [];
    }
    const cells = names.map((name, i) => [name, record[i] ?? ''] as const);
    return [{ line: info.lines, cells: Object.fromEntries(cells) }];
  });
  return { rows, refused };
}
