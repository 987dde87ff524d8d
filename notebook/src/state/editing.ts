import { hasReader, openReader } from './reading';

type Edits = typeof import('./edits').edits;

let here: Edits | undefined;

async function openEdits(): Promise<void> {
  const { edits: loaded } = await import('./edits');
  here = loaded;
}

/** Loads what writes into a case, and what reads it then. */
export async function openEditing(): Promise<void> {
  await Promise.all([openReader(), openEdits()]);
}

export const canEdit = (): boolean => here !== undefined && hasReader();

/** What writes into a case; it must have been loaded. */
export function edits(): Edits {
  if (!here) throw new Error('Nothing was loaded that writes into a case.');
  return here;
}
