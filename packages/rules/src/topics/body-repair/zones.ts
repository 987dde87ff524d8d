import type { Formula, Parameter, QuantityFact } from '../../engine/define/shapes';
import { money, shopBook } from '../../trade/bibliography/body-repair';
import { custom } from '../../trade/bibliography/common';

type Span = readonly [low: number, high: number];

/**
 * The zones a body is divided into, each with what one segment takes.
 *
 *         ┌──────── roof ────────┐
 *     front                    rear      corners: moldings and trim
 *         └──────── side ────────┘
 */
const zones = {
  front: { label: 'front', hours: [10, 20], material: [300, 1200] },
  side: { label: 'side', hours: [5, 10], material: [120, 400] },
  rear: { label: 'rear', hours: [7, 14], material: [200, 700] },
  roof: { label: 'roof', hours: [8, 20], material: [250, 900] },
  corner: { label: 'corner', hours: [1.5, 3], material: [40, 120] },
} as const satisfies Readonly<
  Record<string, { readonly label: string; readonly hours: Span; readonly material: Span }>
>;

const parameter = (label: string, unit: string, value: number): Parameter => ({
  label,
  unit,
  values: [{ from: '2020-01-01', value }],
  range: [value / 4, value * 4],
  source: shopBook,
});

const countOf = (label: string): QuantityFact => ({
  kind: 'quantity',
  label: `Segments to be replaced, ${label}`,
  unit: '',
  least: 0,
  most: 40,
  counted: true,
  ask: `How many segments of the ${label} are torn, creased or holed?`,
  where: 'walk around it: a segment runs from seam to seam; a small dent that can stay is none',
  silent: { value: 0, says: `No segment of the ${label} is counted.`, source: custom, quiet: true },
});

const names = Object.keys(zones);
const each = Object.entries(zones);
const sum = (what: string) => names.map((zone) => `segments.${zone} * ${zone}.${what}`).join(' + ');

const total = (label: string, unit: string, what: string): Formula => ({
  label,
  unit,
  is: sum(what),
  source: what.startsWith('hours') ? shopBook : money,
});

/** Segments counted by zone, and what all of them take at the least and at the most. */
export const byZone = {
  facts: {
    'segments.front': countOf(zones.front.label),
    'segments.side': countOf(zones.side.label),
    'segments.rear': countOf(zones.rear.label),
    'segments.roof': countOf(zones.roof.label),
    'segments.corner': countOf(zones.corner.label),
  },
  parameters: Object.fromEntries(
    each.flatMap(([zone, { label, hours, material }]) => [
      [
        `${zone}.hoursLow`,
        parameter(`Hours for a segment of the ${label}, at the least`, 'h', hours[0]),
      ],
      [
        `${zone}.hoursHigh`,
        parameter(`Hours for a segment of the ${label}, at the most`, 'h', hours[1]),
      ],
      [
        `${zone}.partsLow`,
        parameter(`Parts for a segment of the ${label}, at the least`, 'USD', material[0]),
      ],
      [
        `${zone}.partsHigh`,
        parameter(`Parts for a segment of the ${label}, at the most`, 'USD', material[1]),
      ],
    ]),
  ),
  formulas: {
    'segments.hoursLow': total('Hours for the segments, at the least', 'h', 'hoursLow'),
    'segments.hoursHigh': total('Hours for the segments, at the most', 'h', 'hoursHigh'),
    'segments.partsLow': total('Parts for the segments, at the least', 'USD', 'partsLow'),
    'segments.partsHigh': total('Parts for the segments, at the most', 'USD', 'partsHigh'),
  },
};
