import { answerNow, bodyRepair } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven) => answerNow(bodyRepair, { facts, asOf: '2026-11-01' });
const levelOf = (facts: FactsGiven, finding: string) =>
  judge(facts).findings.find(({ id }) => id === finding)?.level;

/**
 * What a household pays, year by year, as an account book would have it (plain sums, common
 * practice): the repair or the deductible at once, the premium each year.
 */
function paidOver(years: number, premium: number, raise: number, atOnce: number): number {
  return Array.from({ length: years }, () => premium * (1 + raise)).reduce((a, b) => a + b, atOnce);
}

describe('break-even against an account book kept year by year', () => {
  test.each([
    [1_000, 1_200, 0.3, 3],
    [500, 2_400, 0.15, 5],
    [250, 900, 0.4, 4],
  ])('deductible %d, premium %d, raise %f, %d years', (deductible, premium, raise, years) => {
    const { values } = judge({
      'policy.deductible': `${deductible} USD`,
      'policy.premium': `${premium} USD/yr`,
      'policy.raise': `${raise * 100} %`,
      'policy.years': `${years} yr`,
    });
    const breakEven = values['breakEven.low'].lo;
    const claiming = paidOver(years, premium, raise, deductible);
    const paying = paidOver(years, premium, 0, breakEven);
    expect(paying).toBeCloseTo(claiming, 6);
  });
});

/** A repair of known parts as a product of vectors, by mathjs. */
test('hours and parts of five zones as a scalar product', () => {
  const counts = [1, 2, 1, 3, 4];
  const { values } = judge({
    'wall.built': 'riveted-segments',
    'segments.front': String(counts[0]),
    'segments.side': String(counts[1]),
    'segments.rear': String(counts[2]),
    'segments.roof': String(counts[3]),
    'segments.corner': String(counts[4]),
    'shop.rate': '125 USD/h',
    'water.signs': 'none-seen',
  });
  const low = evaluate('dot(n, [10, 5, 7, 8, 1.5]) * 125 + dot(n, [300, 120, 200, 250, 40])', {
    n: counts,
  });
  const high = evaluate('dot(n, [20, 10, 14, 20, 3]) * 125 + dot(n, [1200, 400, 700, 900, 120])', {
    n: counts,
  });
  expect(values['repair.low'].lo).toBeCloseTo(low, 6);
  expect(values['repair.high'].hi).toBeCloseTo(high, 6);
  expect(values['cost.high'].hi).toBeCloseTo(high * 1.1, 6);
});

/** The total-loss formula of many states (from memory): repair + salvage against the value before. */
test.each([
  [8_000, 2_500],
  [9_000, 2_500],
  [9_500, 1_000],
])('a quote of %d with a salvage of %d against a value of 11,000', (quote, salvage) => {
  const total = quote + salvage > 11_000;
  const facts = {
    'shop.quote': `${quote} USD`,
    'water.signs': 'none-seen',
    'rig.value': '11,000 USD',
    'rig.salvage': `${salvage} USD`,
  };
  const level = levelOf(facts, 'write-off');
  if (total) expect(level).toBe('stop');
  else expect(level).not.toBe('stop');
});

/** Wood Handbook, Forest Products Laboratory (from memory): below 20 % of moisture wood does not decay. */
test.each([
  ['15 %', 'ok'],
  ['18 %', 'care'],
  ['16 %', 'ok'],
  ['20 %', 'care'],
  ['20.1 %', 'stop'],
  ['30 %', 'stop'],
])('wood at %s is %s to be closed up', (moisture, state) => {
  expect(levelOf({ 'wood.moisture': moisture }, 'damp')).toBe(state);
});
