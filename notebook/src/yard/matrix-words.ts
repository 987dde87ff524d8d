import { type FactsGiven, levels } from '@tarebook/rules/engine';
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

/** As far as the sliders go, either way, and between. */
export const sliderEnds = (): readonly FactsGiven[] => [
  packedFor(1, 0),
  packedFor(mostPeople / 2, mostCargo / 2),
  packedFor(mostPeople, mostCargo),
];

/** What is looked at, for paper, where no field can be seen. */
export function sieveSaid({ group, line, longest, without }: Sieve): string {
  const left = levels.filter((_, at) => without.has(at)).map((level) => levelWords[level]);
  const parts = [
    group === '' ? '' : `vehicles: ${group}`,
    line === '' ? '' : `line: ${line}`,
    longest === undefined ? '' : `no longer than ${longest} ft`,
    left.length === 0 ? '' : `left out: ${left.join(', ')}`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'All of the yard.' : `Of the yard, ${parts.join('; ')}.`;
}
