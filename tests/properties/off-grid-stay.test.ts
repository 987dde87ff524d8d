import { coldWeather, gasSupply, offGridStay } from '@tarebook/rules';
import { answerNow, type FactsGiven, type Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const numRuns = 25;
const judge = (facts: FactsGiven) => answerNow(offGridStay, { facts, asOf: '2026-07-10' });
const order = [
  'lasts-the-stay',
  'lasts-with-care',
  'lasts-the-stay-if',
  'cannot-say',
  'does-not-last',
];
const worse = (facts: FactsGiven) => order.indexOf(judge(facts).outcome);

type Stay = {
  readonly fresh: number;
  readonly gray: number;
  readonly daily: number;
  readonly share: number;
  readonly drawn: number;
  readonly gas: number;
  readonly days: number;
};
const stays = fc.record({
  fresh: fc.integer({ min: 5, max: 100 }),
  gray: fc.integer({ min: 5, max: 100 }),
  daily: fc.integer({ min: 1, max: 30 }),
  share: fc.integer({ min: 1, max: 100 }),
  drawn: fc.integer({ min: 0, max: 120 }),
  gas: fc.integer({ min: 1, max: 20 }),
  days: fc.integer({ min: 1, max: 14 }),
});
const told = (stay: Stay): FactsGiven => ({
  'water.freshTank': `${stay.fresh} gal`,
  'water.grayTank': `${stay.gray} gal`,
  'water.daily': `${stay.daily} gal/d`,
  'water.grayShare': `${stay.share} %`,
  'battery.chemistry': 'lifepo4',
  'battery.capacity': '200 Ah',
  'battery.dayDrawn': `${stay.drawn} Ah`,
  'cylinder.fill': `${stay.gas} lb`,
  'gas.dayUsed': '2 lb',
  'stay.days': `${stay.days} d`,
});

test('the longest stay is that of the first thing that ends, never longer than any', () => {
  fc.assert(
    fc.property(stays, (stay) => {
      const { values } = judge(told(stay));
      const ends = ['fresh.days', 'gray.days', 'battery.lasts', 'gas.lasts'] as const;
      expect(values['stay.longest'].lo).toBeCloseTo(Math.min(...ends.map((e) => values[e].lo)), 6);
    }),
    { numRuns, seed },
  );
});

test('using more, staying longer or a smaller tank never makes it better', () => {
  fc.assert(
    fc.property(stays, fc.integer({ min: 1, max: 10 }), (stay, more) => {
      const now = worse(told(stay));
      for (const change of [
        { daily: stay.daily + more },
        { days: stay.days + more },
        { drawn: stay.drawn + more },
        { share: Math.min(100, stay.share + more) },
        { fresh: Math.max(1, stay.fresh - more) },
        { gray: Math.max(1, stay.gray - more) },
      ]) {
        expect(worse(told({ ...stay, ...change })), JSON.stringify(change)).toBeGreaterThanOrEqual(
          now,
        );
      }
    }),
    { numRuns, seed },
  );
});

test('what is proposed never shortens a stay, and stretches only what ends first', () => {
  fc.assert(
    fc.property(stays, (stay) => {
      const { values, rankings } = judge(told(stay));
      const gained = [
        'stretch.saveWater',
        'stretch.carryWater',
        'stretch.carryGray',
        'stretch.saveBattery',
        'stretch.charge',
        'stretch.carryGas',
      ] as const;
      for (const each of gained) expect(values[each].lo).toBeGreaterThanOrEqual(-1e-9);
      const first = rankings.find(({ id }) => id === 'runs-out')?.entries[0];
      expect(first?.value.lo).toBeCloseTo(values['stay.longest'].lo, 6);
      if (first?.id === 'gas') expect(values['stretch.saveWater'].lo).toBeCloseTo(0, 6);
      if (first?.id === 'fresh') expect(values['stretch.carryGas'].lo).toBeCloseTo(0, 6);
    }),
    { numRuns, seed },
  );
});

test('water only moves: what is aboard at the end came out of the fresh tank, or is less', () => {
  fc.assert(
    fc.property(stays, (stay) => {
      const needed = stay.daily * stay.days;
      fc.pre(needed <= stay.fresh);
      const { values } = judge({ ...told(stay), 'trailer.dryWeight': '4,000 lb' });
      expect(values['trailer.leaving'].hi).toBeLessThanOrEqual(
        values['trailer.arriving'].lo + 1e-6,
      );
    }),
    { numRuns, seed },
  );
});

test('a use nobody knows, or a tank nobody knows, never lasts the stay', () => {
  fc.assert(
    fc.property(
      stays,
      fc.constantFrom(
        'water.daily',
        'water.freshTank',
        'water.grayTank',
        'battery.dayDrawn',
        'battery.capacity',
        'gas.dayUsed',
        'cylinder.fill',
        'stay.days',
      ),
      (stay, fact) => {
        const { outcome } = judge({ ...told(stay), [fact]: 'unknown' });
        expect(['cannot-say', 'does-not-last']).toContain(outcome);
      },
    ),
    { numRuns: 40, seed },
  );
});

test('gallons or liters, pounds or kilograms: the verdict is the same', () => {
  fc.assert(
    fc.property(stays, (stay) => {
      const liters = (gallons: number) => ({
        lo: gallons * 3.785411784,
        hi: gallons * 3.785411784,
        unit: 'L',
      });
      const metric: FactsGiven = {
        ...told(stay),
        'water.freshTank': liters(stay.fresh),
        'water.grayTank': liters(stay.gray),
        'water.daily': { ...liters(stay.daily), unit: 'L/d' },
      };
      expect(judge(metric).outcome).toBe(judge(told(stay)).outcome);
    }),
    { numRuns, seed },
  );
});

const gasStays = fc.record(
  {
    'stay.days': fc.constantFrom('1 d', '3 d', '6 d'),
    'trip.nights': fc.constantFrom('1', '4'),
    'gas.dayUsed': fc.constantFrom('1 lb', '3–5 lb'),
    'furnace.input': fc.constantFrom('20,000 Btu/h', '30,000 Btu/h'),
    'furnace.duty': fc.constantFrom('25 %', '80 %'),
    'furnace.hours': fc.constantFrom('8 h', '14 h'),
    'outside.temperature': fc.constantFrom('20 °F', '45 °F'),
    'water.state': fc.constantFrom('in-use', 'drained'),
    'cylinder.spare': fc.constantFrom('0', '1'),
  },
  { requiredKeys: [] },
);

const asked: readonly Topic[] = [offGridStay, gasSupply, coldWeather];

test('the gas of a stay is judged as in gas supply and in the cold, by the same facts', () => {
  fc.assert(
    fc.property(gasStays, fc.boolean(), (some, byNights) => {
      const length = byNights ? { 'trip.nights': '2' } : { 'stay.days': '2 d' };
      const facts = { ...length, ...some, 'cylinder.fill': '20 lb' };
      const [here, ...there] = asked.map((topic) => {
        const { limits, values } = answerNow(topic, { facts, asOf: '2026-07-10' });
        const gas = limits.find(({ id }) => id === 'gas');
        return { state: gas?.state, used: gas?.used, needed: values['gas.neededPounds'] };
      });
      for (const each of there) expect(each).toEqual(here);
    }),
    { numRuns: 60, seed },
  );
});
