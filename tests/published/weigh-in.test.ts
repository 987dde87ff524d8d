import { weighIn } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { lusolve, matrix, unit } from 'mathjs';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(weighIn, { facts, asOf: '2026-11-01' });
const lb = (value: number) => `${value} lb`;
const pounds = (kg: number): number => unit(kg, 'kg').toNumber('lbm');
const kilograms = (weight: number): number => unit(weight, 'lbm').toNumber('kg');
const middle = ({ lo, hi }: { lo: number; hi: number }): number => (lo + hi) / 2;

type Rig = {
  /** Vehicle alone, by axle; wheelbase, overhang, ball to axle; tongue, trailer, moment of the bars. */
  readonly front: number;
  readonly rear: number;
  readonly w: number;
  readonly b: number;
  readonly l: number;
  readonly tongue: number;
  readonly trailer: number;
};

/**
 * The ticket that a rig must print: forces and moments of each of the two bodies in balance, solved
 * by mathjs. The unknowns are front, rear and trailer axles and the force at the ball; the bars are a
 * couple between the bodies.
 */
function ticket(rig: Rig, couple: number): readonly [number, number, number] {
  const { front, rear, w, b, l, tongue, trailer } = rig;
  const weightBehind = ((trailer - tongue) / trailer) * l;
  const solved = lusolve(
    [
      [1, 1, 0, -1],
      [0, w, 0, -(w + b)],
      [0, 0, 1, 1],
      [0, 0, l, 0],
    ],
    [front + rear, rear * w - couple, trailer, trailer * weightBehind + couple],
  );
  const [f, r, t] = matrix(solved).toArray().flat(2).map(Number);
  return [f ?? Number.NaN, r ?? Number.NaN, t ?? Number.NaN];
}

const facts = (rig: Rig, tight?: readonly number[], slack?: readonly number[]): FactsGiven => ({
  'scale.step': '0 lb',
  'vehicle.wheelbase': `${rig.w} in`,
  'vehicle.overhang': `${rig.b} in`,
  'trailer.ballToAxle': `${rig.l} in`,
  'alone.front': lb(rig.front),
  'alone.rear': lb(rig.rear),
  ...named('tight', tight),
  ...named('slack', slack),
});

const named = (pass: 'tight' | 'slack', printed?: readonly number[]): FactsGiven =>
  printed
    ? {
        [`${pass}.front`]: exactly(printed[0]),
        [`${pass}.rear`]: exactly(printed[1]),
        [`${pass}.trailer`]: exactly(printed[2]),
      }
    : {};
const exactly = (value = Number.NaN) => ({ lo: value, hi: value, unit: 'lb' });

/** A vehicle heavy enough for either textbook trailer; its numbers are ours. */
const truck = { front: 4000, rear: 3600, w: 150, b: 55 };

/**
 * Published: Giancoli, Physics, 7th ed., statics: a trailer of 2,500 kg whose weight acts 5.5 m
 * behind its front support and 2.5 m ahead of its tires, g = 9.8: tires 16,844 N, support 7,656 N.
 */
test('Giancoli: slack bars or tight, two passes or three, the support carries 7,656 N', () => {
  const l = 8 / 0.0254;
  const tongue = pounds(2500) * (2.5 / 8);
  const rig = { ...truck, l, tongue, trailer: pounds(2500) };
  const [slack, tight] = [ticket(rig, 0), ticket(rig, 60_000)];
  expect(tight[0]).toBeGreaterThan(slack[0]);
  for (const given of [facts(rig, tight), facts(rig, undefined, slack), facts(rig, tight, slack)]) {
    const { values } = judge(given);
    const onBall = middle(values['tongue.weighed']);
    expect(kilograms(onBall) * 9.8).toBeCloseTo(7656, -1);
    const onTires = middle(values['trailer.weighed']) - onBall;
    expect(kilograms(onTires) * 9.8).toBeCloseTo(16_844, -1);
  }
  const apparent = middle(judge(facts(rig, tight)).values['tongue.apparent']);
  expect(tongue - apparent).toBeCloseTo(60_000 / l, 3);
});

/**
 * Published: a textbook problem on negative tongue weight (g = 9.81): 220 kg at 1.85 m, axle at
 * 2.15 m: 301.1 N; with 540 kg more at 3.3 m: −2,532.3 N. Answers derived once more by moments.
 */
test('the textbook’s boat trailer: 301.1 N on the ball, then −2,532.3 N, and that is a stop', () => {
  const l = 2.15 / 0.0254;
  const light = { ...truck, l, tongue: pounds((220 * 0.3) / 2.15), trailer: pounds(220) };
  const both = pounds((220 * 0.3 - 540 * 1.15) / 2.15);
  const heavy = { ...truck, l, tongue: both, trailer: pounds(760) };
  const [first, second] = [light, heavy].map((rig) => judge(facts(rig, undefined, ticket(rig, 0))));
  if (!first || !second) throw new Error('Two answers were wanted.');
  expect(kilograms(middle(first.values['tongue.weighed'])) * 9.81).toBeCloseTo(301.1, 0);
  expect(kilograms(middle(second.values['tongue.weighed'])) * 9.81).toBeCloseTo(-2532.3, 0);
  expect(second.findings.find(({ id }) => id === 'tongue-negative')?.level).toBe('stop');
});

