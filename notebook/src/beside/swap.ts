import type { CaseDocument } from '@tarebook/casebook';
import type { FactsGiven } from '@tarebook/rules/engine';
import type { Started } from '../state/blank';
import { factsAlone } from '../state/facts-alone';
import type { NamedLoad } from '../state/loads';

/** What of a rig is exchanged as one. */
export type Part = 'vehicle' | 'trailer' | 'load';

/** What is carried, wherever it rides; all else of a trailer belongs to the trailer. */
const carried = [
  'load.occupants',
  'load.cargo',
  'trailer.cargo',
  'trailer.freshWater',
  'trailer.grayWater',
  'trailer.blackWater',
];

const isOf: Readonly<Record<Part, (id: string) => boolean>> = {
  vehicle: (id) => id.startsWith('vehicle.'),
  trailer: (id) => id.startsWith('trailer.') && !carried.includes(id),
  load: (id) => carried.includes(id),
};

type Told = Pick<CaseDocument, 'facts' | 'readFrom'>;

const only = <T>(all: Readonly<Record<string, T>>, is: (id: string) => boolean) =>
  Object.fromEntries(Object.entries(all).filter(([id]) => is(id)));

/** The same case with one part of its rig as it is told elsewhere; the words around it stay behind. */
export function swapped(doc: CaseDocument, part: Part, into: Told): string {
  const is = isOf[part];
  const not = (id: string): boolean => !is(id);
  const facts = { ...only(doc.facts, not), ...only(into.facts, is) };
  const readFrom = { ...only(doc.readFrom, not), ...only(into.readFrom, is) };
  const { front, topic } = doc;
  return factsAlone({ front, facts, readFrom, ...(topic && { topic }) }, true);
}

/** What a catalogue tells of a vehicle or trailer, as a case tells it. */
export const toldOf = (started: readonly Started[]): Told => ({
  facts: Object.fromEntries(started.map(({ id, value }) => [id, value])),
  readFrom: Object.fromEntries(started.map(({ id, readFrom }) => [id, readFrom])),
});

/** The driver alone, nothing packed: every list that is asked is told, since a list left out is unknown. */
export function driverAlone({ topic, facts }: CaseDocument): Told {
  const lists = carried.filter((id) => topic?.facts[id]?.kind === 'rows');
  const tanks = carried.filter((id) => topic?.facts[id]?.kind === 'quantity');
  const aboard = facts['load.occupants'];
  const [driver] = Array.isArray(aboard) ? aboard : [];
  const alone: FactsGiven = {
    ...Object.fromEntries(lists.map((id) => [id, [{ label: 'Nothing packed', weight: '0 lb' }]])),
    ...Object.fromEntries(tanks.filter((id) => facts[id]).map((id) => [id, '0 gal'])),
    ...(lists.includes('load.occupants') && {
      'load.occupants': [driver ?? { label: 'Driver', weight: '150 lb' }],
    }),
  };
  return { facts: alone, readFrom: {} };
}

/** What goes by one name, in the place of what stood in the same lists. */
export function withLoad({ facts, readFrom }: CaseDocument, { rows }: NamedLoad): Told {
  const lists = [...new Set(rows.map(({ list }) => list))];
  const named = lists.map((list) => [
    list,
    rows
      .filter((row) => row.list === list)
      .map(({ label, weight, ahead }) => ({
        ...{ label, weight: `${weight} lb` },
        ...(ahead !== '' && { ahead: `${ahead} ft` }),
      })),
  ]);
  return { facts: { ...facts, ...Object.fromEntries(named) }, readFrom };
}
