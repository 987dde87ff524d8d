import { createHash } from 'node:crypto';
import { mkdir, open, readdir, readFile, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { BadInput, named, reasonOf } from './files';
import { writeBeside } from './write-beside';

/**
 * A sweep on its way: whole parts in a folder beside the file that it is to be. Each is written beside
 * and renamed, so that whatever stops the sweep, what stands there is whole.
 *
 *     pairs.csv.parts/asked.json      what was asked, so that nothing else is gone on with
 *                     000000.csv      000000.json (how many of each outcome)
 *     pairs.csv  ◄── all parts, in their order, once the last is there
 */
export type Parts = {
  /** The counts of a part that is there already. */
  readonly has: (part: number) => Promise<Counts | undefined>;
  readonly write: (part: number, text: string, counts: Counts) => Promise<void>;
  /** Puts all parts together in the file, and takes their folder away. */
  readonly finish: (head: string, parts: number) => Promise<void>;
};

export type Counts = Readonly<Record<string, number>>;

const nameOf = (part: number): string => String(part).padStart(6, '0');

export const digestOf = (...texts: readonly string[]): string => {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(`${text.length}\n${text}`);
  return hash.digest('hex');
};

const isCounts = (value: unknown): value is Counts =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every((each) => Number.isSafeInteger(each));

async function textOf(file: string): Promise<string | undefined> {
  return readFile(file, 'utf8').catch(() => undefined);
}

/** Whatever the disk refuses is said of the file that the sweep was to write. */
async function onDisk<T>(file: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (problem) {
    if (problem instanceof BadInput) throw problem;
    throw new BadInput(`${named(file)}: it cannot be written; ${reasonOf(problem)}.`);
  }
}

/** Opens the parts of a file, those of before where the same was asked and they are to be gone on with. */
export async function partsOf(file: string, asked: string, goOn: boolean): Promise<Parts> {
  const folder = join(dirname(file), `${basename(file)}.parts`);
  const about = join(folder, 'asked.json');
  const before = await textOf(about);
  if (goOn && before !== undefined && before !== asked) {
    throw new BadInput(
      `${named(file)}: what stands in ${named(folder)} is of another sweep (other files, day or rules); leave out --resume to begin anew.`,
    );
  }
  await onDisk(file, async () => {
    if (!goOn) await rm(folder, { recursive: true, force: true });
    await mkdir(folder, { recursive: true });
    await writeBeside(about, asked);
  });
  const at = (part: number, ending: string) => join(folder, `${nameOf(part)}.${ending}`);
  return {
    has: async (part) => {
      const found = (await readdir(folder)).includes(`${nameOf(part)}.csv`);
      const counts: unknown = found ? JSON.parse((await textOf(at(part, 'json'))) ?? 'null') : null;
      return isCounts(counts) ? counts : undefined;
    },
    write: async (part, text, counts) => {
      await writeBeside(at(part, 'json'), JSON.stringify(counts));
      await writeBeside(at(part, 'csv'), text);
    },
    finish: (head, parts) =>
      onDisk(file, async () => {
        const whole = join(folder, 'whole.part');
        const handle = await open(whole, 'w');
        try {
          await handle.write(head);
          for (let part = 0; part < parts; part += 1) {
            await handle.write(await readFile(at(part, 'csv')));
          }
          await handle.sync();
        } finally {
          await handle.close();
        }
        await rename(whole, file);
        await rm(folder, { recursive: true, force: true });
      }),
  };
}
