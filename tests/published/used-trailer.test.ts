import { usedTrailer } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { sum } from 'simple-statistics';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(usedTrailer, { facts, asOf: '2026-11-01' });
const levelOf = (facts: FactsGiven, id: string) =>
  judge(facts).findings.find((each) => each.id === id)?.level;

/**
 * Published: 49 CFR 574.5, the identification number ends in the week and the year of making. The age
 * is held against the calendar of the machine; that a trailer's tire is done at six years is custom.
 */
test('a tire is as old as the calendar says', () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 25 }), fc.integer({ min: 1, max: 52 }), (year, week) => {
      const made = Date.UTC(2000 + year, 0, 1) + (week - 1) * 7 * 86_400_000;
      const years = (Date.UTC(2026, 10, 1) - made) / 86_400_000 / 365.2425;
      const { values } = judge({ 'tire.codeYear': String(year), 'tire.codeWeek': String(week) });
      expect(Math.abs(values['tire.age'].lo - years)).toBeLessThan(0.02);
    }),
    { numRuns: 200, seed },
  );
});

/** Common practice, no standard: one soft zone is a price, a second one ends it. */
test.each([
  ['0', 'ok'],
  ['1', 'care'],
  ['2', 'stop'],
])('%s soft zones: %s', (zones, level) => {
  expect(levelOf({ 'soft.zones': zones }, 'structure')).toBe(level);
});

/** Custom for the rail; the house's choice for a hanger alone: never sooner than a shop has looked. */
test.each<[FactsGiven, string]>([
  [{ 'frame.state': 'cracked' }, 'walk-away'],
  [{ 'frame.state': 'rust-through' }, 'walk-away'],
  [{ 'frame.state': 'hanger-cracked' }, 'cannot-say'],
  [{ 'frame.state': 'hanger-cracked', 'frame.railWhole': 'unknown' }, 'cannot-say'],
  [{ 'frame.state': 'hanger-cracked', 'frame.railWhole': 'no' }, 'walk-away'],
  [{ 'frame.state': 'hanger-cracked', 'frame.railWhole': 'yes' }, 'at-its-price'],
])('a frame of which is told %j: %s', (frame, outcome) => {
  const facts = {
    ...frame,
    ...{ 'soft.zones': '0', 'title.state': 'clean', 'gas.tested': 'holds' },
    ...{ 'electrics.tested': 'works', 'brakes.tested': 'work' },
  };
  expect(judge(facts).outcome).toBe(outcome);
});

/** The month that is stamped, against the calendar; the years it holds are from memory. */
test.each([
  ['2013', '4', 'care'],
  ['2014', '12', 'ok'],
])('cylinders made %s, month %s: %s', (year, month, level) => {
  const facts = {
    'cylinder.stampYear': year,
    'cylinder.stampMonth': month,
    'cylinder.dateKind': 'made',
  };
  expect(levelOf(facts, 'dates')).toBe(level);
});

/** From memory, after the Wood Handbook: wood over 20 % decays; at the edge is within it. */
test.each([
  ['20 %', 0],
  ['20.1 %', 1],
])('a spot of %s counts %d as wet', (moisture, count) => {
  expect(judge({ 'found.spots': [{ moisture }] }).values['wet.spots'].lo).toBe(count);
});

/** Bookkeeping, added by a general library: what is quoted comes on top, to the dollar. */
test('quotes are added to both ends of what must be spent', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 5000 }), { maxLength: 6 }), (quotes) => {
      const bare = judge({}).values['first.cost'];
      const { lo, hi } = judge({
        'found.spots': quotes.map((cost) => ({ cost: `${cost} USD` })),
      }).values['first.cost'];
      expect(lo - bare.lo).toBeCloseTo(sum(quotes), 6);
      expect(hi - bare.hi).toBeCloseTo(sum(quotes), 6);
    }),
    { numRuns: 50, seed },
  );
});

test('each of the four that end it ends it alone, whatever else is untold', () => {
  const four: readonly FactsGiven[] = [
    { 'frame.state': 'cracked' },
    { 'soft.zones': '2' },
    { 'title.state': 'branded' },
    { 'gas.tested': 'leaks', 'gas.sellerMends': 'no' },
  ];
  expect(four.map((facts) => judge(facts).outcome)).toEqual(four.map(() => 'walk-away'));
});
