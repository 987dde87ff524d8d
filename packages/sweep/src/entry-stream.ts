import { Readable } from 'node:stream';
import { parse } from 'csv-parse';
import { type Entry, entryReader, notTaken } from './catalogue';
import { columnsOf, type Side } from './columns';
import {
  delimiterOf,
  headsOf,
  isRaw,
  isTitle,
  type RefusedRow,
  sheetOptions,
  sheetRow,
} from './sheet';

/** A row of a long file: what it is, or why it was not taken. */
export type StreamedRow = ({ readonly entry: Entry } | { readonly refused: RefusedRow }) & {
  /** How many bytes of the file came before the next row. */
  readonly bytes: number;
};

/**
 * The vehicles or trailers of a CSV file of any length, one after another: no more of it is held than
 * is read at the moment, beside the names that stood in it.
 *
 * @param opening how the file begins, by which it is known what stands between its cells
 * @param pieces its bytes or text as they come; a stream of Node is such a thing
 */
export async function* entriesFrom(
  file: string,
  side: Side,
  opening: string,
  pieces: AsyncIterable<string | Uint8Array>,
): AsyncGenerator<StreamedRow> {
  const delimiter = delimiterOf(opening);
  const text = Readable.from(pieces);
  const rows = text.pipe(parse({ ...sheetOptions, delimiter }));
  text.on('error', (problem) => rows.destroy(problem));
  let heads: readonly string[] | undefined;
  let read: ReturnType<typeof entryReader> | undefined;
  for await (const row of rows) {
    if (!isRaw(row)) continue;
    const { bytes } = row.info;
    if (heads === undefined || read === undefined) {
      // A title above the columns; a file of names alone has no columns below it either.
      if (isTitle(row.record) && row.record.length > 1) continue;
      heads = headsOf(row.record);
      const columns = columnsOf(side, heads, {});
      const says = notTaken(side, heads, columns);
      if (says !== undefined) {
        yield { refused: { file, line: 1, says }, bytes };
        return;
      }
      read = entryReader(file, side, columns, delimiter === ';');
      continue;
    }
    const found = sheetRow(file, heads, row);
    if (found === undefined) continue;
    if ('says' in found) yield { refused: found, bytes };
    else yield { ...read(found), bytes };
  }
}
