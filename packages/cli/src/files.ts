import type { Stats } from 'node:fs';
import { lstat, open, readdir, realpath, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { onOneLine, type Trouble } from '@tarebook/casebook';
import type { OldId } from '@tarebook/rules/engine';

/** Something a person gave that cannot be used; said in one sentence, exit code 2. */
export class BadInput extends Error {}

const mostNameShown = 160;

/** A file's name as it can stand in a sentence, whatever characters it has. */
export function named(file: string): string {
  if (file === '-') return 'standard input';
  if (file === '') return 'an empty name';
  const name = onOneLine(file);
  const half = mostNameShown / 2;
  return name.length <= mostNameShown ? name : `${name.slice(0, half)}…${name.slice(-half)}`;
}

/** Each trouble of a document on a line of its own, behind the place where it is. */
export const troubleLines = (file: string, troubles: readonly Trouble[]): string =>
  troubles.map(({ line, column, says }) => `${named(file)}:${line}:${column}: ${says}`).join('\n');

/** What is said of a document that has ids of former days. */
export const renamedLines = (file: string, renamed: readonly OldId[]): readonly string[] => {
  const told = renamed.map(({ old, now }) => `\`${old}\` is \`${now}\` today`);
  return told.length === 0 ? [] : [`${named(file)}: read as it was meant: ${told.join(', ')}.`];
};

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'this is a folder; name a file',
  ENOTDIR: 'a part of this path is a file and no folder',
  ELOOP: 'the links there lead round in a circle',
  ENAMETOOLONG: 'this name is longer than a file can have',
  EACCES: 'you have no right to open it',
  EPERM: 'you have no right to open it',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'a file cannot be that long here',
  EROFS: 'the disk can only be read',
  EMFILE: 'too many files are open at once',
  ENFILE: 'too many files are open at once',
};

/** The code of what the system refused; undefined for anything else. */
const codeOf = (problem: unknown): string | undefined =>
  problem instanceof Error && 'code' in problem && typeof problem.code === 'string'
    ? problem.code
    : undefined;

/**
 * Why the system refused a file, as part of a sentence.
 *
 * @throws what is no refusal of the system
 */
export function reasonOf(problem: unknown): string {
  const code = codeOf(problem);
  if (code === undefined || !(problem instanceof Error)) throw problem;
  return reasons[code] ?? `it cannot be used (${code})`;
}

/** No case and no saved answer comes near; a device that never ends does. */
const mostBytes = 64 * 1024 * 1024;

async function bytesOf(chunks: AsyncIterable<Uint8Array>, file: string): Promise<Buffer> {
  const read: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of chunks) {
    read.push(chunk);
    length += chunk.length;
    if (length > mostBytes) {
      throw new BadInput(`${named(file)}: this is longer than 64 MiB, which no case is.`);
    }
  }
  return Buffer.concat(read);
}

/** A file that is a link to nothing is there, and is not. */
async function refusal(file: string, problem: unknown): Promise<BadInput> {
  const reason = reasonOf(problem);
  const missing = codeOf(problem) === 'ENOENT';
  const link = missing ? await lstat(file).catch(() => undefined) : undefined;
  const why = link?.isSymbolicLink() ? 'this link leads to nothing' : reason;
  return new BadInput(`${named(file)}: ${why}.`);
}

/** The text of a file, or of standard input for `-`. */
export async function readText(file: string): Promise<string> {
  try {
    if (file === '-') return decoded(await bytesOf(process.stdin, file), file);
    const opened = await open(file);
    // The stream closes the file, also where reading ends early.
    return decoded(await bytesOf(opened.createReadStream(), file), file);
  } catch (problem) {
    if (problem instanceof BadInput) throw problem;
    throw await refusal(file, problem);
  }
}

function decoded(bytes: Buffer, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new BadInput(`${named(file)}: this is not UTF-8 text; save it as UTF-8.`);
  }
}

/** Something below a path that is not read; `wrong` where that is not as it should be. */
export type Skipped = { readonly says: string; readonly wrong: boolean };

export type CaseFiles = { readonly files: readonly string[]; readonly skipped: readonly Skipped[] };

/**
 * The case files below the paths, in order of name, without those whose name begins with a point;
 * links are followed, and a folder is read once. A folder named `refused` holds documents made to be refused, and is left out unless it is named
 * itself.
 */
export async function caseFiles(paths: readonly string[]): Promise<CaseFiles> {
  const files: string[] = [];
  const skipped: Skipped[] = [];
  const skip = (path: string, why: string, wrong: boolean): void => {
    skipped.push({ says: `${named(path)}: ${why}; skipped.`, wrong });
  };
  const seen = new Map<string, string>();

  const visit = async (path: string, isNamed: boolean): Promise<void> => {
    let kind: Stats;
    try {
      kind = await stat(path);
    } catch (problem) {
      const says = (await refusal(path, problem)).message;
      skipped.push({ says: isNamed ? says : says.replace(/\.$/, '; skipped.'), wrong: true });
      return;
    }
    if (kind.isDirectory()) {
      if (isNamed || basename(path) !== 'refused') await walk(path);
      else skip(path, 'a folder of documents made to be refused', false);
    } else if (isNamed) files.push(path);
    else if (path.endsWith('.md')) {
      if (kind.isFile()) files.push(path);
      else skip(path, 'this is neither a file nor a folder', true);
    }
  };

  const walk = async (path: string): Promise<void> => {
    const real = await realpath(path).catch(() => path);
    const first = seen.get(real);
    if (first !== undefined) {
      skip(path, `it leads to ${named(first)}, which was read before`, false);
      return;
    }
    seen.set(real, path);
    const entries = await readdir(path, { withFileTypes: true }).catch((problem: unknown) => {
      skip(path, reasonOf(problem), true);
      return [];
    });
    for (const entry of entries.sort((a, b) => a.name.localeCompare(b.name, 'en'))) {
      const may = entry.isDirectory() || entry.isSymbolicLink() || entry.name.endsWith('.md');
      if (may && !entry.name.startsWith('.')) await visit(join(path, entry.name), false);
    }
  };

  for (const path of paths) await visit(path, true);
  if (files.length === 0 && !skipped.some(({ wrong }) => wrong)) {
    throw new BadInput(`${paths.map(named).join(', ')}: no case (*.md) is there.`);
  }
  return { files, skipped };
}
