import { truckCamper } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(truckCamper, { facts, asOf: '2026-11-01' });
const order = [
  'carries-it',
  'carries-it-with-care',
  'carries-it-if',
  'cannot-say',
  'does-not-carry-it',
];

const truck = {
  'load.occupants': [],
  'vehicle.curbFront': '4,100 lb',
  'vehicle.curbRear': '2,900 lb',
  'vehicle.wheelbase': '158 in',
  'vehicle.overhang': '48 in',
  'vehicle.placardPayload': '3,000 lb',
  'vehicle.cargoRating': '2,250 lb',
  'vehicle.gvwr': '10,000 lb',
  'vehicle.gawrFront': '5,250 lb',
  'vehicle.gawrRear': '6,400 lb',
  'vehicle.zoneFore': '20 in',
  'vehicle.zoneAft': '2 in',
  'camper.tieDowns': 'frame',
};
const weight = fc.integer({ min: 300, max: 4000 });
const place = fc.integer({ min: -30, max: 50 });
const camper = (lb: number, ahead: number): FactsGiven => ({
  ...truck,
  'camper.weight': `${lb} lb`,
  'camper.center': `${ahead} in`,
});

test('a heavier camper at the same place never fits better', () => {
  fc.assert(
    fc.property(weight, place, fc.integer({ min: 1, max: 800 }), (lb, ahead, more) => {
      const [light, heavy] = [judge(camper(lb, ahead)), judge(camper(lb + more, ahead))];
      expect(order.indexOf(heavy.outcome)).toBeGreaterThanOrEqual(order.indexOf(light.outcome));
    }),
    { numRuns: 200, seed },
  );
});

test('front and rear axle together are the loaded truck, wherever the camper sits', () => {
  fc.assert(
    fc.property(weight, place, (lb, ahead) => {
      const { values } = judge(camper(lb, ahead));
      const axles = values['axle.front'].lo + values['axle.rear'].lo;
      expect(axles).toBeCloseTo(values['vehicle.gross'].lo, 4);
    }),
    { numRuns: 200, seed },
  );
});

test('pounds or kilograms, the verdict is the same', () => {
  fc.assert(
    fc.property(weight, place, (lb, ahead) => {
      const metric = {
        ...camper(lb, ahead),
        'camper.weight': { lo: lb * 0.45359237, hi: lb * 0.45359237, unit: 'kg' },
      };
      expect(judge(metric).outcome).toBe(judge(camper(lb, ahead)).outcome);
    }),
    { numRuns: 200, seed },
  );
});

test('what has no place may ride anywhere in the camper: every place there lies within the answer', () => {
  fc.assert(
    fc.property(
      weight,
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: -60, max: 90 }),
      (lb, cargo, ahead) => {
        const placed = (row: Readonly<Record<string, string>>) =>
          judge({ ...camper(lb, 10), 'camper.cargo': [row] });
        const untold = placed({ weight: `${cargo} lb` });
        const told = placed({ weight: `${cargo} lb`, ahead: `${ahead} in` });
        const [range, at] = [untold, told].map(({ values }) => values['camper.centerLoaded']);
        expect(at?.lo).toBeGreaterThanOrEqual((range?.lo ?? 0) - 1e-6);
        expect(at?.hi).toBeLessThanOrEqual((range?.hi ?? 0) + 1e-6);
        if (told.outcome === 'does-not-carry-it') {
          expect(['cannot-say', 'does-not-carry-it']).toContain(untold.outcome);
        }
      },
    ),
    { numRuns: 200, seed },
  );
});

test('a center of gravity behind the rear axle is never passed over, whatever else is told', () => {
  fc.assert(
    fc.property(weight, fc.integer({ min: -40, max: -1 }), fc.boolean(), (lb, ahead, zone) => {
      const { 'vehicle.zoneFore': fore, 'vehicle.zoneAft': _, ...rest } = camper(lb, ahead);
      const told = zone ? { 'vehicle.zoneFore': fore ?? '20 in', 'vehicle.zoneAft': '-40 in' } : {};
      const answer = judge({ ...rest, ...told });
      const level = answer.findings.find(({ id }) => id === 'behind-axle')?.level;
      expect(level).toBe(zone ? 'care' : 'unknown');
      expect(answer.outcome).not.toBe('carries-it');
    }),
    { numRuns: 100, seed },
  );
});

test('heavier people never leave more of the cargo rating, and 150 lb a seat leave all of it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 0, max: 1500 }), (seats, lb) => {
      const counted = (people: number) =>
        judge({
          ...camper(1500, 10),
          'vehicle.seats': String(seats),
          'load.occupants': [{ weight: `${people} lb`, ahead: '60 in' }],
        }).values['cargoRating.counted'].lo;
      expect(counted(lb)).toBeCloseTo(2250 - Math.max(0, lb - 150 * seats), 6);
      expect(counted(lb + 40)).toBeLessThanOrEqual(counted(lb));
    }),
    { numRuns: 100, seed },
  );
});
