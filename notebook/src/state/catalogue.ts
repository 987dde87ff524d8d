/// <reference types="vite/client" />
import type { Topic } from '@tarebook/rules/engine';
import { parse } from 'csv-parse/browser/esm/sync';
import trailersText from '../../../seeds/trailers.csv?raw';
import vehiclesText from '../../../seeds/vehicles.csv?raw';
import type { Started } from './blank';
import { allOwnFiles, filesOf, pairsOf } from './own-catalogue';

/** One vehicle or trailer of the invented catalogue: cells by column, '' where nothing is known. */
export type Entry = {
  readonly name: string;
  /** What kind of vehicle or trailer it is, as one would say it. */
  readonly body: string;
  readonly cells: Readonly<Record<string, string>>;
};

function entries(text: string): readonly Entry[] {
  const rows: Record<string, string>[] = parse(text, { columns: true, comment: '#', trim: true });
  return rows.map((cells) => ({ name: cells.name ?? '', body: cells.body ?? '', cells }));
}

export const vehicles: readonly Entry[] = entries(vehiclesText);
export const trailers: readonly Entry[] = entries(trailersText);

export type Entries = { readonly vehicles: readonly Entry[]; readonly trailers: readonly Entry[] };

/** The catalogue that counts on this device: of each kind one's own, else the invented one. */
export async function openCatalogue(): Promise<Entries & { readonly isOwn: boolean }> {
  // A device that keeps nothing has none of its own.
  const own = pairsOf(filesOf(await allOwnFiles().catch(() => [])));
  const read = (text: string | undefined, invented: readonly Entry[]): readonly Entry[] =>
    text === undefined ? invented : entries(text);
  return {
    vehicles: read(own?.['vehicles.csv'], vehicles),
    trailers: read(own?.['trailers.csv'], trailers),
    isOwn: own !== undefined,
  };
}

/** The facts of a topic that a catalogue entry knows, each in the unit the topic declares. */
export function catalogueFacts(
  topic: Topic,
  what: 'vehicle' | 'trailer',
  { name, cells }: Entry,
): readonly Started[] {
  return Object.entries(cells).flatMap(([column, cell]) => {
    const id = `${what}.${column}`;
    const fact = topic.facts[id];
    if (!fact || cell === '') return [];
    const isBare = /^[-+−]?[\d.,\s]+$/.test(cell);
    const unit = fact.kind === 'quantity' && fact.unit !== '' && isBare ? ` ${fact.unit}` : '';
    return [{ id, value: `${cell}${unit}`, readFrom: `catalogue, ${name}` }];
  });
}

/** Whether a topic asks for anything that the catalogue knows of vehicles, or of trailers. */
export const asksFor = (topic: Topic, what: 'vehicle' | 'trailer'): boolean => {
  const [first] = what === 'vehicle' ? vehicles : trailers;
  return Object.keys(first?.cells ?? {}).some((column) => topic.facts[`${what}.${column}`]);
};
