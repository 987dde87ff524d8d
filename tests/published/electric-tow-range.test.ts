import { answerNow, electricTowRange } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { convert, unitOf } from '@tarebook/rules/quantity';
import fc from 'fast-check';
import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(electricTowRange, { facts, asOf: '2026-11-01' });

/** A vehicle of which everything is known, with nothing behind it. */
const bare: FactsGiven = {
  'vehicle.usableBattery': '100 kWh',
  'vehicle.driveEfficiency': '90 %',
  'vehicle.regeneration': '50 %',
  'vehicle.auxiliaryPower': '0 W',
  'trailer.dryWeight': '0 lb',
  'trailer.dragArea': '0 ft²',
  'load.occupants': [],
};

/** A value of the first leg, in the unit it is declared in. */
function ofLeg(facts: FactsGiven, name: string): number {
  const ends = judge(facts).series.legs?.lines[name]?.ends[0];
  expect(ends?.lo).toBe(ends?.hi);
  return ends?.lo ?? Number.NaN;
}

/**
 * Moran and Shapiro, Fundamentals of Engineering Thermodynamics, 8th ed., problem 2.23 (published;
 * the inputs as printed, the answer derived): 3,040 lbf, 6.24 ft², Cd 0.25, f 0.02, 0.08 lb/ft³,
 * 55 mph: 8.917 hp against rolling and 1.851 hp against the air, 10.768 hp in all. Standard air has
 * that density at a temperature which mathjs finds here.
 */
describe('road load of a textbook', () => {
  const density = unit(0.08, 'lbm/ft^3').toNumber('kg/m^3');
  const kelvin = evaluate('288.15 * 1.225 / density', { density });
  const facts: FactsGiven = {
    ...bare,
    'vehicle.curbWeight': '3,040 lb',
    'vehicle.dragArea': '1.56 ft²',
    'rig.rolling': '0.02',
    'route.legs': [
      { distance: '10 mi', speed: '55 mph', temperature: `${kelvin * 1.8 - 459.67} °F` },
    ],
  };
  const horsepower = (pounds: number): number =>
    unit(pounds, 'lbf').toNumber('N') * (unit(55, 'mile/hour').toNumber('m/s') / 745.6998715822702);

  test('the air is that of the problem', () => {
    expect(ofLeg(facts, 'legs.density')).toBeCloseTo(density, 6);
  });

  test('rolling, air and their sum', () => {
    expect(horsepower(ofLeg(facts, 'legs.rolling'))).toBeCloseTo(8.917, 3);
    expect(horsepower(ofLeg(facts, 'legs.drag'))).toBeCloseTo(1.851, 3);
    const kilowatts = judge(facts).values['power.most'].lo;
    expect(unit(kilowatts, 'kW').toNumber('hp')).toBeCloseTo(10.768, 3);
  });
});

/**
 * ISO 2533 standard atmosphere (published): 1.225 kg/m³, at 1,000 m 1.1116 kg/m³; its ratios at 5,000
 * and 10,000 ft are printed by geometric height z, which is R·z ÷ (R + z) of the height it reckons in,
 * with R = 6,356,766 m.
 */
describe('standard atmosphere, ISO 2533', () => {
  const at = (altitude: string): number =>
    ofLeg(
      {
        ...bare,
        'vehicle.curbWeight': '5,000 lb',
        'vehicle.dragArea': '10 ft²',
        'rig.rolling': '0.01',
        'trip.startAltitude': altitude,
        'route.legs': [{ distance: '10 mi', speed: '55 mph' }],
      },
      'legs.density',
    );

  test('density at sea level and at 1,000 m', () => {
    expect(at('0 ft')).toBeCloseTo(1.225, 4);
    expect(at('1,000 m')).toBeCloseTo(1.1116, 4);
  });

  test.each([
    ['5000 ft', 0.8617],
    ['10000 ft', 0.7386],
  ])('against sea level at %s: %f', (altitude, ratio) => {
    const height = evaluate('6356766 * z / (6356766 + z)', { z: unit(altitude).toNumber('m') });
    expect(at(`${height} m`) / 1.225).toBeCloseTo(ratio, 4);
  });
});

/** EPA (published): 33.7 kWh of electricity stand for a gallon of gasoline. */
test('a gallon of gasoline is 33.7 kWh, for miles to the gallon and for fuel', () => {
  const facts: FactsGiven = {
    ...bare,
    'vehicle.curbWeight': '5,000 lb',
    'vehicle.dragArea': '10 ft²',
    'rig.rolling': '0.01',
    'route.legs': [{ distance: '100 mi', speed: '60 mph' }],
  };
  const { values } = judge(facts);
  expect(values['route.perGallon'].lo * values['route.consumption'].lo).toBeCloseTo(33.7, 4);
  const hybrid = judge({
    ...facts,
    'vehicle.drive': 'hybrid',
    'vehicle.usableBattery': '1 kWh',
    'trip.fuel': '10 gal',
    'solo.fuelEconomy': '30 mpg',
    'solo.speed': '60 mph',
    'solo.load': '0 lb',
  });
  // The same drive, solo as here: of the fuel it needs 100 ÷ 30 gallons, less what the battery gave.
  const perMile = values['route.consumption'].lo;
  expect(hybrid.values['fuel.used'].lo).toBeCloseTo(100 / 30 - 1 / (perMile * 30), 4);
});

