import { type FactsGiven, levels } from '@tarebook/rules/engine';
import type { House } from '../state/house';
import { people } from '../state/people';
import type { Sieve } from './matrix-sieve';

export const levelWords = {
  ok: 'fits',
  care: 'fits with care',
  if: 'fits if',
  unknown: 'cannot say',
  stop: 'does not fit',
} as const;

/** So many adults aboard and so many pounds packed, as a case says it. */
export function packedFor(adults: number, cargo: number): FactsGiven {
  const { weight } = people.adult;
  return {
    'load.occupants': Array.from({ length: adults }, (_, i) => ({
      label: i === 0 ? 'Driver' : `Adult ${i + 1}`,
      weight,
    })),
    ...(cargo > 0 && { 'trailer.cargo': [{ label: 'What is packed', weight: `${cargo} lb` }] }),
  };
}

export const mostPeople = 8;
/** Pounds packed in the trailer. */
export const mostCargo = 1500;

/** So many adults aboard and so many pounds packed, from the fewest and least to the most. */
export type Reach = {
  readonly adults: readonly [from: number, to: number];
  readonly cargo: readonly [from: number, to: number];
};

/** All that the sliders reach where anything is packed: nothing packed is another way of telling. */
export const wholeReach: Reach = { adults: [1, mostPeople], cargo: [1, mostCargo] };

/** So many pounds are one part of the reach; each number of adults is one of its own. */
const part = 100;

/** The part of the sliders' reach in which they stand; undefined where nothing is packed. */
export function reachAt(adults: number, cargo: number): Reach | undefined {
  if (cargo <= 0) return undefined;
  const from = Math.floor((cargo - 1) / part) * part + 1;
  return { adults: [adults, adults], cargo: [from, from + part - 1] };
}

/** The parts of the reach to which one slider gets while the other stands, the nearest first. */
export function reachesFrom(adults: number, cargo: number): readonly Reach[] {
  const packed = Array.from({ length: mostCargo / part }, (_, i) => (i + 1) * part);
  const byCargo = packed.toSorted((a, b) => Math.abs(a - cargo) - Math.abs(b - cargo));
  const all = [
    ...byCargo.map((pounds) => reachAt(adults, pounds)),
    ...Array.from({ length: mostPeople }, (_, i) => reachAt(i + 1, cargo)),
  ];
  return all.flatMap((reach) => reach ?? []);
}

/** The same as a case says it, with ranges: whoever may be aboard weighs nothing or as much as an adult. */
export function packedWithin({ adults, cargo }: Reach): FactsGiven {
  const { weight } = people.adult;
  const mayBe = `0 lb to ${weight}`;
  return {
    'load.occupants': Array.from({ length: adults[1] }, (_, i) => ({
      label: `Adult ${i + 1}`,
      weight: i < adults[0] ? weight : mayBe,
    })),
    'trailer.cargo': [{ label: 'What is packed', weight: `${cargo[0]} lb to ${cargo[1]} lb` }],
  };
}

/** As far as the sliders go, either way, and between. */
export const sliderEnds = (): readonly FactsGiven[] => [
  packedFor(1, 0),
  packedFor(mostPeople / 2, mostCargo / 2),
  packedFor(mostPeople, mostCargo),
];

/** Percent of each rating that may be kept free: within what a dealer may choose of every one. */
export const margins = [5, 10, 15] as const;

/** The house with so much of each rating kept free in place of its own margins. */
export const withMargin = (house: House | undefined, percent: number): House => {
  const own = house?.name ? house : { topic: 'tow-fit', name: 'This yard', parameters: {} };
  const kept = { value: percent, unit: '%', reason: 'Chosen on the picture of all pairs.' };
  const all = ['margin.towRating', 'margin.other', 'margin.trailerTires'].map((id) => [id, kept]);
  return { ...own, parameters: { ...own.parameters, ...Object.fromEntries(all) } };
};

/** What is looked at, for paper, where no field can be seen. */
export function sieveSaid(sieve: Sieve, margin: number | undefined): string {
  const { group, line, lot, axles, longest, dearest, sleeps, without } = sieve;
  const left = levels.filter((_, at) => without.has(at)).map((level) => levelWords[level]);
  const parts = [
    group === '' ? '' : `vehicles: ${group}`,
    line === '' ? '' : `line: ${line}`,
    lot === '' ? '' : `where: ${lot}`,
    axles === '' ? '' : `axles: ${axles}`,
    longest === undefined ? '' : `no longer than ${longest} ft`,
    dearest === undefined ? '' : `no more than $${dearest.toLocaleString('en-US')}`,
    sleeps === undefined ? '' : `sleeps ${sleeps} or more`,
    margin === undefined ? '' : `${margin} % of each rating kept free`,
    left.length === 0 ? '' : `left out: ${left.join(', ')}`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'All of the yard.' : `Of the yard, ${parts.join('; ')}.`;
}

/** With whom and what the pairs are judged, and what of the counter is not in it. */
export function beginsSaid(told: number, adults: number, cargo: number): string {
  const { weight } = people.adult;
  const whose = adults === told ? 'as told above' : `${told} told above`;
  const packed = cargo === 0 ? 'nothing packed' : `${cargo} lb packed`;
  return `Judged with ${adults} aboard, ${whose}, each at ${weight}, and ${packed} in the trailer; no dog and no bags in the vehicle.`;
}
