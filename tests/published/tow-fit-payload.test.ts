import { answerNow, towFit } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

const asOf = '2026-11-01';
const judge = (facts: FactsGiven) => answerNow(towFit, { facts, asOf });
const limitOf = (facts: FactsGiven, id: string) => {
  const found = judge(facts).limits.find((each) => each.id === id);
  if (!found) throw new Error(`There is no limit ${id}.`);
  return found;
};
const at = (value: number) => ({ lo: value, hi: value, unit: 'lb' });

/** So many people of one weight, and no trailer weight on the ball. */
const people = (payload: string, count: number, weight: string): FactsGiven => ({
  'vehicle.placardPayload': payload,
  'load.occupants': Array.from({ length: count }, () => ({ weight })),
  'trailer.measuredTongueWeight': '0 lb',
});

describe('49 CFR 571.110 S4.3.5, steps for determining the load limit (published)', () => {
  test('a label of 1,400 lb leaves 650 lb beside five occupants of 150 lb', () => {
    const payload = limitOf(people('1,400 lb', 5, '150 lb'), 'payload');
    expect(payload.used).toEqual(at(750));
    expect(payload.headroom).toEqual(at(650));
  });

  // The three rows of the same label's illustration table.
  test.each([
    [1000, 2, 150, 700],
    [1000, 5, 150, 250],
    [1000, 5, 200, 0],
  ])('a label of %i lb with %i occupants of %i lb leaves %i lb', (label, count, each, left) => {
    const payload = limitOf(people(`${label} lb`, count, `${each} lb`), 'payload');
    expect(payload.headroom).toEqual(at(left));
    expect(payload.state).not.toBe('stop');
  });

  test('one pound more than nothing left is too much, and the sixth occupant is that', () => {
    const full = people('1000 lb', 5, '200 lb');
    expect(limitOf({ ...full, 'load.cargo': [{ weight: '1 lb' }] }, 'payload').state).toBe('stop');
    expect(limitOf(people('1000 lb', 6, '200 lb'), 'payload').state).toBe('stop');
  });

  test('what is left takes luggage and the tongue together, pound for pound', () => {
    const both: FactsGiven = {
      ...people('1,400 lb', 5, '150 lb'),
      'load.cargo': [{ weight: '250 lb' }],
      'trailer.measuredTongueWeight': '400 lb',
    };
    expect(limitOf(both, 'payload').headroom).toEqual(at(0));
  });
});

test('49 CFR 575.103(d) (published): 68 kg stands for 150 lb within a pound, five for 340 kg', () => {
  const metric = limitOf(people('640 kg', 5, '68 kg'), 'payload');
  // The misprinted kilogram label takes 70 kg each and still prints 300; with 68 kg it is so.
  expect(metric.headroom.lo * 0.45359237).toBeCloseTo(300, 5);
  expect(metric.used.lo / 5).toBeGreaterThan(149);
  expect(metric.used.lo / 5).toBeLessThan(150);
});

test('49 CFR 571.120 (from memory): water at 8.3 lb a gallon is within 1 % of what a tank adds', () => {
  const { values } = judge({ 'trailer.dryWeight': '0 lb', 'trailer.freshWater': '100 gal' });
  expect(Math.abs(values['trailer.loaded'].lo / 830 - 1)).toBeLessThan(0.01);
});

test('NHTSA interpretation nht76-3.20 (published): trailer axles need not carry the tongue too', () => {
  const axles = limitOf(
    {
      'trailer.dryWeight': '5,000 lb',
      'trailer.measuredTongueWeight': '600 lb',
      'trailer.axles': '2',
      'trailer.gawr': '2,200 lb',
    },
    'trailer-axles',
  );
  expect(axles.used).toEqual(at(4400));
  expect(axles.state).toBe('care');
});

test('49 CFR 390.5 (published): combined weight counts the tongue once', () => {
  const { values } = judge({
    'vehicle.curbWeight': '5,000 lb',
    'load.occupants': [{ weight: '150 lb' }, { weight: '150 lb' }],
    'trailer.dryWeight': '4,000 lb',
    'trailer.measuredTongueWeight': '500 lb',
  });
  expect(values['combined.gross']).toEqual(at(9300));
  expect(values['vehicle.gross'].lo + values['axle.trailer'].lo).toBe(9300);
});

test('49 CFR 393.42 (published): an unbraked trailer over 3,000 lb is a stop, at 3,000 lb is not', () => {
  const level = (weight: string) =>
    judge({
      'trailer.dryWeight': weight,
      'trailer.brakes': 'none',
      'vehicle.maxUnbraked': '3,500 lb',
    }).findings.find(({ id }) => id === 'unbraked')?.level;
  expect(level('3,000 lb')).toBe('care');
  expect(level('3,000.01 lb')).toBe('stop');
});

describe('custom of the trade (common practice, no source)', () => {
  test('a 6,000 lb rating means shopping from 5,000 to 5,500 lb', () => {
    const { values } = judge({ 'vehicle.maxTrailerWeight': '6,000 lb' });
    expect(values['shopping.from']).toEqual(at(5000));
    expect(values['shopping.to']).toEqual(at(5500));
  });

  test('a tongue of which only the dry weight is known is taken a tenth heavier', () => {
    const { values } = judge({
      'trailer.dryWeight': '5,000 lb',
      'trailer.dryTongueWeight': '600 lb',
    });
    expect(values['tongue.loaded']).toEqual(at(660));
  });

  test('a trailer of 5,000 lb dry and 6,000 lb maximum weighs 5,500 to 5,700 lb as people load it', () => {
    const loaded: FactsGiven = {
      'trailer.dryWeight': '5,000 lb',
      'trailer.gvwr': '6,000 lb',
      'trailer.propane': '40 lb',
      'trailer.freshWater': '20 gal',
      // Kitchen, bedding, hoses and chocks of a family: 300 to 490 lb.
      'trailer.cargo': [{ weight: '300–490 lb' }],
    };
    const gross = limitOf(loaded, 'trailer-gross');
    expect(gross.used.lo).toBeGreaterThanOrEqual(5500);
    expect(gross.used.hi).toBeLessThanOrEqual(5700);
    expect(gross.state).toBe('ok');
  });

  test('payload is GVWR less curb weight where no label was read', () => {
    const { values } = judge({ 'vehicle.gvwr': '7,000 lb', 'vehicle.curbWeight': '5,300 lb' });
    expect(values['payload.available']).toEqual(at(1700));
  });
});
