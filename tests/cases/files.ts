import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

export const casesFolder = new URL('../../cases/', import.meta.url).pathname;
/** Answers that are no calculation: documents without a rule set. */
export const notesFolder = join(casesFolder, 'note');
/** Whole rigs: documents of all rule sets at once. */
export const rigFolder = join(casesFolder, 'rig');
export const refusedFolder = join(casesFolder, 'refused');

export type Text = { readonly name: string; readonly text: string };

const isOutside = (folder: string, path: string): boolean =>
  relative(folder, path).startsWith('..');

/**
 * All Markdown files below a folder, in order of name, without those of a folder left out; notes
 * and whole rigs only from their own folder.
 */
export function markdownBelow(folder: string, without?: string): readonly Text[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.md'))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => without === undefined || isOutside(without, path))
    .filter((path) => folder === notesFolder || isOutside(notesFolder, path))
    .filter((path) => folder === rigFolder || isOutside(rigFolder, path))
    .sort()
    .map((path) => ({ name: relative(casesFolder, path), text: readFileSync(path, 'utf8') }));
}
