import { truckCamper } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { lusolve, matrix } from 'mathjs';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(truckCamper, { facts, asOf: '2026-11-01' });
const lb = (value: number) => `${value} lb`;
const inch = (value: number) => `${value} in`;

/**
 * Published: 49 CFR 575.103(d). The cargo weight rating is what the truck may carry once 150 lb
 * (68 kg) is set aside for each designated seat. So with every seat taken by somebody of 150 lb the
 * cargo rating and the door label must leave the very same pounds.
 */
test('49 CFR 575.103: at 150 lb a seat the two ratings leave the same', () => {
  const whole = (min: number, max: number) => fc.integer({ min, max });
  fc.assert(
    fc.property(whole(1500, 4000), whole(2, 6), whole(300, 3900), (payload, seats, camper) => {
      const answer = judge({
        'vehicle.placardPayload': lb(payload),
        'vehicle.cargoRating': lb(payload - 150 * seats),
        'vehicle.seats': String(seats),
        'camper.weight': lb(camper),
        'load.occupants': Array.from({ length: seats }, () => ({ weight: '150 lb' })),
      });
      const left = (id: string) => answer.limits.find((limit) => limit.id === id)?.headroom.lo;
      expect(left('payload')).toBeCloseTo(left('cargo-rating') ?? Number.NaN, 6);
      expect(answer.findings.find(({ id }) => id === 'heavier-people')?.level).toBe('ok');
    }),
    { numRuns: 100, seed },
  );
});

const numbers = fc.record({
  camper: fc.integer({ min: 500, max: 4000 }),
  center: fc.integer({ min: -20, max: 40 }),
  cargo: fc.integer({ min: 0, max: 600 }),
  place: fc.integer({ min: -70, max: 60 }),
  people: fc.integer({ min: 0, max: 800 }),
  tongue: fc.integer({ min: 0, max: 500 }),
  extension: fc.integer({ min: 0, max: 48 }),
});
const [w, b, front, rear] = [158, 48, 4100, 2900];

const rig = (n: {
  camper: number;
  center: number;
  cargo: number;
  place: number;
  people: number;
  tongue: number;
  extension: number;
}): FactsGiven => ({
  'vehicle.curbFront': lb(front),
  'vehicle.curbRear': lb(rear),
  'vehicle.wheelbase': inch(w),
  'vehicle.overhang': inch(b),
  'vehicle.placardPayload': '3,000 lb',
  'vehicle.gvwr': '10,000 lb',
  'camper.weight': lb(n.camper),
  'camper.center': inch(n.center),
  'camper.cargo': [{ weight: lb(n.cargo), ahead: inch(n.place) }],
  'load.occupants': [{ weight: lb(n.people), ahead: '60 in' }],
  'towed.tongue': lb(n.tongue),
  'hitch.extension': inch(n.extension),
});

/**
 * Published: statics of rigid bodies; the two equations are solved by mathjs, a general library:
 * forces up equal weights down, and moments about the front axle are zero.
 */
test('axle loads are those that forces and moments in balance give', () => {
  fc.assert(
    fc.property(numbers, (n) => {
      // Weight and how far behind the front axle it stands.
      const loads: readonly (readonly [number, number])[] = [
        [front, 0],
        [rear, w],
        [n.camper, w - n.center],
        [n.cargo, w - n.place],
        [n.people, w - 60],
        [n.tongue, w + b + n.extension],
      ];
      const weight = loads.reduce((sum, [each]) => sum + each, 0);
      const moment = loads.reduce((sum, [each, at]) => sum + each * at, 0);
      const solved = lusolve(
        [
          [1, 1],
          [0, w],
        ],
        [weight, moment],
      );
      const [onFront, onRear] = matrix(solved).toArray().flat(2).map(Number);
      const { values } = judge(rig(n));
      expect(values['axle.front'].lo).toBeCloseTo(onFront ?? Number.NaN, 4);
      expect(values['axle.rear'].lo).toBeCloseTo(onRear ?? Number.NaN, 4);
    }),
    { numRuns: 200, seed },
  );
});

/**
 * Published: NAVEDTRA 14233, p. 4-26, center of balance: the sum of moments over the gross weight,
 * found from axle weighings. Two weighings, with and without the camper, give back its center.
 */
test('the center of gravity comes back from what two weighings differ by', () => {
  fc.assert(
    fc.property(numbers, (n) => {
      const loaded = judge(rig(n)).values;
      const bare = judge(rig({ ...n, camper: 0, cargo: 0 })).values;
      const gained = loaded['axle.front'].lo - bare['axle.front'].lo;
      const center = (gained * w) / loaded['camper.loaded'].lo;
      expect(loaded['camper.centerLoaded'].lo).toBeCloseTo(center, 4);
    }),
    { numRuns: 200, seed },
  );
});
