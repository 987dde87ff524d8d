import { type MessageColumns, messageColumns, messagesOf, type Pasted } from '@tarebook/record';
import { CsvError, parse } from 'csv-parse/browser/esm/sync';

/** What came of a table of messages: they themselves, what has to be asked first, or why nothing did. */
export type TableFound =
  | {
      readonly is: 'read';
      readonly found: readonly Pasted[];
      /** Rows that were not taken in, a sentence each. */
      readonly refused: readonly string[];
    }
  | {
      readonly is: 'asked';
      readonly heads: readonly string[];
      /** Of each column what stands in its first row. */
      readonly first: readonly string[];
      /** As far as the names say it. */
      readonly columns: MessageColumns;
    }
  | { readonly is: 'wrong'; readonly says: string };

/** What stands between cells: whichever of these stands oftenest in the first line. */
function delimiterOf(text: string): string {
  const head = text.slice(0, 20_000).split(/\r\n|\r|\n/, 1)[0] ?? '';
  const plain = head.replace(/"[^"]*"/g, '');
  const count = (each: string): number => plain.split(each).length;
  return [',', ';', '\t'].toSorted((a, b) => count(b) - count(a))[0] ?? ',';
}

const isRow = (row: unknown): row is readonly string[] => Array.isArray(row);

function rowsOf(text: string): readonly (readonly string[])[] | { readonly says: string } {
  try {
    const found: unknown = parse(text, {
      ...{ bom: true, relax_column_count: true, relax_quotes: true, skip_empty_lines: true },
      delimiter: delimiterOf(text),
    });
    return Array.isArray(found) ? found.filter(isRow) : [];
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const line = Number(Reflect.get(problem, 'lines'));
    return {
      says: `Line ${Number.isFinite(line) ? line : 1} is where it stops being a table: a quote that begins a cell is never closed. Close it. Nothing was taken in.`,
    };
  }
}

const shown = (cell: string): string => cell.replace(/\s+/g, ' ').trim().slice(0, 80);

/** The messages of a CSV file; where no column is called as its words are, which is which is asked. */
export function tableOf(text: string, told: MessageColumns | undefined): TableFound {
  const rows = rowsOf(text);
  if ('says' in rows) return { is: 'wrong', says: rows.says };
  const [heads = [], first = []] = rows;
  if (rows.length < 2) {
    return {
      is: 'wrong',
      says: 'There are no messages in this file; its first row names the columns, and each further row is a message.',
    };
  }
  const columns = told ?? messageColumns(heads);
  if (columns.text === undefined) {
    const cells = heads.map((_, at) => shown(first[at] ?? ''));
    return { is: 'asked', heads: heads.map(shown), first: cells, columns };
  }
  const read = messagesOf(rows, columns);
  if ('says' in read) return { is: 'wrong', says: read.says };
  return {
    is: 'read',
    found: read.messages.map(({ channel, asker, askedOn, text: words }) => ({
      ...{ channel, asker, askedOn, text: words },
    })),
    refused: read.refused.map(({ says }) => says),
  };
}
