import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ownColumns, underHeads } from '@tarebook/sweep';
import { BadInput, named, reasonOf } from './files';
import { sheetText } from './sheet-text';

/** The invented catalogue that is shipped, beside the built code or in its source. */
export const shippedFolders: readonly string[] = [
  new URL('./invented/', import.meta.resolve('@tarebook/sweep')),
  new URL('../../../seeds/', import.meta.url),
].map((each) => fileURLToPath(each));

const isMissing = (problem: unknown): boolean =>
  problem instanceof Error && 'code' in problem && problem.code === 'ENOENT';

/** A file of a catalogue's folder; undefined where there is none. */
export async function textOf(folder: string, file: string): Promise<string | undefined> {
  try {
    return sheetText(await readFile(join(folder, file)));
  } catch (problem) {
    if (isMissing(problem)) return undefined;
    throw new BadInput(`${named(join(folder, file))}: ${reasonOf(problem)}.`);
  }
}

/** Tables of a catalogue's folder, under the heads that its columns.csv gives them. */
export async function tablesOf<File extends string>(
  folder: string,
  files: readonly File[],
): Promise<Readonly<Partial<Record<File, string>>>> {
  const columns = (await textOf(folder, 'columns.csv')) ?? '';
  const texts = await Promise.all(files.map((file) => textOf(folder, file)));
  const found: Partial<Record<File, string>> = {};
  files.forEach((file, i) => {
    const text = texts[i];
    if (text !== undefined) found[file] = underHeads(text, ownColumns(file, columns));
  });
  return found;
}
