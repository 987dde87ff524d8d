import { answerNow, towFit } from '@tarebook/rules';
import type { CellGiven, FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';

/**
 * The largest trailer as a linear program, solved by HiGHS (a general library): maximize the
 * trailer's weight under every rating, with the statics as plain equations of forces and moments.
 * The program knows nothing of how the topic solves each limit for the weight.
 */
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

type Solver = Awaited<ReturnType<typeof highsLoader>>;
let highs: Solver;
beforeAll(async () => {
  highs = await highsLoader();
});

/** The largest trailer, or null when no weight will do. */
function solve(rows: readonly string[]): number | null {
  const text = [
    'Maximize',
    ' obj: trailer',
    'Subject To',
    ...rows.map((row, i) => ` row${i}: ${row}`),
    'Bounds',
    ' front free',
    ' rear free',
    'End',
  ].join('\n');
  const found = highs.solve(text);
  if (found.Status === 'Infeasible') return null;
  if (found.Status !== 'Optimal') throw new Error(`HiGHS says ${found.Status}.`);
  return found.ObjectiveValue;
}

/** Everything that the program needs of one rig, in lb and in. */
const rigs = fc.record({
  rating: fc.integer({ min: 4000, max: 10_000 }),
  tongueRating: fc.integer({ min: 400, max: 1200 }),
  placard: fc.integer({ min: 900, max: 2400 }),
  gvwr: fc.integer({ min: 6600, max: 8500 }),
  gcwr: fc.integer({ min: 10_000, max: 17_000 }),
  curbFront: fc.integer({ min: 2400, max: 3100 }),
  curbRear: fc.integer({ min: 2000, max: 2600 }),
  gawrFront: fc.integer({ min: 3100, max: 4200 }),
  gawrRear: fc.integer({ min: 3400, max: 5000 }),
  wheelbase: fc.integer({ min: 105, max: 160 }),
  overhang: fc.integer({ min: 35, max: 65 }),
  tire: fc.integer({ min: 1700, max: 2800 }),
  people: fc.integer({ min: 120, max: 800 }),
  peopleAhead: fc.integer({ min: 20, max: 80 }),
  cargo: fc.integer({ min: 0, max: 400 }),
  cargoAhead: fc.integer({ min: -40, max: 30 }),
  hardware: fc.integer({ min: 20, max: 110 }),
  bars: fc.boolean(),
  restored: fc.integer({ min: 0, max: 100 }),
  ballToAxle: fc.integer({ min: 120, max: 270 }),
  receiver: fc.integer({ min: 4500, max: 12_000 }),
  receiverTongue: fc.integer({ min: 450, max: 1300 }),
  ball: fc.integer({ min: 5000, max: 12_000 }),
  requiredAbove: fc.integer({ min: 3500, max: 8000 }),
  loaded: fc.integer({ min: 2500, max: 6000 }),
  tongue: fc.integer({ min: 200, max: 900 }),
});
type Rig = typeof rigs extends fc.Arbitrary<infer R> ? R : never;

const exactly = (value: number, unit: string): CellGiven => ({ lo: value, hi: value, unit });
const lb = (value: number) => exactly(value, 'lb');
const inches = (value: number) => exactly(value, 'in');

const factsOf = (rig: Rig): FactsGiven => ({
  'vehicle.maxTrailerWeight': lb(rig.rating),
  'vehicle.maxTongueCarried': lb(rig.tongueRating),
  'vehicle.placardPayload': lb(rig.placard),
  'vehicle.gvwr': lb(rig.gvwr),
  'vehicle.gcwr': lb(rig.gcwr),
  'vehicle.curbFront': lb(rig.curbFront),
  'vehicle.curbRear': lb(rig.curbRear),
  'vehicle.gawrFront': lb(rig.gawrFront),
  'vehicle.gawrRear': lb(rig.gawrRear),
  'vehicle.wheelbase': inches(rig.wheelbase),
  'vehicle.overhang': inches(rig.overhang),
  'vehicle.tireCapacityRear': lb(rig.tire),
  'vehicle.distributionRequiredAbove': lb(rig.requiredAbove),
  'load.occupants': [{ weight: lb(rig.people), ahead: inches(rig.peopleAhead) }],
  'load.cargo': [{ weight: lb(rig.cargo), ahead: inches(rig.cargoAhead) }],
  'hitch.hardwareWeight': lb(rig.hardware),
  'hitch.distribution': rig.bars ? 'yes' : 'no',
  'hitch.restored': exactly(rig.restored, '%'),
  'hitch.receiverRating': lb(rig.receiver),
  'hitch.receiverTongueRating': lb(rig.receiverTongue),
  'hitch.ballRating': lb(rig.ball),
  'trailer.ballToAxle': inches(rig.ballToAxle),
  'trailer.dryWeight': lb(rig.loaded),
  'trailer.measuredTongueWeight': lb(rig.tongue),
});

/** Forces in lb, moments in lb·in about the rear axle, ahead +. */
function programOf(rig: Rig): readonly string[] {
  const share = Math.max(rig.tongue / rig.loaded, 0.1);
  const { wheelbase: w, overhang: b, ballToAxle: L } = rig;
  const curb = Math.max(rig.curbFront + rig.curbRear, rig.gvwr - rig.placard);
  const scale = curb / (rig.curbFront + rig.curbRear);
  const aboard = rig.people + rig.cargo + rig.hardware;
  const alone =
    rig.curbFront * scale * w +
    rig.people * rig.peopleAhead +
    rig.cargo * rig.cargoAhead -
    rig.hardware * b;
  const restored = rig.bars ? rig.restored / 100 : 0;
  return [
    `tongue - ${share} trailer = 0`,
    // Of the front axle's loss by the tongue, a share comes back through the bars' moment: what
    // they lift off the ball counts there too.
    `moment - ${(restored * b) / (1 + b / L)} tongue = 0`,
    `lifted - ${1 / L} moment = 0`,
    `onball - tongue + lifted = 0`,
    `${w} front + ${b} onball - moment = ${alone}`,
    `front + rear - onball = ${curb + aboard}`,
    `trailer <= ${rig.rating}`,
    `tongue <= ${rig.tongueRating}`,
    `tongue <= ${rig.placard - aboard}`,
    `tongue <= ${rig.gvwr - curb - aboard}`,
    `trailer <= ${rig.gcwr - curb - aboard}`,
    `front <= ${rig.gawrFront}`,
    `rear <= ${rig.gawrRear}`,
    `rear <= ${2 * rig.tire}`,
    `trailer <= ${rig.receiver}`,
    `tongue <= ${rig.receiverTongue}`,
    `trailer <= ${rig.ball}`,
    ...(rig.bars ? [] : [`trailer <= ${rig.requiredAbove}`]),
  ];
}

const largest = (facts: FactsGiven) =>
  answerNow(towFit, { facts, asOf: '2026-11-01' }).apart.largestTrailer;

describe('the largest trailer against linear programming (derived; solved by HiGHS)', () => {
  test('the heaviest under w ≤ 5,000 and 0.12 w ≤ 540 is 4,500', () => {
    expect(solve(['trailer <= 5000', '0.12 trailer <= 540', 'front + rear <= 1'])).toBe(4500);
    expect(
      largest({
        'vehicle.maxTrailerWeight': '5,000 lb',
        'vehicle.maxTongueCarried': '540 lb',
        'vehicle.placardPayload': '9,000 lb',
        'trailer.dryWeight': '4,000 lb',
        'trailer.measuredTongueWeight': '480 lb',
      }),
    ).toEqual({ lo: 4500, hi: 4500, unit: 'lb' });
  });

  test('on 400 random rigs, with bars and without, both find the same weight', () => {
    let found = 0;
    let none = 0;
    fc.assert(
      fc.property(rigs, (rig) => {
        const byProgram = solve(programOf(rig));
        const ours = largest(factsOf(rig));
        // A weight of nothing at all is no trailer.
        if (byProgram === null || byProgram < 1e-5) {
          none += 1;
          expect(ours?.hi ?? 0).toBeLessThan(1e-3);
          return;
        }
        found += 1;
        expect(ours?.lo).toBe(ours?.hi);
        expect(Math.abs((ours?.lo ?? 0) - byProgram)).toBeLessThan(1e-3);
      }),
      { numRuns: 400, seed },
    );
    expect(found).toBeGreaterThan(100);
    expect(none).toBeGreaterThan(5);
  });

  test('and no weight a pound over it is allowed by every limit of vehicle and hitch', () => {
    const ofTheTrailer = ['trailer-gross', 'trailer-axles', 'trailer-tires', 'coupler'];
    fc.assert(
      fc.property(rigs, (rig) => {
        const most = largest(factsOf(rig))?.lo;
        fc.pre(most !== undefined && most > 10);
        const share = Math.max(rig.tongue / rig.loaded, 0.1);
        const stops = (weight: number) => {
          const { limits, findings } = answerNow(towFit, {
            facts: factsOf({ ...rig, loaded: weight, tongue: weight * share }),
            asOf: '2026-11-01',
          });
          const states = limits.filter(({ id }) => !ofTheTrailer.includes(id));
          const required = findings.filter(({ id }) => id === 'distribution-required');
          return [...states.map((l) => l.state), ...required.map((f) => f.level)].includes('stop');
        };
        expect(stops(most - 1)).toBe(false);
        expect(stops(most + 1)).toBe(true);
      }),
      { numRuns: 200, seed },
    );
  });
});