/**
 * Published: FM 55-30, appendix N: 96,500 lb split 14/21/21/22/22 %: 13,510, 20,265, 20,265, 21,230
 * and 21,230 lb.
 */
test('FM 55-30: the axles’ shares add up to the whole', () => {
  const shares = [13_510, 20_265, 20_265, 21_230, 21_230];
  const [front = 0, second = 0, third = 0, fourth = 0, fifth = 0] = shares;
  const { values } = judge({
    'scale.step': '10 lb',
    'slack.front': lb(front),
    'slack.rear': lb(second + third),
    'slack.trailer': lb(fourth + fifth),
  });
  expect(middle(values['combined.weighed'])).toBeCloseTo(96_500, 6);
  expect(middle(values['axle.trailerWeighed']) / 96_500).toBeCloseTo(0.44, 6);
});

const rigs = fc.record({
  front: fc.integer({ min: 2000, max: 5000 }),
  rear: fc.integer({ min: 2000, max: 5000 }),
  w: fc.integer({ min: 100, max: 180 }),
  b: fc.integer({ min: 30, max: 80 }),
  l: fc.integer({ min: 120, max: 320 }),
  share: fc.integer({ min: 8, max: 25 }),
  trailer: fc.integer({ min: 2000, max: 9000 }),
});

/**
 * Published: NAVEDTRA 14233, p. 4-26: the center of balance is the sum of moments, found from axle
 * weighings, over the gross weight. Its distance from the axles, over ball to axle, is the tongue's
 * share.
 */
test('NAVEDTRA: the center of balance gives the tongue’s share', () => {
  fc.assert(
    fc.property(rigs, (n) => {
      const rig = { ...n, tongue: (n.trailer * n.share) / 100 };
      const slack = ticket(rig, 0);
      const balance = (slack[2] * n.l) / n.trailer;
      const { lo, hi } = judge(facts(rig, undefined, slack)).values['tongue.shareWeighed'];
      const share = (n.l - balance) / n.l;
      expect(lo).toBeLessThanOrEqual(share);
      expect(hi).toBeGreaterThanOrEqual(share);
    }),
    { numRuns: 100, seed },
  );
});

/** Every combination of the least and the most that each figure may stand for. */
function corners(printed: readonly number[], step: number): readonly (readonly number[])[] {
  const [first, ...rest] = printed;
  if (first === undefined) return [[]];
  const off = step / 2 + first * 0.001;
  return corners(rest, step).flatMap((tail) => [
    [first - off, ...tail],
    [first + off, ...tail],
  ]);
}

/**
 * Published: interval arithmetic: a quantity that moves one way with each of its readings has its
 * ends at corners. All corners of five and of four readings are tried one by one.
 */
test('the ends carried through are those of the worst corner, no wider', () => {
  fc.assert(
    fc.property(rigs, (n) => {
      const rig = { ...n, tongue: (n.trailer * n.share) / 100 };
      const round = (all: readonly number[]) => all.map((value) => Math.round(value / 20) * 20);
      const alone = [n.front, n.rear];
      const [tight, slack] = [round(ticket(rig, rig.tongue * 40)), round(ticket(rig, 0))];
      const step = { 'scale.step': '20 lb' };
      const two = judge({ ...facts(rig, tight), ...step }).values['tongue.weighed'];
      const byTwo = corners([...tight.slice(0, 2), ...alone], 20).map(
        ([f1 = 0, r1 = 0, f3 = 0, r3 = 0]) => {
          const left = f1 + r1 - f3 - r3;
          return left + (n.w * (f1 - f3) + left * n.b) / n.l;
        },
      );
      expect(two.lo).toBeCloseTo(Math.min(...byTwo), 3);
      expect(two.hi).toBeCloseTo(Math.max(...byTwo), 3);
      const three = judge({ ...facts(rig, tight, slack), ...step }).values['bars.restoredWeighed'];
      const fronts = corners([tight[0] ?? 0, slack[0] ?? 0, n.front], 20);
      if (fronts.some(([, f2 = 0, f3 = 0]) => f3 - f2 <= 0)) return;
      const byThree = fronts.map(([f1 = 0, f2 = 0, f3 = 0]) => (f1 - f2) / (f3 - f2));
      expect(three.lo).toBeCloseTo(Math.min(...byThree), 5);
      expect(three.hi).toBeCloseTo(Math.max(...byThree), 5);
    }),
    { numRuns: 100, seed },
  );
});
