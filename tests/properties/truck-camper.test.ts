import { truckCamper } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(truckCamper, { facts, asOf: '2026-11-01' });
const order = ['carries-it', 'carries-it-with-care', 'cannot-say', 'does-not-carry-it'];

const truck = {
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
  'camper.centre': `${ahead} in`,
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

test('without a place for everything the centre of gravity is not known, and nothing is said to be well', () => {
  fc.assert(
    fc.property(weight, fc.integer({ min: 1, max: 300 }), (lb, cargo) => {
      const facts = { ...camper(lb, 10), 'camper.cargo': [{ weight: `${cargo} lb` }] };
      const answer = judge(facts);
      expect(answer.values['camper.centreLoaded']).toMatchObject({ lo: -Infinity, hi: Infinity });
      expect(['cannot-say', 'does-not-carry-it']).toContain(answer.outcome);
    }),
    { numRuns: 100, seed },
  );
});
