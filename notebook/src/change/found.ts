import type { UnitSystem } from '@tarebook/rules/quantity';
import { type House, housesNow } from '../state/house';
import type { ChangeFound } from './asked';

/** What a search came to, for what text and units, and under which of the dealer's own numbers. */
type Searched = {
  readonly text: string;
  readonly system: UnitSystem;
  readonly houses: readonly House[];
  readonly found: ChangeFound;
};

let last: Searched | undefined;
const hearers = new Set<() => void>();

/** Tells whoever listens what would change a case, so that the page need not be drawn anew for it. */
export function tellFound(searched: Searched): void {
  last = searched;
  for (const hear of hearers) hear();
}

/** What would change the case of this very text by the numbers kept now; undefined until it is found. */
export const foundFor = (text: string, system: UnitSystem): ChangeFound | undefined =>
  last?.text === text && last.system === system && last.houses === housesNow()
    ? last.found
    : undefined;

/** Hears of every search that ends well. */
export function hearFound(hear: () => void): () => void {
  hearers.add(hear);
  return () => hearers.delete(hear);
}
