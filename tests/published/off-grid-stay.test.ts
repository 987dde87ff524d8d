import { offGridStay, towFit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const valuesOf = (facts: FactsGiven) =>
  answerNow(offGridStay, { facts, asOf: '2026-07-10' }).values;
const exact = ({ lo, hi }: { readonly lo: number; readonly hi: number }): number => {
  expect(hi).toBeCloseTo(lo, 9);
  return lo;
};

/**
 * Custom of the trade (class: common practice): 40 gal fresh, 30 gal gray, 8 gal a day of which 85 %
 * go down the sink: the gray tank is full after 4.4 days, not 5.
 */
test('the gray tank ends the stay after 4.4 days, not 5', () => {
  const found = valuesOf({
    'water.freshTank': '40 gal',
    'water.grayTank': '30 gal',
    'water.daily': '8 gal/d',
    'water.grayShare': '85 %',
  });
  expect(exact(found['stay.longest'])).toBeCloseTo(4.4, 1);
  expect(exact(found['fresh.days'])).toBe(5);
});

/** A second way (balance of quantities): every minute a little is taken and put, until one is done. */
function minutes(stores: readonly { readonly has: number; readonly aDay: number }[]): number {
  let minute = 0;
  while (stores.every(({ has, aDay }) => has - (aDay * minute) / 1440 > 1e-9)) minute += 1;
  return minute / 1440;
}

test.each([
  [40, 30, 8, 0.85, 20, 2, 60],
  [25, 40, 6, 0.7, 8, 1.1, 22],
  [80, 75, 5, 0.9, 40, 1.5, 14],
  [60, 60, 12, 0.85, 5, 1.6, 5],
])('by the minute the same thing ends it: %d, %d gal, %d a day, …', (...told) => {
  const [fresh, gray, daily, share, black, blackDaily, drawn] = told;
  const found = valuesOf({
    'water.freshTank': `${fresh} gal`,
    'water.grayTank': `${gray} gal`,
    'water.daily': `${daily} gal/d`,
    'water.grayShare': `${share * 100} %`,
    'water.blackTank': `${black} gal`,
    'black.daily': `${blackDaily} gal/d`,
    'battery.chemistry': 'agm',
    'battery.capacity': '100 Ah',
    'battery.dayDrawn': `${drawn} Ah`,
  });
  // Half of an AGM battery's ampere-hours may be taken (class: common practice).
  const ended = minutes([
    { has: fresh, aDay: daily },
    { has: gray, aDay: daily * share },
    { has: black, aDay: blackDaily },
    { has: 50, aDay: drawn },
  ]);
  expect(exact(found['stay.longest'])).toBeCloseTo(ended, 2);
});

describe('gas by energy', () => {
  /**
   * LP-gas property tables (class: published): 21,548 Btu a pound. A furnace of 20,000 Btu/h that runs
   * six hours takes 35.17 kWh, by a general library of units.
   */
  test('ten pounds of propane last a furnace 1.8 nights', () => {
    const night = unit(unit(20_000, 'BTU').toNumber('kWh') * 6, 'kWh').toNumber('BTU');
    const found = valuesOf({
      'cylinder.fill': '20 lb',
      'cylinder.scaleWeight': '27 lb',
      'cylinder.tare': '17 lb',
      'furnace.input': '20,000 Btu/h',
      'furnace.hours': '12 h',
      'furnace.duty': '50 %',
    });
    expect(exact(found['gas.perDay'])).toBeCloseTo(night / 21_548, 6);
    expect(exact(found['gas.lasts'])).toBeCloseTo((10 * 21_548) / night, 6);
  });
});

/**
 * 49 CFR 571.120 counts water at 1 kg a liter (class: published, from memory), 8.345 lb a gallon; the
 * trade reckons with 8.34 (water at 60 °F): they differ by less than a tenth of a percent.
 */
test('a tank that empties and another that fills weigh what their water weighs', () => {
  const found = valuesOf({
    'water.freshTank': '30 gal',
    'water.grayTank': '45 gal',
    'water.daily': '10 gal/d',
    'water.grayShare': '85 %',
    'stay.days': '5 d',
    'trailer.dryWeight': '4,550 lb',
    'trailer.freshWater': '30 gal',
  });
  const water = (gallons: number) => unit(unit(gallons, 'gal').toNumber('L'), 'kg').toNumber('lbm');
  const there = exact(found['trailer.arriving']) - 4550;
  const home = exact(found['trailer.leaving']) - 4550;
  expect(Math.abs(there / water(30) - 1)).toBeLessThan(1e-3);
  expect(Math.abs(home / water(42.5) - 1)).toBeLessThan(1e-3);
});

/** Statics (class: published), a second way: tow fit is asked twice, with the tanks as cargo rows. */
test('what the tanks do to the ball is what tow fit finds with them as cargo', () => {
  const trailer = {
    'trailer.dryWeight': '4,550 lb',
    'trailer.ballToAxle': '16 ft',
    'trailer.freshWaterAhead': '4 ft',
  };
  const found = valuesOf({
    ...trailer,
    'water.freshTank': '30 gal',
    'water.grayTank': '45 gal',
    'water.blackTank': '30 gal',
    'water.daily': '10 gal/d',
    'black.daily': '2.4 gal/d',
    'water.grayAhead': '-6 ft',
    'water.blackAhead': '-3 ft',
    'stay.days': '5 d',
  });
  const tongue = (fresh: string, cargo: readonly (readonly [number, number])[]) =>
    answerNow(towFit, {
      facts: {
        ...trailer,
        'trailer.dryTongueWeight': '500 lb',
        'trailer.freshWater': fresh,
        'trailer.cargo': cargo.map(([gallons, feet]) => ({
          weight: `${gallons * 8.34} lb`,
          ahead: `${feet} ft`,
        })),
      },
      asOf: '2026-07-10',
    }).values['tongue.loaded'].lo;
  const there = tongue('30 gal', [[0, 0]]);
  const home = tongue('0 gal', [
    [42.5, -6],
    [12, -3],
  ]);
  expect(exact(found['tongue.shift'])).toBeCloseTo(home - there, 6);
});
