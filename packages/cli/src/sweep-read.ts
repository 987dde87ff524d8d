import { createReadStream } from 'node:fs';
import { open, stat } from 'node:fs/promises';
import { type Entry, entriesFrom, type RefusedRow } from '@tarebook/sweep/many';
import { BadInput, named, reasonOf } from './files';
import { throughCsv } from './parquet';
import { sayBeside } from './said';
import { cellOf } from './sweep-lines';
import { writeBeside } from './write-beside';

/** Why there is nothing in a table to go by: what was said of its first row, or what it mostly lacks. */
export function nothingIn(
  file: string,
  kind: 'vehicle' | 'trailer',
  refused: readonly RefusedRow[],
): BadInput {
  const own = refused.filter((row) => row.file === file);
  const [first] = own;
  if (first && own.length === 1) return new BadInput(`${named(file)}:${first.line}: ${first.says}`);
  const why = first
    ? `the first row, line ${first.line}: ${first.says}`
    : 'its first row names the columns, one of them `name`.';
  return new BadInput(`${named(file)}: there is no ${kind} in it that can be read; ${why}`);
}

/** How a file begins. */
async function openingOf(file: string): Promise<string> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(20_000), 0, 20_000, 0);
    return buffer.toString('utf8', 0, bytesRead);
  } finally {
    await handle.close();
  }
}

async function* rowsIn(csv: string, file: string, kind: 'vehicle' | 'trailer') {
  const { size } = await stat(csv);
  const opening = await openingOf(csv);
  if (opening.includes('\0')) {
    throw new BadInput(`${named(file)}: it is no text; save it as CSV from the spreadsheet.`);
  }
  // Parquet has no line of heads: its first row is the first.
  const heads = csv === file ? 0 : 1;
  for await (const row of entriesFrom(file, kind, opening, createReadStream(csv))) {
    const share = row.bytes / Math.max(1, size);
    if ('entry' in row) yield { entry: row.entry, share };
    else yield { refused: { ...row.refused, line: row.refused.line - heads }, share };
  }
}

/** Reads a file of vehicles or trailers as it comes, CSV or Parquet, and says how far it is. */
export async function* entriesOf(
  file: string,
  kind: 'vehicle' | 'trailer',
  read: (share: number) => void,
) {
  try {
    await stat(file);
    for await (const row of throughCsv(file, (csv) => rowsIn(csv, file, kind))) {
      read(row.share);
      yield row;
    }
  } catch (problem) {
    if (problem instanceof BadInput) throw problem;
    if (problem instanceof Error && 'code' in problem && `${problem.code}`.startsWith('CSV_')) {
      throw new BadInput(`${named(file)}: this is no table that can be read; ${problem.message}.`);
    }
    throw new BadInput(`${named(file)}: ${reasonOf(problem)}.`);
  }
}

/** What of an entry a sweep goes by. */
export const plain = ({ name, facts }: Entry): Pick<Entry, 'name' | 'facts'> => ({ name, facts });

export async function trailersIn(file: string, refused: RefusedRow[]) {
  const trailers: Pick<Entry, 'name' | 'facts'>[] = [];
  for await (const row of entriesOf(file, 'trailer', () => {})) {
    if ('entry' in row) trailers.push(plain(row.entry));
    else refused.push(row.refused);
  }
  if (trailers.length > 0) return trailers;
  throw nothingIn(file, 'trailer', refused);
}

/** What is told of a row that was left out, beside the file or on the screen. */
export async function tellRefused(
  out: string | undefined,
  refused: readonly RefusedRow[],
): Promise<void> {
  if (refused.length === 0) return;
  const beside = out?.replace(/(\.[a-z]+)?$/i, '.refused.csv');
  if (beside === undefined) {
    await sayBeside(refused.map((r) => `${named(r.file)}:${r.line}: ${r.says}`).join('\n'));
    return;
  }
  const lines = refused.map(({ file, line, says }) =>
    [file, `${line}`, says].map(cellOf).join(','),
  );
  await writeBeside(beside, `${['file,line,reason', ...lines].join('\n')}\n`);
  const rows = refused.length === 1 ? 'One row was' : `${refused.length} rows were`;
  await sayBeside(`${rows} left out; ${named(beside)} says which and why.`);
}
