import { hitchSetup } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { lusolve, matrix, unit } from 'mathjs';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(hitchSetup, { facts, asOf: '2026-11-01' });
const lb = (value: number) => `${value} lb`;
const inch = (value: number) => `${value} in`;
const whole = (min: number, max: number) => fc.integer({ min, max });

/**
 * Published: SAE J684 as restated in COMAR 11.13.08.10: up to 2,000 lb a ball of 1⅞ in; 2,001 to
 * 3,500 lb and 3,501 to 5,000 lb one of 2 in; above that by the coupling.
 */
test.each([
  [1, 'class-1', 1.875],
  [2000, 'class-1', 1.875],
  [2001, 'class-2', 2],
  [3500, 'class-2', 2],
  [3501, 'class-3', 2],
  [5000, 'class-3', 2],
  [5001, 'class-4', 2.3125],
])('SAE J684: a trailer of %i lb gross is of %s and takes %f in', (gross, name, least) => {
  const told = { 'trailer.gvwr': lb(gross), 'trailer.couplerSize': '2 5/16 in' };
  const answer = judge(told);
  expect(answer.choices['trailer.class']?.among).toEqual([name]);
  expect(answer.values['ball.least'].lo).toBeCloseTo(least, 9);
  const smaller = judge({ ...told, 'hitch.ballSize': inch(least - 0.125) });
  expect(smaller.findings.find(({ id }) => id === 'ball-class')?.level).toBe('stop');
});

/** Published: 1 in = 25.4 mm (NIST SP 811), by mathjs: the three sizes as stamped in metric. */
test.each(['1 7/8 in', '2 in', '2 5/16 in'])('a ball of %s is the same in millimeters', (size) => {
  const inches = { '1 7/8 in': 1.875, '2 in': 2, '2 5/16 in': 2.3125 }[size] ?? Number.NaN;
  const mm = unit(inches, 'inch').toNumber('mm');
  const told = { 'hitch.ballSize': `${mm} mm`, 'trailer.couplerSize': size };
  expect(judge(told).findings.find(({ id }) => id === 'ball-size')?.level).toBe('ok');
});

const rig = fc.record({
  w: whole(90, 180),
  b: whole(20, 80),
  front: whole(300, 3000),
  rear: whole(300, 3000),
  tongue: whole(0, 1500),
  hardware: whole(0, 120),
  people: whole(0, 900),
  peopleAt: whole(0, 100),
  cargo: whole(0, 900),
  cargoAt: whole(-40, 60),
});

const facts = (n: Rig): FactsGiven => ({
  'vehicle.wheelbase': inch(n.w),
  'vehicle.overhang': inch(n.b),
  'vehicle.springFront': `${n.front} lb/in`,
  'vehicle.springRear': `${n.rear} lb/in`,
  'trailer.measuredTongueWeight': lb(n.tongue),
  'hitch.hardwareWeight': lb(n.hardware),
  'load.occupants': [{ weight: lb(n.people), ahead: inch(n.peopleAt) }],
  'load.cargo': [{ weight: lb(n.cargo), ahead: inch(n.cargoAt) }],
  'hitch.receiverHeightEmpty': '30 in',
});
type Rig = typeof rig extends fc.Arbitrary<infer R> ? R : never;

/**
 * Published: statics of rigid bodies and Hooke's law. The body is a stiff beam on two springs. Its
 * sinking z and its pitch p are the unknowns of two equations – forces up equal weights down, and
 * moments about the rear axle are zero – solved by mathjs, a general library. The receiver, b behind
 * the rear axle, sinks by z + b·p. Nothing of the axle loads' closed form is used.
 */
test('the sag is that of a stiff beam on two springs', () => {
  fc.assert(
    fc.property(rig, (n) => {
      // Weights and how far ahead of the rear axle they stand.
      const loads: readonly (readonly [number, number])[] = [
        [n.people, n.peopleAt],
        [n.cargo, n.cargoAt],
        [n.tongue + n.hardware, -n.b],
      ];
      const weight = loads.reduce((sum, [each]) => sum + each, 0);
      const moment = loads.reduce((sum, [each, at]) => sum + each * at, 0);
      // Rear sinks z, front z − w·p; the springs push with their rates.
      const solved = lusolve(
        [
          [n.rear + n.front, -n.front * n.w],
          [n.front * n.w, -n.front * n.w * n.w],
        ],
        [weight, moment],
      );
      const [z, p] = matrix(solved).toArray().flat(2).map(Number);
      const sag = (z ?? Number.NaN) + n.b * (p ?? Number.NaN);
      expect(judge(facts(n)).values['receiver.sag'].lo).toBeCloseTo(sag, 5);
    }),
    { numRuns: 200, seed },
  );
});

/**
 * Published: plane geometry. The near corner is turned about the ball degree by degree and looked
 * for inside the vehicle's outline; the closed form must agree on whether it ever comes there.
 */
test('turning room is what turning the front wall step by step shows', () => {
  const sizes = fc.record({
    bumper: whole(4, 40),
    behind: whole(5, 80),
    trailer: whole(40, 102),
    vehicle: whole(60, 90),
  });
  fc.assert(
    fc.property(sizes, (n) => {
      const touches = (share: number): boolean => {
        const angle = (share * Math.PI) / 2;
        const half = n.trailer / 2;
        const ahead = half * Math.sin(angle) - n.behind * Math.cos(angle);
        const beside = n.behind * Math.sin(angle) + half * Math.cos(angle);
        return ahead > n.bumper && beside < n.vehicle / 2;
      };
      const ever = Array.from({ length: 9001 }, (_, i) => touches(i / 9000)).some(Boolean);
      const room = judge({
        'hitch.ballBehindBumper': inch(n.bumper),
        'vehicle.width': inch(n.vehicle),
        'trailer.width': inch(n.trailer),
        'trailer.frontBehindBall': inch(n.behind),
      }).values['turn.room'].lo;
      expect(room < 0).toBe(ever);
    }),
    { numRuns: 100, seed },
  );
});
