import { towFit } from '@tarebook/rules';
import { answerNow, type FactsGiven, levels, spread, type Topic } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { chancing } from './chances';
import { programOf } from './kernel/program';
import { towSides } from './kernel/sides';

const topic: Topic = towFit;
const asOf = '2026-11-01';
const program = programOf(topic, towSides);
const draws = 600;

const vehicles = [
  {
    name: 'Ousel',
    facts: {
      'vehicle.maxTrailerWeight': '4,500 lb',
      'vehicle.maxTongueCarried': '450 ± 60 lb',
      'vehicle.placardPayload': '900–1,100 lb',
      'vehicle.sevenWay': 'yes',
      'vehicle.brakeController': 'yes',
    },
  },
  {
    name: 'Corrie',
    facts: {
      'vehicle.maxTrailerWeight': '6,000 lb',
      'vehicle.maxTongueCarried': '600 lb',
      'vehicle.placardPayload': 'about 1,150 lb',
      'vehicle.sevenWay': 'yes',
      'vehicle.brakeController': 'yes',
    },
  },
  { name: 'Haulm', facts: { 'vehicle.maxTrailerWeight': '5,000 lb' } },
] satisfies { name: string; facts: FactsGiven }[];

const trailers = [
  {
    name: 'Heron 19',
    facts: {
      'trailer.dryWeight': '3,500–3,900 lb',
      'trailer.gvwr': '5,000 lb',
      'trailer.dryTongueWeight': '420 ± 40 lb',
      'trailer.brakes': 'electric',
      'trailer.propane': '0 lb',
    },
  },
  {
    name: 'Bittern 14',
    facts: {
      'trailer.dryWeight': '2,200 lb',
      'trailer.gvwr': '3,500 lb',
      'trailer.dryTongueWeight': '260 lb',
      'trailer.brakes': 'electric',
      'trailer.propane': '0 lb',
    },
  },
] satisfies { name: string; facts: FactsGiven }[];

const facts: FactsGiven = {
  'load.occupants': [
    { label: 'Driver', weight: '150–210 lb' },
    { label: 'Partner', weight: '160 lb' },
  ],
  'trailer.cargo': [{ label: 'A weekend', weight: '300–500 lb' }],
};
const asked = { facts, asOf, trailers, withRoom: false, program };

const chanceIn = (hits: readonly Uint32Array[], at: number): readonly number[] =>
  hits.map((all) => (all[at] ?? 0) / draws);

test('the chances of every pair are those that are drawn of it by itself', () => {
  const hits = chancing(asked, { draws, seed: 7 })(vehicles);
  let moved = 0;
  vehicles.forEach((vehicle, row) => {
    trailers.forEach((trailer, column) => {
      const found = chanceIn(hits, row * trailers.length + column);
      const pair = { ...facts, ...vehicle.facts, ...trailer.facts };
      const alone = spread(topic, { facts: pair, asOf }, { draws, seed: 8 }).outcomes;
      expect(found.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      levels.forEach((level, i) => {
        const wanted = alone[topic.outcomes[level].id]?.chance ?? 0;
        // Two samples of so many draws lie this far apart once in a million tries.
        const apart = 5 * Math.sqrt((2 * Math.max(wanted * (1 - wanted), 1 / draws)) / draws);
        expect(
          Math.abs((found[i] ?? 0) - wanted),
          `${vehicle.name}, ${trailer.name}: ${level}`,
        ).toBeLessThan(apart);
        if (wanted > 0.02 && wanted < 0.98) moved += 1;
      });
    });
  });
  expect(moved).toBeGreaterThan(1);
});

test('a weight that is even over a range is over its rating as often as the range is', () => {
  const even = {
    ...asked,
    facts: { 'trailer.cargo': [{ label: 'Nothing', weight: '0 lb' }] },
    trailers: [
      {
        name: 'Even',
        facts: {
          'trailer.dryWeight': '4,000–5,000 lb',
          'trailer.gvwr': '9,000 lb',
          'trailer.propane': '0 lb',
        },
      },
    ],
  };
  const rated = [{ name: 'Rated', facts: { 'vehicle.maxTrailerWeight': '4,300 lb' } }];
  const [stop = 0] = chanceIn(chancing(even, { draws, seed: 3 })(rated), 0).slice(-1);
  // 700 of 1,000 lb lie above 4,300 lb.
  expect(levels.at(-1)).toBe('stop');
  expect(Math.abs(stop - 0.7)).toBeLessThan(4 * Math.sqrt((0.7 * 0.3) / draws));
});

test('what is drawn of a vehicle hangs on no other, and another seed draws otherwise', () => {
  const whole = chancing(asked, { draws, seed: 7 })(vehicles);
  const [first, second] = vehicles;
  if (!first || !second) throw new Error('There are no two vehicles.');
  const alone = chancing(asked, { draws, seed: 7 })([second]);
  // Of the second nearly every draw comes out alike.
  const other = chancing(asked, { draws, seed: 9 })([first]);
  for (const column of trailers.keys()) {
    expect(chanceIn(alone, column)).toEqual(chanceIn(whole, trailers.length + column));
  }
  const seen = trailers.map((_, column) => chanceIn(other, column));
  expect(seen).not.toEqual(trailers.map((_, column) => chanceIn(whole, column)));
});

test('without a range there is one outcome, and it is that of the answer', () => {
  const exact = {
    ...asked,
    facts: { 'load.occupants': [{ weight: '300 lb' }] },
    trailers: trailers.slice(1),
  };
  const rated = [
    { name: 'Rated', facts: { ...vehicles[1]?.facts, 'vehicle.placardPayload': '1,150 lb' } },
  ];
  const found = chanceIn(chancing(exact, { draws, seed: 1 })(rated), 0);
  const pair = { ...exact.facts, ...rated[0]?.facts, ...exact.trailers[0]?.facts };
  const { outcome } = answerNow(topic, { facts: pair, asOf });
  const wanted = levels.map((level) => Number(topic.outcomes[level].id === outcome));
  expect(found).toEqual(wanted);
});
