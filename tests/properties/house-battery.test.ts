import { type Answer, answerTraced, houseBattery } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const settings = { numRuns: 30, seed };
const judge = (facts: FactsGiven): Answer<keyof typeof houseBattery.formulas & string> =>
  answerTraced(houseBattery, { facts, asOf: '2026-11-01' });

const chemistries = ['flooded', 'agm', 'gel', 'lifepo4'] as const;
const chemistry = fc.constantFrom(...chemistries);
const volts = fc.integer({ min: 1000, max: 1400 }).map((each) => each / 100);
const hour = fc.integer({ min: 0, max: 96 }).map((each) => each / 4);
const load = fc.record({
  power: fc.integer({ min: 1, max: 300 }).map((each) => `${each} W`),
  from: hour.map((each) => `${each} h`),
  to: hour.map((each) => `${each} h`),
});
const loads = fc.array(load, { maxLength: 4 });
const sun = fc.integer({ min: 0, max: 6 });

type Day = {
  readonly kind: string;
  readonly rows: readonly (typeof load extends fc.Arbitrary<infer R> ? R : never)[];
  readonly sunHours: number;
};
const days: fc.Arbitrary<Day> = fc.record({ kind: chemistry, rows: loads, sunHours: sun });

const factsOf = ({ kind, rows, sunHours }: Day): FactsGiven => ({
  'battery.chemistry': kind,
  'battery.capacity': '200 Ah',
  'loads.dc': rows,
  'solar.power': '200 W',
  'solar.peakSunHours': `${sunHours} h`,
});

const rank = { 'not-asked': 0, ok: 1, care: 2, if: 3, unknown: 4, stop: 5 } as const;
const stateOf = ({ limits }: Answer, id: string) =>
  rank[limits.find((limit) => limit.id === id)?.state ?? 'not-asked'];

describe('more load never lengthens a battery’s day', () => {
  test('one load more: never more charge, never more days, never a better state', () => {
    fc.assert(
      fc.property(days, load, (plain, more) => {
        const before = judge(factsOf(plain));
        const after = judge(factsOf({ ...plain, rows: [...plain.rows, more] }));
        for (const name of ['day.lowest', 'day.end', 'battery.days'] as const) {
          expect(after.values[name].lo).toBeLessThanOrEqual(before.values[name].lo + 1e-6);
          expect(after.values[name].hi).toBeLessThanOrEqual(before.values[name].hi + 1e-6);
        }
        expect(stateOf(after, 'day')).toBeGreaterThanOrEqual(stateOf(before, 'day'));
      }),
      settings,
    );
  });

  test('a larger steady load never runs longer', () => {
    const watts = fc.integer({ min: 1, max: 3000 });
    fc.assert(
      fc.property(chemistry, watts, watts, (kind, a, b) => {
        const run = (power: number) =>
          judge({
            'battery.chemistry': kind,
            'battery.capacity': '100 Ah',
            'steady.power': `${power} W`,
          }).values['steady.hoursToStop'];
        const [small, large] = [run(Math.min(a, b)), run(Math.max(a, b))];
        expect(large.lo).toBeLessThanOrEqual(small.lo + 1e-6);
        expect(large.hi).toBeLessThanOrEqual(small.hi + 1e-6);
      }),
      settings,
    );
  });

  test('more sun never leaves less', () => {
    fc.assert(
      fc.property(days, sun, (plain, more) => {
        const before = judge(factsOf(plain)).values['day.lowest'];
        const brighter = { ...plain, sunHours: plain.sunHours + more };
        const after = judge(factsOf(brighter)).values['day.lowest'];
        expect(after.lo).toBeGreaterThanOrEqual(before.lo - 1e-6);
        expect(after.hi).toBeGreaterThanOrEqual(before.hi - 1e-6);
      }),
      settings,
    );
  });
});

