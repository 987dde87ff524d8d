import { open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { BadInput, named, reasonOf } from './files';

export const writeBeside = (file: string, text: string): Promise<void> => writePieces(file, [text]);

/**
 * Writes a file so that it is at every moment either what it was or all that it is to be: beside it
 * first, then in its place.
 *
 *     case.md ◄── rename ── .case.md.4711.part
 */
export async function writePieces(file: string, pieces: Iterable<string>): Promise<void> {
  let part: string | undefined;
  try {
    // A link stays a link: what it leads to is what is written.
    const real = await realpath(file).catch(() => file);
    const mode = (await stat(real).catch(() => undefined))?.mode;
    part = join(dirname(real), `.${basename(real).slice(0, 200)}.${process.pid}.part`);
    const handle = await open(part, 'w', mode);
    try {
      for (const piece of pieces) await handle.writeFile(piece);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(part, real);
  } catch (problem) {
    if (part !== undefined) await rm(part, { force: true }).catch(() => {});
    throw new BadInput(`${named(file)}: it stays as it was; ${reasonOf(problem)}.`);
  }
}
