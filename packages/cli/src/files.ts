import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** Something a person gave that cannot be used; said in one sentence, exit code 2. */
export class BadInput extends Error {}

const hasCode = (problem: unknown, code: string): boolean =>
  problem instanceof Error && 'code' in problem && problem.code === code;

/** The text of a file, or of standard input for `-`. */
export async function readText(file: string): Promise<string> {
  if (file === '-') {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
    return decoded(Buffer.concat(chunks), file);
  }
  try {
    return decoded(await readFile(file), file);
  } catch (problem) {
    if (hasCode(problem, 'ENOENT')) throw new BadInput(`${file}: there is no such file.`);
    if (hasCode(problem, 'EISDIR')) throw new BadInput(`${file}: this is a folder; name a file.`);
    throw problem;
  }
}

function decoded(bytes: Buffer, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new BadInput(`${file}: this is not UTF-8 text; save the case as UTF-8.`);
  }
}

/**
 * The case files below the paths, in order of name. A folder named `refused` holds documents made
 * to be refused, and is left out unless it is named itself.
 */
export async function caseFiles(paths: readonly string[]): Promise<readonly string[]> {
  const found: string[] = [];
  const walk = async (path: string): Promise<void> => {
    const entries = await readdir(path, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => a.name.localeCompare(b.name, 'en'))) {
      const inner = join(path, entry.name);
      if (entry.isDirectory() && entry.name !== 'refused') await walk(inner);
      else if (entry.isFile() && entry.name.endsWith('.md')) found.push(inner);
    }
  };
  for (const path of paths) {
    const kind = await stat(path).catch(() => undefined);
    if (!kind) throw new BadInput(`${path}: there is no such file or folder.`);
    if (kind.isDirectory()) await walk(path);
    else found.push(path);
  }
  if (found.length === 0) throw new BadInput(`${paths.join(', ')}: no case (*.md) is there.`);
  return found;
}