describe('lower voltage never means more charge', () => {
  const states = ['at-rest', 'charging', 'under-load', 'unknown'];
  const reading = fc.record({
    kind: chemistry,
    state: fc.constantFrom(...states),
    rested: fc.integer({ min: 0, max: 24 }),
    temperature: fc.integer({ min: -20, max: 110 }),
  });

  test('whatever the chemistry, the state of reading and the cold', () => {
    fc.assert(
      fc.property(reading, volts, volts, ({ kind, state, rested, temperature }, a, b) => {
        const read = (voltage: number) =>
          judge({
            'battery.chemistry': kind,
            'battery.capacity': '100 Ah',
            'battery.reading': state,
            'battery.rested': `${rested} h`,
            'battery.temperature': `${temperature} °F`,
            'battery.voltage': `${voltage} V`,
          }).values['battery.stateOfCharge'];
        const [low, high] = [read(Math.min(a, b)), read(Math.max(a, b))];
        expect(low.lo).toBeLessThanOrEqual(high.lo + 1e-6);
        expect(low.hi).toBeLessThanOrEqual(high.hi + 1e-6);
      }),
      settings,
    );
  });

  test('a reading not at rest never tells more than the same one at rest', () => {
    fc.assert(
      fc.property(chemistry, volts, fc.constantFrom(...states), (kind, voltage, state) => {
        const read = (how: string) =>
          judge({
            'battery.chemistry': kind,
            'battery.capacity': '100 Ah',
            'battery.reading': how,
            'battery.rested': '24 h',
            'battery.voltage': `${voltage} V`,
          }).values['battery.stateOfCharge'];
        const [rested, other] = [read('at-rest'), read(state)];
        expect(other.lo).toBeLessThanOrEqual(rested.lo + 1e-6);
        expect(other.hi).toBeGreaterThanOrEqual(rested.hi - 1e-6);
      }),
      settings,
    );
  });

  test('each table falls as the battery empties, from full to empty', () => {
    for (const kind of chemistries) {
      const { series } = judge({ 'battery.chemistry': kind, 'battery.capacity': '100 Ah' });
      const curve = series.curve?.lines['curve.volts']?.ends.map(({ lo }) => lo) ?? [];
      expect(curve).toHaveLength(21);
      expect(curve.toSorted((a, b) => b - a)).toEqual(curve);
      expect(new Set(curve).size).toBe(21);
    }
  });
});

describe('ranges are sound', () => {
  test('capacity and sun anywhere within their ranges: the day stays within its own', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(days, share, share, (plain, i, j) => {
        const facts = factsOf(plain);
        const wide = judge({
          ...facts,
          'battery.capacity': '180–220 Ah',
          'solar.peakSunHours': '1–4 h',
        });
        const point = judge({
          ...facts,
          'battery.capacity': `${180 + 40 * i} Ah`,
          'solar.peakSunHours': `${1 + 3 * j} h`,
        });
        for (const name of ['day.lowest', 'day.end', 'day.deepest', 'day.taken'] as const) {
          expect(point.values[name].lo).toBeGreaterThanOrEqual(wide.values[name].lo - 1e-6);
          expect(point.values[name].hi).toBeLessThanOrEqual(wide.values[name].hi + 1e-6);
        }
      }),
      { ...settings, numRuns: 12 },
    );
  });

  test('two strings side by side double the ampere-hours, two in series double the volts', () => {
    fc.assert(
      fc.property(
        chemistry,
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 4 }),
        (kind, parallel, inSeries) => {
          const { values } = judge({
            'battery.chemistry': kind,
            'battery.capacity': '100 Ah',
            'bank.parallel': String(parallel),
            'bank.series': String(inSeries),
          });
          expect(values['bank.capacity'].lo).toBeCloseTo(100 * parallel, 9);
          expect(values['bank.volts'].lo).toBeCloseTo(12 * inSeries, 9);
        },
      ),
      settings,
    );
  });
});

