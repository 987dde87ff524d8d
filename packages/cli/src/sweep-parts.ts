import { createHash } from 'node:crypto';
import { mkdir, open, readFile, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { BadInput, named, reasonOf } from './files';
import { writeBeside, writePieces } from './write-beside';

/**
 * A sweep on its way: a folder beside the file that it is to be. Whatever stops the sweep, what stands
 * there is whole: parts are written beside and renamed, and what was joined says how far it goes.
 *
 *     pairs.csv.parts/asked.json      what was asked, so that nothing else is gone on with
 *                     000007.csv      000007.json (how many of each outcome): a part that waits for those before
 *                     joined.csv      joined.json: all parts before it, in their order
 *     pairs.csv  ◄── joined.csv, once the last is in it
 */
export type Parts = {
  readonly folder: string;
  /** How many parts are joined already, and what they come to. */
  readonly joined: () => Joined;
  /** The counts of a part that waits there. */
  readonly waiting: (part: number) => Promise<Counts | undefined>;
  /** Puts the next part to those before, and takes its own file away. */
  readonly join: (counts: Counts) => Promise<void>;
  /** What was joined, whole, ready to be what was wanted. */
  readonly finish: (into: (joined: string) => Promise<void>) => Promise<void>;
};

export type Counts = Readonly<Record<string, number>>;

type Joined = { readonly parts: number; readonly bytes: number; readonly counts: Counts };

const nameOf = (part: number): string => String(part).padStart(6, '0');

export const digestOf = (...texts: readonly string[]): string => {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(`${text.length}\n${text}`);
  return hash.digest('hex');
};

export const isCounts = (value: unknown): value is Counts =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every((each) => Number.isSafeInteger(each));

export const together = (a: Counts, b: Counts): Counts => {
  const sum: Record<string, number> = { ...a };
  for (const [outcome, n] of Object.entries(b)) sum[outcome] = (sum[outcome] ?? 0) + n;
  return sum;
};

async function jsonOf(file: string): Promise<unknown> {
  const text = await readFile(file, 'utf8').catch(() => 'null');
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function joinedIn(value: unknown): Joined | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { parts, bytes, counts }: Partial<Record<keyof Joined, unknown>> = value;
  const isWhole = typeof parts === 'number' && typeof bytes === 'number' && isCounts(counts);
  return isWhole ? { parts, bytes, counts } : undefined;
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

const fileOf = (folder: string, part: number, ending: 'csv' | 'json'): string =>
  join(folder, `${nameOf(part)}.${ending}`);

/** Writes one part beside the others: first what it comes to, then its lines. */
export async function writePart(
  folder: string,
  part: number,
  pieces: Iterable<string>,
  counts: Counts,
): Promise<void> {
  await writeBeside(fileOf(folder, part, 'json'), JSON.stringify(counts));
  await writePieces(fileOf(folder, part, 'csv'), pieces);
}

/** The counts of a part whose file is there. */
export async function partThere(folder: string, part: number): Promise<Counts | undefined> {
  const found = await stat(fileOf(folder, part, 'csv')).catch(() => undefined);
  const counts = found?.isFile() ? await jsonOf(fileOf(folder, part, 'json')) : undefined;
  return isCounts(counts) ? counts : undefined;
}

/** Opens the parts of a file, those of before where the same was asked and they are to be gone on with. */
export async function partsOf(
  file: string,
  asked: string,
  goOn: boolean,
  head: string,
): Promise<Parts> {
  const folder = join(dirname(file), `${basename(file)}.parts`);
  const [about, whole, far] = ['asked.json', 'joined.csv', 'joined.json'].map((name) =>
    join(folder, name),
  );
  if (about === undefined || whole === undefined || far === undefined) throw new Error('No names.');
  const before = await readFile(about, 'utf8').catch(() => undefined);
  if (goOn && before !== undefined && before !== asked) {
    throw new BadInput(
      `${named(file)}: what stands in ${named(folder)} is of another sweep (other files, day or rules); leave out --resume to begin anew.`,
    );
  }
  let joined: Joined = { parts: 0, bytes: Buffer.byteLength(head), counts: {} };
  await onDisk(file, async () => {
    if (!goOn) await rm(folder, { recursive: true, force: true });
    await mkdir(folder, { recursive: true });
    await writeBeside(about, asked);
    const found = joinedIn(await jsonOf(far));
    const length = (await stat(whole).catch(() => undefined))?.size ?? 0;
    if (found && length >= found.bytes) joined = found;
    else await writeBeside(whole, head);
    await writeBeside(far, JSON.stringify(joined));
  });

  const joinNext = async (counts: Counts): Promise<void> => {
    const next = fileOf(folder, joined.parts, 'csv');
    const handle = await open(whole, 'r+');
    let bytes = joined.bytes;
    try {
      // What a stop in the midst of this left behind is written over.
      await handle.truncate(bytes);
      const part = await open(next);
      try {
        const piece = Buffer.alloc(1 << 20);
        for (;;) {
          const { bytesRead } = await part.read(piece, 0, piece.length, null);
          if (bytesRead === 0) break;
          await handle.write(piece, 0, bytesRead, bytes);
          bytes += bytesRead;
        }
      } finally {
        await part.close();
      }
      await handle.datasync();
    } finally {
      await handle.close();
    }
    const had = joined.parts;
    joined = { parts: had + 1, bytes, counts: together(joined.counts, counts) };
    await writeBeside(far, JSON.stringify(joined));
    await rm(next);
    await rm(fileOf(folder, had, 'json'), { force: true });
  };

  return {
    folder,
    joined: () => joined,
    waiting: (part) => partThere(folder, part),
    join: (counts) => onDisk(file, () => joinNext(counts)),
    finish: (into) =>
      onDisk(file, async () => {
        await into(whole);
        await rm(folder, { recursive: true, force: true });
      }),
  };
}

/** What was joined is the file that was wanted. */
export const asCsv = (file: string) => (joined: string) => rename(joined, file);
