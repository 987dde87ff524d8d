import type { FactsGiven, RowGiven } from '@tarebook/rules/engine';
import {
  convert,
  findUnit,
  readQuantity,
  sameDimension,
  unitOf,
  wasMisread,
} from '@tarebook/rules/quantity';
import type { LoadRow } from '../state/loads';
import { kindOf, kindsOfPeople, type Person, people } from '../state/people';

export type Way = 'trailers' | 'vehicles';

/** What a counter was told: one vehicle or one trailer, who rides along, and what is packed. */
export type Told = {
  /** What it is set against. */
  readonly way: Way;
  /** A vehicle or trailer of the catalogue; '' where only figures were told. */
  readonly chosen: string;
  /** Figures as typed, by fact. */
  readonly figures: Readonly<Record<string, string>>;
  readonly aboard: Readonly<Record<Person, number>>;
  /** Those aboard with the weights that a case has; absent: so many at the usual weights. */
  readonly riding?: readonly RowGiven[] | undefined;
  /** What is packed, by its name; '' for nothing. */
  readonly load: string;
  /** What a case has packed. */
  readonly packed?: readonly RowGiven[] | undefined;
  /** What else came along from a case, and how it is told. */
  readonly more?: { readonly facts: FactsGiven; readonly said: readonly string[] } | undefined;
};

/** The name of what a case has packed. */
export const packedAsTold = 'as in the case';

export const nothingTold = (way: Way): Told => ({
  way,
  chosen: '',
  figures: {},
  aboard: { adult: 2, child: 0, dog: 0 },
  load: '',
});

/** A figure that a counter is told, as a person says it. */
export type Figure = { readonly id: string; readonly label: string; readonly where: string };

export const figuresOf: Readonly<Record<Way, readonly Figure[]>> = {
  trailers: [
    { id: 'vehicle.maxTrailerWeight', label: 'Rated to pull', where: 'owner’s manual' },
    { id: 'vehicle.placardPayload', label: 'Payload', where: 'label in the driver’s door' },
    { id: 'vehicle.maxTongueCarried', label: 'Most on the ball', where: 'manual or hitch' },
  ],
  vehicles: [
    { id: 'trailer.dryWeight', label: 'Dry weight', where: 'brochure or label' },
    { id: 'trailer.gvwr', label: 'Trailer’s own maximum (GVWR)', where: 'label at the door' },
    { id: 'trailer.dryTongueWeight', label: 'Dry tongue weight', where: 'brochure' },
  ],
};

const isKnown = (text: string | undefined): text is string =>
  text !== undefined && text.trim() !== '' && text !== 'unknown';

/** What is wrong with a weight as it was typed, in one sentence; undefined where nothing is. */
export function refusedWeight(text: string): string | undefined {
  if (!isKnown(text)) return undefined;
  const read = readQuantity(text);
  const found = text.trim().slice(0, 40);
  if (wasMisread(read)) return `“${found}” is no weight; write one such as 3,500 lb.`;
  const unit = read.unit ?? findUnit('lb');
  if (!unit || !sameDimension(unit.dimension, unitOf('lb').dimension)) {
    return `“${found}” is no weight; write it in lb or kg.`;
  }
  return read.from > 0 ? undefined : `“${found}” is not above zero; write one such as 3,500 lb.`;
}

/** Whether a weight as it was typed is another than the catalogue's, by more than rounding. */
export function isApart(text: string | undefined, cell: string): boolean {
  const pounds = /^\d+$/.test(cell) ? Number(cell) : Number.NaN;
  if (!isKnown(text) || Number.isNaN(pounds)) return false;
  const read = readQuantity(text);
  if (wasMisread(read)) return false;
  const found = convert(read.from, read.unit ?? unitOf('lb'), unitOf('lb'));
  return Math.abs(found - pounds) > 0.01 * pounds;
}

/** The labels of the figures that cannot be read. */
export const refusedIn = ({ way, figures }: Told): readonly string[] =>
  figuresOf[way].flatMap(({ id, label }) => (refusedWeight(figures[id] ?? '') ? [label] : []));

const capital = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;

function occupants(aboard: Told['aboard']): readonly RowGiven[] {
  return kindsOfPeople.flatMap((kind) =>
    Array.from({ length: aboard[kind] }, (_, i) => ({
      label: kind === 'adult' && i === 0 ? 'Driver' : `${capital(people[kind].one)} ${i + 1}`,
      weight: people[kind].weight,
    })),
  );
}

/** Whom it is about, in one line for paper: `Corrie Hybrid; payload 1,000 lb`. */
export function toldSaid({ way, chosen, figures, more }: Told): string {
  const told = figuresOf[way].flatMap(({ id, label }) => {
    const text = figures[id];
    return isKnown(text) ? [`${label}: ${inUnit(text, 'lb')}`] : [];
  });
  const own = way === 'trailers' ? 'Their vehicle' : 'Their trailer';
  return `${[chosen === '' ? own : chosen, ...told, ...(more?.said ?? [])].join('; ')}.`;
}

/** A bare number is in the unit of its column. */
const inUnit = (cell: string, unit: string): string =>
  /^[-+−]?[\d.,]+$/.test(cell) ? `${cell} ${unit}` : cell;

/** The lists of a named load as facts. */
export function packed(rows: readonly LoadRow[], name: string): FactsGiven {
  const lists: Record<string, RowGiven[]> = {};
  for (const { list, label, weight, ahead } of rows.filter((row) => row.name === name)) {
    const row = {
      label,
      weight: inUnit(weight, 'lb'),
      ...(ahead !== '' && { ahead: inUnit(ahead, 'ft') }),
    };
    lists[list] = [...(lists[list] ?? []), row];
  }
  return lists;
}

/** Whether enough was told to set anything against the yard. */
export const isEnough = ({ chosen, figures, more }: Told): boolean =>
  chosen !== '' || more !== undefined || Object.values(figures).some(isKnown);

/** How many people ride along. */
export const peopleIn = ({ riding, aboard: { adult, child } }: Told): number =>
  riding ? riding.filter(({ label }) => kindOf(String(label)) !== 'dog').length : adult + child;

/** Only the rating: each trailer then counts at its own maximum, packed or not. */
export const isRatingOnly = ({ way, chosen, figures, more }: Told): boolean => {
  const typed = Object.keys(figures).filter((id) => isKnown(figures[id]));
  const other = Object.keys(more?.facts ?? {}).filter((id) => id.startsWith('vehicle.'));
  const known = [...typed, ...other];
  return way === 'trailers' && chosen === '' && known.join() === 'vehicle.maxTrailerWeight';
};

/** The facts of what was told, beside those of what was chosen from the catalogue. */
export function factsOf(told: Told, loads: readonly LoadRow[]): FactsGiven {
  const typed = Object.entries(told.figures).filter(([, text]) => isKnown(text));
  return {
    ...told.more?.facts,
    ...Object.fromEntries(typed),
    'load.occupants': told.riding ?? occupants(told.aboard),
    ...(told.load === packedAsTold && told.packed && { 'trailer.cargo': told.packed }),
    ...packed(loads, told.load),
  };
}
