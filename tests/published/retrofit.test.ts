import { retrofit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const valuesOf = (facts: FactsGiven) => answerNow(retrofit, { facts, asOf: '2026-11-01' }).values;

/**
 * A textbook problem of statics, its answers worked by hand (class: published, derived): a trailer of
 * 220 kg with its center 1.85 m behind the ball and its axle at 2.15 m presses on the ball with
 * 301.1 N; 540 kg more at 3.3 m lift it with 2,532.3 N, and the ball carries nothing when the 540 kg
 * stand at 2.272 m. g = 9.81 m/s².
 */
describe('an add-on behind the axle, as in a textbook of statics', () => {
  const g = 9.81;
  const asNewton = (pounds: number) => unit(pounds, 'lbm').toNumber('kg') * g;
  const trailer = {
    'trailer.dryWeight': '220 kg',
    'trailer.measuredTongueWeight': `${301.1 / g} kg`,
    'trailer.ballToAxle': '2.15 m',
    'addon.weight': '540 kg',
  };

  test('540 kg behind the axle lift the ball with 2,532.3 N', () => {
    const found = valuesOf({ ...trailer, 'addon.ahead': '-1.15 m' });
    expect(asNewton(found['tongue.after'].lo)).toBeCloseTo(-2532.3, 0);
    expect(found['tongue.after'].hi).toBe(found['tongue.after'].lo);
  });

  test('at 2.272 m from the ball they leave just nothing on it', () => {
    const found = valuesOf({ ...trailer, 'addon.ahead': `${2.15 - 2.272} m` });
    expect(Math.abs(asNewton(found['tongue.after'].lo))).toBeLessThan(2);
  });

  test('what the ball loses stands on the axle: forces add up', () => {
    const found = valuesOf({ ...trailer, 'addon.ahead': '-1.15 m' });
    const sum = found['tongue.after'].lo + found['axles.after'].lo;
    expect(sum).toBeCloseTo(unit(760, 'kg').toNumber('lbm'), 6);
  });
});

/**
 * Custom of the trade (class: common practice): a rack of 200 lb 150 in behind the axle of a 5,000 lb
 * trailer whose ball is 200 in ahead takes 150 lb off the ball.
 */
test('200 lb at 150 in behind, with the ball 200 in ahead, take 150 lb off the ball', () => {
  const found = valuesOf({
    'addon.weight': '200 lb',
    'addon.ahead': '-150 in',
    'trailer.ballToAxle': '200 in',
  });
  expect(found['added.tongue']).toMatchObject({ lo: -150, hi: -150 });
});

/**
 * A worked example of an electrical training text (class: published): 16 AWG at 4.99 Ω a thousand
 * feet, 100 ft each way, 4 A: 3.992 V, printed as 4.0 V.
 */
test('4 A over 100 ft of 16 AWG lose 3.992 V', () => {
  const found = valuesOf({
    'addon.power': '48 W',
    'addon.runsOn': 'twelve-volt',
    'battery.volts': '12 V',
    'wire.gauge': '16',
    'wire.length': '100 ft',
  });
  expect(found['chain.current'].lo).toBeCloseTo(4, 9);
  expect(found['chain.drop'].lo).toBeCloseTo(3.992, 6);
});

/** The bars as tow fit's own tests have them: moments about the ball and the axle close (statics). */
test('with bars in use, ball, bars and axles still carry what there is', () => {
  const rig = {
    'trailer.dryWeight': '5,000 lb',
    'trailer.measuredTongueWeight': '600 lb',
    'trailer.ballToAxle': '16 ft',
    'vehicle.overhang': '48 in',
    'hitch.distribution': 'yes',
    'vehicle.distributionAllowed': 'yes',
    'hitch.restored': '75 %',
    'addon.weight': '200 lb',
    'addon.ahead': '-8 ft',
  };
  const found = valuesOf(rig);
  const tongue = 600 - (200 * 8) / 16;
  const ontoTrailer = (0.75 * tongue * 4) / (16 + 4);
  expect(found['axles.after'].lo).toBeCloseTo(5200 - tongue + ontoTrailer, 6);
});
