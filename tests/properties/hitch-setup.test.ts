import { hitchSetup } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(hitchSetup, { facts, asOf: '2026-11-01' });
const level = (facts: FactsGiven, id: string) =>
  judge(facts).findings.find((finding) => finding.id === id)?.level;
const quarters = (min: number, max: number) =>
  fc.integer({ min: min * 4, max: max * 4 }).map((n) => n / 4);

const heights = fc.record({
  coupler: quarters(12, 24),
  receiver: quarters(12, 28),
  ball: quarters(2, 4),
});
const told = (n: { coupler: number; receiver: number; ball: number }): FactsGiven => ({
  'trailer.couplerHeight': `${n.coupler} in`,
  'hitch.receiverHeightLoaded': `${n.receiver} in`,
  'hitch.ballHeight': `${n.ball} in`,
});

test('the mount that is reckoned stands the trailer level, and one of half an inch less still will do', () => {
  fc.assert(
    fc.property(heights, (n) => {
      const { values } = judge(told(n));
      for (const name of ['mount.needed', 'mount.least'] as const) {
        const facts = { ...told(n), 'hitch.mountRise': `${values[name].lo} in` };
        expect([level(facts, 'nose-high'), level(facts, 'nose-low')]).toEqual(['ok', 'ok']);
      }
    }),
    { numRuns: 100, seed },
  );
});

test('any rise above level is a sway caution, however small', () => {
  fc.assert(
    fc.property(heights, quarters(0.25, 6), (n, more) => {
      const needed = judge(told(n)).values['mount.needed'].lo;
      const facts = { ...told(n), 'hitch.mountRise': `${needed + more} in` };
      expect(level(facts, 'nose-high')).toBe('care');
    }),
    { numRuns: 100, seed },
  );
});

test('a heavier tongue never asks for more drop', () => {
  const rig = (tongue: number): FactsGiven => ({
    'trailer.couplerHeight': '18 in',
    'hitch.receiverHeightEmpty': '24 in',
    'hitch.ballHeight': '3 in',
    'vehicle.wheelbase': '130 in',
    'vehicle.overhang': '45 in',
    'vehicle.springFront': '900 lb/in',
    'vehicle.springRear': '700 lb/in',
    'trailer.measuredTongueWeight': `${tongue} lb`,
  });
  const weight = fc.integer({ min: 0, max: 1200 });
  fc.assert(
    fc.property(weight, fc.integer({ min: 1, max: 400 }), (tongue, more) => {
      const [light, heavy] = [judge(rig(tongue)), judge(rig(tongue + more))];
      const needed = (answer: typeof light) => answer.values['mount.needed'].lo;
      expect(needed(heavy)).toBeGreaterThan(needed(light));
    }),
    { numRuns: 100, seed },
  );
});

test('without one of the three heights it never will do', () => {
  fc.assert(
    fc.property(heights, fc.integer({ min: 0, max: 2 }), (n, which) => {
      const facts = told(n);
      const left = Object.fromEntries(Object.entries(facts).filter((_, i) => i !== which));
      expect(judge(left).outcome).not.toMatch(/^will-do/);
    }),
    { numRuns: 60, seed },
  );
});

test('bars: below their band care, above it stop, inside neither', () => {
  const pounds = fc.integer({ min: 100, max: 1600 });
  fc.assert(
    fc.property(pounds, pounds, fc.integer({ min: 0, max: 1600 }), (p, q, tongue) => {
      const [least, most] = [Math.min(p, q), Math.max(p, q)];
      const answer = judge({
        ...told({ coupler: 18, receiver: 20, ball: 2.5 }),
        'hitch.barsLeast': `${least} lb`,
        'hitch.barsMost': `${most} lb`,
        'trailer.measuredTongueWeight': `${tongue} lb`,
      });
      const strong = answer.findings.find(({ id }) => id === 'bars-strong')?.level;
      expect(strong).toBe(tongue < least ? 'care' : 'ok');
      expect(answer.outcome === 'must-not-roll').toBe(tongue > most);
    }),
    { numRuns: 100, seed },
  );
});

test('inches or millimeters, the verdict is the same', () => {
  const mm = (inches: number) => ({ lo: inches * 25.4, hi: inches * 25.4, unit: 'mm' });
  fc.assert(
    fc.property(heights, quarters(-8, 4), (n, rise) => {
      const us = judge({ ...told(n), 'hitch.mountRise': `${rise} in` });
      const metric = judge({
        'trailer.couplerHeight': mm(n.coupler),
        'hitch.receiverHeightLoaded': mm(n.receiver),
        'hitch.ballHeight': mm(n.ball),
        'hitch.mountRise': mm(rise),
      });
      expect(metric.outcome).toBe(us.outcome);
    }),
    { numRuns: 100, seed },
  );
});
