import type { Kept } from './kept-shape';

/** What this device did not keep, by its address: it lives as long as this window does. */
const held = new Map<string, Kept>();

/** Whoever closes or reloads the window is asked first; the browser has its own words for it. */
const ask = (event: BeforeUnloadEvent): void => event.preventDefault();

function watch(): void {
  if (typeof addEventListener === 'undefined') return;
  if (held.size > 0) addEventListener('beforeunload', ask);
  else removeEventListener('beforeunload', ask);
}

export function holdUnsaved(key: string, kept: Kept): void {
  held.set(key, kept);
  watch();
}

export function dropUnsaved(key: string): void {
  held.delete(key);
  watch();
}

/** A case as it was left in this window, where the device did not keep it. */
export const unsavedCase = (key: string): Kept | undefined => held.get(key);

export const allUnsaved = (): readonly Kept[] => [...held.values()];
