import type { UnitSystem } from '@tarebook/rules/quantity';
import type { ChangeFound } from './asked';

/** What a search came to, and for what text and units. */
type Searched = {
  readonly text: string;
  readonly system: UnitSystem;
  readonly found: ChangeFound;
};

let last: Searched | undefined;
const hearers = new Set<() => void>();

/** Tells whoever listens what would change a case, so that the page need not be drawn anew for it. */
export function tellFound(searched: Searched): void {
  last = searched;
  for (const hear of hearers) hear();
}

/** What would change the case of this very text; undefined until it is found. */
export const foundFor = (text: string, system: UnitSystem): ChangeFound | undefined =>
  last?.text === text && last.system === system ? last.found : undefined;

/** Hears of every search that ends well. */
export function hearFound(hear: () => void): () => void {
  hearers.add(hear);
  return () => hearers.delete(hear);
}