/** Road-vehicle textbook, tires on concrete (published): cars 0.015, trucks 0.012. */
test.each([
  ['cars', 0.015],
  ['trucks', 0.012],
])(
  'rolling resistance of %s on concrete lies within what is taken where nobody knows it',
  (_, f) => {
    const facts: FactsGiven = {
      ...bare,
      'vehicle.curbWeight': '5,000 lb',
      'vehicle.dragArea': '10 ft²',
      'route.legs': [{ distance: '10 mi', speed: '55 mph' }],
    };
    const { lo, hi } = judge(facts).values['rolling.coefficient'];
    expect(lo).toBeLessThanOrEqual(f);
    expect(hi).toBeGreaterThanOrEqual(f);
    const rolling = ofLeg({ ...facts, 'rig.rolling': String(f) }, 'legs.rolling');
    expect(rolling).toBeCloseTo(5000 * f, 6);
  },
);

/** New units against mathjs, a general library. */
test('pound-force, newton and miles to the gallon', () => {
  expect(convert(1, unitOf('lbf'), unitOf('N'))).toBeCloseTo(unit(1, 'lbf').toNumber('N'), 9);
  expect(convert(1, unitOf('kWh/mi'), unitOf('N'))).toBeCloseTo(
    unit(1, 'kW hour').toNumber('J') / unit(1, 'mile').toNumber('m'),
    6,
  );
  const perLitre = unit(1, 'mile').toNumber('km') / unit(1, 'gallon').toNumber('litre');
  expect(convert(1, unitOf('mpg'), unitOf('km/L'))).toBeCloseTo(perLitre, 9);
});

const miles = fc.integer({ min: 5, max: 80 });
const leg = fc.record({
  distance: miles,
  speed: fc.integer({ min: 25, max: 70 }),
  climb: fc.integer({ min: -1500, max: 1500 }),
  temperature: fc.integer({ min: 68, max: 68 }),
  headwind: fc.integer({ min: -30, max: 30 }),
});
type Leg = typeof leg extends fc.Arbitrary<infer L> ? L : never;

/**
 * Published: work and energy of mechanics. The same route reckoned a second time, in SI and through
 * the slope’s angle instead of the height: force along the road times way, the gas law of ISO 2533.
 */
function secondTime(route: readonly Leg[], pounds: number, area: number, share: number) {
  const mass = pounds * 0.45359237;
  let height = 0;
  let net = 0;
  for (const { distance, speed, climb, temperature, headwind } of route) {
    const way = distance * 1609.344;
    const angle = Math.asin((climb * 0.3048) / way);
    const middle = height + (climb * 0.3048) / 2;
    const pressure = 101_325 * (1 - (0.0065 * middle) / 288.15) ** (9.80665 / (287.05287 * 0.0065));
    const density = pressure / (287.05287 * ((temperature + 459.67) / 1.8));
    const wind = (speed + headwind) * 0.44704;
    const force =
      0.011 * mass * 9.80665 * Math.cos(angle) +
      (density * area * 0.09290304 * wind * Math.abs(wind)) / 2 +
      mass * 9.80665 * Math.sin(angle);
    const work = (force * way) / 3.6e6;
    net += work > 0 ? work / 0.9 : work * share;
    net += (0.7 * distance) / speed;
    height += climb * 0.3048;
  }
  return net;
}

test('energy along the route, reckoned a second time by force and angle', () => {
  fc.assert(
    fc.property(
      fc.array(leg, { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 3000, max: 16_000 }),
      fc.integer({ min: 6, max: 60 }),
      (route, pounds, area) => {
        const { values } = judge({
          ...bare,
          'vehicle.auxiliaryPower': '700 W',
          'vehicle.curbWeight': `${pounds} lb`,
          'vehicle.dragArea': `${area} ft²`,
          'rig.rolling': '0.011',
          'route.legs': route.map((each) => ({
            distance: `${each.distance} mi`,
            speed: `${each.speed} mph`,
            climb: `${each.climb} ft`,
            temperature: `${each.temperature} °F`,
            headwind: `${each.headwind} mph`,
          })),
        });
        const wanted = secondTime(route, pounds, area, 0.5);
        expect(Math.abs(values['route.energy'].lo - wanted)).toBeLessThan(
          1e-4 + 1e-5 * Math.abs(wanted),
        );
      },
    ),
    { numRuns: 60, seed },
  );
});
