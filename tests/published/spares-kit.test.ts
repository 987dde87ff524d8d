import { answerNow, sparesKit } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven) => answerNow(sparesKit, { facts, asOf: '2026-11-01' });
const pounds = (newtons: number) => unit(newtons, 'N').toNumber('lbf');
const newtons = (lb: number) => unit(lb, 'lbf').toNumber('N');

/**
 * Moment balance (Giancoli, Physics, 7th ed., statics problem; published with its answer): a trailer
 * of 2,500 kg, its center 2.5 m ahead of the tires and 5.5 m behind the support, has 7,656 N on the
 * support and 16,844 N on its tires (g = 9.8 m/s²). Here the trailer itself weighs next to nothing
 * and all of the 2,500 kg are one thing in the kit, 2.5 m ahead of the axle.
 */
describe('the moment of a kit, by a textbook problem (published)', () => {
  const meters = (m: number) => `${unit(m, 'm').toNumber('ft')} ft`;
  const facts: FactsGiven = {
    'trailer.axles': '1',
    'trailer.dryWeight': '0 lb',
    'trailer.measuredTongueWeight': '0 lb',
    'trailer.ballToAxle': meters(8),
    'kit.place': 'trailer',
    'kit.ahead': meters(2.5),
    'lift.kind': 'none',
    'trailer.brakeKind': 'none',
    'trip.remoteness': 'near-help',
    'trip.days': '1 d',
  };
  const listed = judge(facts).values['kit.weight'].lo;
  const { values } = judge({
    ...facts,
    'kit.added': [{ weight: `${pounds(2500 * 9.8) / 10 - listed} lb` }],
  });

  // The kit takes a tenth of it, since one thing of it may weigh no more than 2,000 lb.
  test('7,656 N on the ball', () => {
    expect(newtons(values['kit.onBall'].lo) * 10).toBeCloseTo(7656.25, 1);
  });

  test('16,844 N on the axle', () => {
    expect(newtons(values['kit.onAxles'].lo) * 10).toBeCloseTo(16_843.75, 1);
  });

  test('and half of that, a twentieth more for the heavier side (house), is what a jack lifts', () => {
    expect(newtons(values['side.load'].lo) * 10).toBeCloseTo((16_843.75 / 2) * 1.05, 1);
  });
});

/**
 * Negative tongue weight (textbook problem, derived): 220 kg at 1.85 m from the ball, axle at 2.15 m,
 * give 301.1 N; 540 kg more at 3.3 m give −2,532.3 N in all. The 540 kg behind the axle stand for the
 * kit, a tenth of them and of the trailer.
 */
test('a kit far behind the axle lifts the ball, by a textbook problem (derived)', () => {
  const g = 9.81;
  const first = evaluate(`220 * ${g} * (2.15 - 1.85) / 2.15`);
  expect(first).toBeCloseTo(301.1, 0);
  const ft = (m: number) => `${unit(m, 'm').toNumber('ft')} ft`;
  const facts: FactsGiven = {
    'trailer.axles': '1',
    'trailer.dryWeight': `${pounds((220 * g) / 10)} lb`,
    'trailer.measuredTongueWeight': `${pounds(first / 10)} lb`,
    'trailer.ballToAxle': ft(2.15),
    'kit.place': 'trailer',
    'kit.ahead': ft(2.15 - 3.3),
    'lift.kind': 'none',
    'trailer.brakeKind': 'none',
    'trip.remoteness': 'near-help',
    'trip.days': '1 d',
  };
  const listed = judge(facts).values['kit.weight'].lo;
  const { values } = judge({
    ...facts,
    'kit.added': [{ weight: `${pounds((540 * g) / 10) - listed} lb` }],
  });
  expect(newtons(values['stowed.tongue'].lo) * 10).toBeCloseTo(-2532.3, 0);
});

/**
 * 49 CFR 571.110 S4.3.5, the label’s own illustration (published): 1,400 lb − 5 × 150 lb = 650 lb. A
 * kit in the vehicle is cargo: 650 lb of it are within the label, a pound more is not.
 */
test.each([
  [650, 'care'],
  [651, 'stop'],
])('by the label’s illustration %d lb of kit come out as %s (published)', (kit, state) => {
  const facts: FactsGiven = {
    'vehicle.placardPayload': '1,400 lb',
    'load.occupants': Array.from({ length: 5 }, () => ({ weight: '150 lb' })),
    'trailer.dryWeight': '1,000 lb',
    'trailer.gvwr': '3,000 lb',
    'trailer.measuredTongueWeight': '0 lb',
    'trailer.axles': '1',
    'kit.place': 'vehicle',
    'kit.extent': 'lean',
    'lift.kind': 'none',
    'trailer.brakeKind': 'none',
    'trip.remoteness': 'near-help',
    'trip.days': '1 d',
  };
  const listed = judge(facts).values['kit.weight'].lo;
  const answer = judge({ ...facts, 'kit.added': [{ weight: `${kit - listed} lb` }] });
  expect(answer.limits.find(({ id }) => id === 'payload')?.state).toBe(state);
});
