/**
 * Chances against closed forms and a general statistics library.
 *
 * - Even (continuous uniform) distribution: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.2.
 * - Sum of two even ranges, a trapezoid, and the symmetric triangle: by convolution, worked out here;
 *   the triangle's cumulative as in Kotz and van Dorp, “Beyond Beta” (2004), chapter 1 (cited from
 *   memory).
 * - Standard error of a share, √(p (1 − p) ÷ n): NIST/SEMATECH e-Handbook, 7.2.4 (from memory).
 * - Quantiles and moments: simple-statistics.
 */
import { spread, type Topic, towFit } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import {
  mean,
  quantileSorted,
  sampleCorrelation,
  standardDeviation,
  variance,
} from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { prepare } from '../../packages/rules/src/engine/spread/prepare';
import { quantileOf } from '../../packages/rules/src/engine/spread/statistics';

const asOf = '2026-11-01';
const tow: Topic = towFit;
const seeds = [1, 2, 3, 20_261_101, 4_294_967_295];
const draws = 10_000;

const rig = (more: FactsGiven): FactsGiven => ({
  'vehicle.maxTrailerWeight': '9,000 lb',
  'vehicle.maxTongueCarried': '900 lb',
  'vehicle.placardPayload': '3,000 lb',
  'trailer.dryWeight': '4,000 lb',
  'trailer.gvwr': '4,400 lb',
  'trailer.dryTongueWeight': '450 lb',
  ...more,
});

/** P(A + B > t) of two even ranges: one less the area below t, by the corners of the trapezoid. */
function sumOver(a: readonly [number, number], b: readonly [number, number], t: number): number {
  const corners = [
    [a[0] + b[0], 1],
    [a[1] + b[0], -1],
    [a[0] + b[1], -1],
    [a[1] + b[1], 1],
  ] as const;
  const area = corners.reduce((sum, [at, sign]) => sum + (sign * Math.max(0, t - at) ** 2) / 2, 0);
  return 1 - area / ((a[1] - a[0]) * (b[1] - b[0]));
}

/** P(X > t) of a triangle with its peak at the middle m and its ends at m ± w. */
function triangleOver(m: number, w: number, t: number): number {
  const above = Math.max(0, m + w - t) ** 2 / (2 * w * w);
  return t >= m ? above : 1 - Math.max(0, t - m + w) ** 2 / (2 * w * w);
}

type Closed = readonly [what: string, facts: FactsGiven, limit: string, chance: number];

const closed: readonly Closed[] = [
  ['one even range', { 'trailer.dryWeight': '3,000–5,000 lb' }, 'trailer-gross', 0.3],
  ['an even rating', { 'trailer.gvwr': '3,900–4,400 lb' }, 'trailer-gross', 0.2],
  // Over 900 lb when the dry tongue is over 900 ÷ 1.1.
  [
    'an even range through a factor',
    { 'trailer.dryTongueWeight': '800–830 lb' },
    'tongue',
    (830 - 900 / 1.1) / 30,
  ],
  [
    'the sum of two even ranges of one list',
    {
      'trailer.dryWeight': '3,600 lb',
      'trailer.cargo': [{ weight: '0–400 lb' }, { weight: '100–1,100 lb' }],
    },
    'trailer-gross',
    sumOver([0, 400], [100, 1100], 800),
  ],
  [
    'an even load against an even rating',
    { 'trailer.dryWeight': '4,000–4,600 lb', 'trailer.gvwr': '4,200–4,500 lb' },
    'trailer-gross',
    sumOver([4000, 4600], [-4500, -4200], 0),
  ],
  [
    'a triangle above its peak',
    { 'trailer.dryWeight': '4,150 ± 500 lb' },
    'trailer-gross',
    triangleOver(4150, 500, 4400),
  ],
  [
    'a triangle below its peak',
    { 'trailer.dryWeight': '4,600 ± 500 lb' },
    'trailer-gross',
    triangleOver(4600, 500, 4400),
  ],
  // A load that alone never goes over, and water of which each pound brings it nearer: the corner of
  // the triangle above 460 lb less the water, over all of the water, ∫ t² dt ÷ 2w² from 0 to 106.8.
  [
    'the sum of a triangle and an even range',
    {
      'trailer.dryWeight': '3,940 lb',
      'trailer.cargo': [{ weight: '250 ± 150 lb' }],
      'trailer.freshWater': '0–20 gal',
    },
    'trailer-gross',
    106.8 ** 3 / (3 * 2 * 150 ** 2 * 166.8),
  ],
  [
    'a triangle in a cell of a list',
    { 'trailer.cargo': [{ weight: '350 ± 100 lb' }] },
    'trailer-gross',
    triangleOver(350, 100, 400),
  ],
];

