import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

export const casesFolder = new URL('../../cases/', import.meta.url).pathname;
export const refusedFolder = join(casesFolder, 'refused');

export type Text = { readonly name: string; readonly text: string };

/** All Markdown files below a folder, in order of name, without those of a folder left out. */
export function markdownBelow(folder: string, without?: string): readonly Text[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.md'))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => without === undefined || relative(without, path).startsWith('..'))
    .sort()
    .map((path) => ({ name: relative(casesFolder, path), text: readFileSync(path, 'utf8') }));
}
