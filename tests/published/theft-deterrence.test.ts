import { answerNow, theftDeterrence } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const valuesOf = (facts: FactsGiven) =>
  answerNow(theftDeterrence, { facts, asOf: '2026-11-01' }).values;

/**
 * A battery emptied hour by hour (balance of charge, published), units by mathjs: another way to the
 * days than the quotient the rule takes.
 */
describe('days of a tracker, against a battery emptied hour by hour', () => {
  test.each([
    [2_000, 0.3, 1.2, 24],
    [10_000, 0.05, 0.9, 4],
    [500, 2, 0, 0],
    [6_600, 0.12, 2.5, 48],
  ])('%d mAh, %f mA asleep, %f mAh a report, %d a day', (battery, asleep, report, reports) => {
    let left = unit(battery * 0.8, 'mA hour').toNumber('A s');
    const hourly = unit(asleep, 'mA').toNumber('A') * 3600;
    const each = unit((report * reports) / 24, 'mA hour').toNumber('A s');
    let hours = 0;
    while (left >= hourly + each) {
      left -= hourly + each;
      hours += 1;
    }
    hours += left / (hourly + each);
    const lasts = valuesOf({
      'tracker.battery': `${battery} mAh`,
      'tracker.sleeping': `${asleep} mA`,
      'tracker.report': `${report} mAh`,
      'tracker.reports': String(reports),
    })['tracker.lasts'].lo;
    expect(lasts).toBeCloseTo(hours / 24, 4);
  });
});

/**
 * Agreed value, actual cash value and a gap cover, as insurance textbooks tell them apart (common
 * practice): the loan's remainder is what the gap cover would pay.
 */
test.each([
  ['agreed', 24_000, 31_000, 500, 20_000, 23_500, 0],
  ['agreed', 24_000, 31_000, 500, 26_000, 23_500, 2_500],
  ['actual', 24_000, 31_000, 500, 40_000, 30_500, 9_500],
  ['nothing', 24_000, 31_000, 500, 12_000, 0, 12_000],
])(
  '%s: agreed %d, worth %d, deductible %d, owed %d',
  (basis, agreed, worth, less, owed, pays, gap) => {
    const values = valuesOf({
      'policy.basis': basis,
      'policy.agreedValue': `${agreed} USD`,
      'rig.value': `${worth} USD`,
      'policy.deductible': `${less} USD`,
      'loan.owed': `${owed} USD`,
    });
    expect(values['policy.pays'].lo).toBe(pays);
    expect(values['loan.gap'].lo).toBe(gap);
  },
);