describe('no dangerous combination is milder than stop', () => {
  const level = (facts: FactsGiven, id: string) =>
    judge(facts).findings.find((finding) => finding.id === id)?.level;

  test.each(['5 °F', '31.9 °F'])('charging LiFePO₄ at %s', (temperature) => {
    const cells: FactsGiven = {
      'battery.chemistry': 'lifepo4',
      'battery.temperature': temperature,
    };
    expect(level({ ...cells, 'charger.current': '10 A' }, 'cold-charge')).toBe('stop');
    expect(level({ ...cells, 'charging.spells': [{ current: '10 A' }] }, 'cold-charge')).toBe(
      'stop',
    );
    expect(level({ ...cells, 'solar.power': '100 W' }, 'cold-charge')).toBe('stop');
    expect(level(cells, 'cold-charge')).toBe('care');
    expect(
      level({ 'battery.temperature': temperature, 'charger.current': '10 A' }, 'cold-charge'),
    ).toBe('unknown');
  });

  test('at freezing itself charging is not forbidden', () => {
    const facts = {
      'battery.chemistry': 'lifepo4',
      'battery.temperature': '32 °F',
      'charger.current': '10 A',
    };
    expect(level(facts, 'cold-charge')).toBe('ok');
  });

  test('equalizing what its maker did not allow', () => {
    for (const kind of ['agm', 'gel', 'lifepo4']) {
      const facts = { 'battery.chemistry': kind, 'charge.equalize': 'yes' };
      expect(level(facts, 'equalize')).toBe('stop');
    }
    const allowed = {
      'battery.chemistry': 'lifepo4',
      'charge.equalize': 'yes',
      'charge.equalizeAllowed': 'yes',
    };
    expect(level(allowed, 'equalize')).toBe('stop');
  });

  test('a fuse larger than its wire, for every gauge', () => {
    for (const gauge of houseBattery.facts['wire.gauge'].options) {
      const { limits, values } = judge({
        'wire.gauge': gauge,
        'wire.fuse': '400 A',
        'wire.current': '1 A',
      });
      expect(values['wire.ampacity'].hi).toBeLessThan(400);
      expect(limits.find(({ id }) => id === 'fuse')?.state).toBe('stop');
    }
  });

  test('a gauge that nobody knows leaves the fuse unknown, never right', () => {
    const { limits } = judge({
      'wire.gauge': 'unknown',
      'wire.fuse': '30 A',
      'wire.current': '5 A',
    });
    expect(limits.find(({ id }) => id === 'fuse')?.state).toBe('unknown');
  });
});

test.each([
  [10.8, 'yes', 'stop'],
  [10.8, undefined, 'unknown'],
  [10.8, 'no', 'care'],
  [10.9, 'yes', 'ok'],
])(
  'a block at rest with %d V, charged full before: %s: a dead cell is %s',
  (volts, charged, wanted) => {
    const { findings } = judge({
      'battery.chemistry': 'flooded',
      'battery.voltage': `${volts} V`,
      'battery.reading': 'at-rest',
      'battery.rested': '12 h',
      ...(charged !== undefined && { 'battery.chargedBefore': charged }),
    });
    expect(findings.find(({ id }) => id === 'dead-cell')?.level).toBe(wanted);
  },
);

test('a lead battery is never full sooner than absorption takes, whatever the charger gives', () => {
  for (const amperes of [5, 20, 80, 300]) {
    for (const charge of [20, 50, 75, 90]) {
      const { values } = judge({
        'battery.chemistry': 'agm',
        'battery.capacity': '100 Ah',
        'monitor.stateOfCharge': `${charge} %`,
        'charger.current': `${amperes} A`,
      });
      const share = Math.min(1, (100 - charge) / 50);
      const { lo, hi } = values['recharge.hours'];
      expect(lo).toBeGreaterThanOrEqual(8 * share - 1e-6);
      expect(hi).toBeGreaterThanOrEqual(12 * share - 1e-6);
      expect(lo).toBeGreaterThanOrEqual(values['recharge.byCurrent'].lo - 1e-6);
    }
  }
});

test('watt-hours of a label are its ampere-hours times the volts its cells are reckoned with', () => {
  const labels = [
    ['lifepo4', 12.8, 1],
    ['agm', 12, 1],
    ['lifepo4', 12.8, 2],
  ] as const;
  for (const [chemistry, volts, blocks] of labels) {
    const { values } = judge({
      'battery.chemistry': chemistry,
      'battery.volts': `${12 * blocks} V`,
      'battery.energy': `${100 * volts * blocks} Wh`,
    });
    expect(values['battery.ampHours'].lo).toBeCloseTo(100, 6);
    expect(values['battery.ampHours'].hi).toBeCloseTo(100, 6);
  }
});
