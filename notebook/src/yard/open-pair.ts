import type { FactsGiven } from '@tarebook/rules/engine';
import { caseAddress } from '../state/address';
import type { Entries } from '../state/catalogue';
import { keep } from '../state/kept';
import { pairAsCase, readInYard } from './as-case';

/** A vehicle and a trailer, by their names; '' for one that stands in no catalogue. */
export type PairNamed = { readonly vehicle: string; readonly trailer: string };

/** Opens a pair as a case of one's own; a device that keeps nothing has it in its address. */
export async function openPair(
  facts: FactsGiven,
  { vehicle, trailer }: PairNamed,
  entries: Entries,
): Promise<void> {
  const title = `${vehicle || 'Their vehicle'} and ${trailer || 'their trailer'}`;
  const from = readInYard({
    vehicle: entries.vehicles.find(({ name }) => name === vehicle),
    trailer: entries.trailers.find(({ name }) => name === trailer),
  });
  const text = pairAsCase(title, facts, from);
  const name = `mine-${Date.now().toString(36)}`;
  try {
    await keep({ topic: 'tow-fit', name, text, at: Date.now() });
    location.hash = caseAddress('tow-fit', name);
  } catch {
    const { pack } = await import('../state/link');
    location.hash = `${caseAddress('tow-fit', name)}/${await pack(text)}`;
  }
}