describe.each(closed)('%s', (_, facts, limit, exact) => {
  test.each(seeds)('goes over as often as its closed form says, seed %i', (seed) => {
    const found = spread(towFit, { facts: rig(facts), asOf }, { draws, seed }).limits[limit];
    const error = Math.sqrt((exact * (1 - exact)) / draws);
    expect(exact).toBeGreaterThan(0);
    expect(Math.abs((found?.chance ?? Number.NaN) - exact)).toBeLessThan(4 * error);
    expect(found?.error).toBeCloseTo(error, 3);
  });
});

test('the same ends written ± and as a range are drawn differently', () => {
  const chance = (dry: string) =>
    spread(towFit, { facts: rig({ 'trailer.dryWeight': dry }), asOf }, { draws, seed: 9 }).limits[
      'trailer-gross'
    ]?.chance ?? Number.NaN;
  const [even, peaked] = [chance('3,750–4,750 lb'), chance('4,250 ± 500 lb')];
  expect(even).toBeCloseTo(0.35, 1);
  expect(peaked).toBeCloseTo(triangleOver(4250, 500, 4400), 1);
  expect(even - peaked).toBeGreaterThan(0.08);
});

describe('against a general statistics library', () => {
  const facts = rig({
    'trailer.dryWeight': '3,000–5,000 lb',
    'trailer.dryTongueWeight': '450 ± 60 lb',
  });

  function lanes(key: string, count: number): readonly number[] {
    const prepared = prepare(tow, { facts, asOf }, count, 17);
    prepared.next(count);
    return [...(prepared.setting.drawn.get(key)?.lo ?? [])];
  }

  test('even draws have the mean and variance of an even range, and fill it evenly', () => {
    const found = lanes('trailer.dryWeight', 40_000);
    const sd = 2000 / Math.sqrt(12);
    expect(Math.abs(mean([...found]) - 4000)).toBeLessThan((4 * sd) / 200);
    expect(variance([...found]) / sd ** 2).toBeCloseTo(1, 1);
    const counts = new Array<number>(40).fill(0);
    for (const each of found) {
      const bin = Math.floor((each - 3000) / 50);
      counts[bin] = (counts[bin] ?? 0) + 1;
    }
    // χ² with 39 degrees of freedom is over 81 less than once in ten thousand (from memory).
    expect(counts.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0)).toBeLessThan(81);
  });

  test('triangular draws have the mean and variance of a triangle, apart from the other draws', () => {
    const found = lanes('trailer.dryTongueWeight', 40_000);
    expect(Math.abs(mean([...found]) - 450)).toBeLessThan((4 * (60 / Math.sqrt(6))) / 200);
    expect(variance([...found]) / (60 ** 2 / 6)).toBeCloseTo(1, 1);
    const other = lanes('trailer.dryWeight', 40_000);
    expect(Math.abs(sampleCorrelation([...found], [...other]))).toBeLessThan(4 / 200);
  });

  test('quantiles are those of the library', () => {
    for (const count of [1, 2, 4999, 5000]) {
      const sorted = Float64Array.from(lanes('trailer.dryWeight', count)).sort();
      for (const share of [0.05, 0.25, 0.3333, 0.5, 0.75, 0.95]) {
        expect(quantileOf(sorted, share)).toBeCloseTo(quantileSorted([...sorted], share), 9);
      }
    }
  });

  test('the quantiles told are those of the draws', () => {
    const told = spread(towFit, { facts, asOf }, { draws: 5000, seed: 17 });
    const loaded = told.values['trailer.loaded'];
    const sorted = [...lanes('trailer.dryWeight', 5000)].toSorted((a, b) => a - b);
    expect(loaded?.unit).toBe('lb');
    for (const { share, value } of loaded?.quantiles ?? []) {
      expect(value).toBeCloseTo(quantileSorted(sorted, share), 5);
    }
    expect(loaded?.quantiles.map(({ share }) => share)).toEqual([0.05, 0.25, 0.5, 0.75, 0.95]);
  });

  test('the standard error is that of the mean of noughts and ones', () => {
    const found = spread(towFit, { facts, asOf }, { draws: 5000, seed: 17 }).limits[
      'trailer-gross'
    ];
    const ones = Math.round((found?.chance ?? 0) * 5000);
    const hits = Array.from({ length: 5000 }, (_, i) => (i < ones ? 1 : 0));
    expect(found?.error).toBeCloseTo(standardDeviation(hits) / Math.sqrt(5000), 12);
  });

  test('a density counts every draw once, where it fell', () => {
    const { densities } = spread(towFit, { facts, asOf }, { draws: 5000, seed: 17 });
    const { lo, hi, counts } = densities['trailer-gross'] ?? { lo: 0, hi: 0, counts: [] };
    expect([lo, hi]).toEqual([3000, 5000]);
    expect(counts.reduce((a, b) => a + b, 0)).toBe(5000);
    const below = lanes('trailer.dryWeight', 5000).filter((each) => each < 3500).length;
    expect(counts.slice(0, 10).reduce((a, b) => a + b, 0)).toBe(below);
  });
});
