import { tires } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const runs = { numRuns: 60, seed };
const judge = (facts: FactsGiven) => answerNow(tires, { facts, asOf: '2026-11-01' });
const order = ['will-do', 'will-do-with-care', 'cannot-say', 'will-not-do'];
const rank = (facts: FactsGiven): number => order.indexOf(judge(facts).outcome);

const trailer = (lb: number, more: FactsGiven = {}): FactsGiven => ({
  'tire.place': 'trailer',
  'tire.kind': 'special-trailer',
  'tire.loadIndex': '107',
  'trailer.axles': '2',
  'scale.onAxles': `${lb} lb`,
  ...more,
});
const load = fc.integer({ min: 500, max: 12_000 });
const psi = fc.integer({ min: 20, max: 100 });
/** A maker's table as printed, or with rows that a tired hand copied out of order. */
const table = fc
  .array(fc.tuple(fc.integer({ min: 20, max: 100 }), fc.integer({ min: 500, max: 3000 })), {
    minLength: 1,
    maxLength: 6,
  })
  .map((rows) => rows.map(([p, lb]) => ({ pressure: `${p} psi`, load: `${lb} lb` })));

test('what a tire may carry never falls as its pressure rises', () => {
  fc.assert(
    fc.property(table, psi, fc.integer({ min: 1, max: 40 }), (rows, low, more) => {
      const at = (p: number) =>
        judge(
          trailer(4000, {
            'tire.table': rows,
            'tire.maxPressure': '80 psi',
            'tire.pressure': `${p} psi`,
          }),
        ).values['pressure.allows'].lo;
      expect(at(low + more)).toBeGreaterThanOrEqual(at(low));
    }),
    runs,
  );
});

test('a higher load index never carries less, and dual is asked for by itself', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 124 }), (index) => {
      const at = (n: number) =>
        judge({ 'tire.place': 'trailer', 'tire.kind': 'light-truck', 'tire.loadIndex': `${n}` })
          .values['tire.capacity'].lo;
      expect(at(index + 1)).toBeGreaterThan(at(index));
      const dual = judge({
        'tire.place': 'rear',
        'tire.kind': 'light-truck',
        'vehicle.dualRearWheels': 'yes',
        'tire.loadIndex': `${index}`,
      });
      expect(dual.values['tire.capacity'].hi).toBe(Infinity);
      expect(['cannot-say', 'will-not-do']).toContain(dual.outcome);
    }),
    runs,
  );
});

test('more load never makes tires do better', () => {
  fc.assert(
    fc.property(load, fc.integer({ min: 1, max: 4000 }), (lb, more) => {
      expect(rank(trailer(lb + more))).toBeGreaterThanOrEqual(rank(trailer(lb)));
    }),
    runs,
  );
});

test('an older date code never makes tires do better', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 25 }), fc.integer({ min: 1, max: 52 }), (year, week) => {
      const at = (y: number) =>
        rank(trailer(3000, { 'tire.codeYear': `${y}`, 'tire.codeWeek': `${week}` }));
      expect(at(Math.max(0, year - 1))).toBeGreaterThanOrEqual(at(year));
    }),
    runs,
  );
});

test('the fullest wheel is never under the mean of what was weighed', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 200, max: 3000 }), { minLength: 1, maxLength: 6 }),
      (weights) => {
        const wheels = weights.map((lb) => ({ weight: `${lb} lb` }));
        const { values } = judge(
          trailer(
            weights.reduce((a, b) => a + b),
            { 'scale.wheels': wheels },
          ),
        );
        const mean = weights.reduce((a, b) => a + b) / weights.length;
        expect(values['tire.load'].lo).toBeGreaterThanOrEqual(mean - 1e-6);
        expect(values['tire.load'].lo).toBeGreaterThanOrEqual(Math.max(...weights) - 1e-6);
      },
    ),
    runs,
  );
});

test('without index and sidewall no load is ever said to be carried', () => {
  fc.assert(
    fc.property(load, (lb) => {
      const { 'tire.loadIndex': _, ...unread } = trailer(lb);
      expect(['cannot-say', 'will-not-do']).toContain(judge(unread).outcome);
    }),
    runs,
  );
});

test('pounds or kilograms, psi or kilopascals, the verdict is the same', () => {
  fc.assert(
    fc.property(load, psi, (lb, p) => {
      const us = trailer(lb, { 'tire.maxPressure': '80 psi', 'tire.pressure': `${p} psi` });
      const kg = lb * 0.45359237;
      const kPa = p * 6.894757293168361;
      const metric = {
        ...us,
        'scale.onAxles': { lo: kg, hi: kg, unit: 'kg' },
        'tire.pressure': { lo: kPa, hi: kPa, unit: 'kPa' },
      };
      expect(judge(metric).outcome).toBe(judge(us).outcome);
    }),
    runs,
  );
});
