import { answerNow, electricTowRange } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const settings = { numRuns: 60, seed };
const judge = (facts: FactsGiven) => answerNow(electricTowRange, { facts, asOf: '2026-11-01' });

const rig: FactsGiven = {
  'vehicle.usableBattery': '110 kWh',
  'vehicle.dragArea': '12 ft²',
  'vehicle.driveEfficiency': '90 %',
  'vehicle.regeneration': '55 %',
  'vehicle.curbWeight': '6,500 lb',
  'rig.rolling': '0.011',
  'trailer.dryWeight': '4,500 lb',
  'trailer.dragArea': '24 ft²',
  'trip.startAltitude': '3,000 ft',
};

type Leg = {
  readonly distance: number;
  readonly speed: number;
  readonly climb: number;
  readonly temperature: number;
  readonly headwind: number;
  readonly chargeTo?: number | undefined;
};
const legOf = (leastClimb: number): fc.Arbitrary<Leg> =>
  fc.record(
    {
      distance: fc.integer({ min: 3, max: 60 }),
      speed: fc.integer({ min: 25, max: 70 }),
      climb: fc.integer({ min: leastClimb, max: 2500 }),
      temperature: fc.integer({ min: -10, max: 95 }),
      headwind: fc.integer({ min: -25, max: 25 }),
      chargeTo: fc.integer({ min: 20, max: 100 }),
    },
    { requiredKeys: ['distance', 'speed', 'climb', 'temperature', 'headwind'] },
  );
const any = fc.array(legOf(-2500), { minLength: 1, maxLength: 4 });
const upward = fc.array(legOf(0), { minLength: 1, maxLength: 4 });

const rows = (legs: readonly Leg[]) =>
  legs.map((leg) => ({
    distance: `${leg.distance} mi`,
    speed: `${leg.speed} mph`,
    climb: `${leg.climb} ft`,
    temperature: `${leg.temperature} °F`,
    headwind: `${leg.headwind} mph`,
    ...(leg.chargeTo !== undefined && { chargeTo: `${leg.chargeTo} %` }),
  }));
const onRoute = (legs: readonly Leg[], more: FactsGiven = {}) =>
  judge({ ...rig, ...more, 'route.legs': rows(legs) });

function line(answer: ReturnType<typeof judge>, name: string): readonly number[] {
  return answer.series.legs?.lines[name]?.ends.map(({ lo }) => lo) ?? [];
}
const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

test('energy closes along the route: start, charged and from the engine, less taken and spilled, is the end', () => {
  fc.assert(
    fc.property(any, fc.constantFrom('battery', 'plug-in-hybrid'), (legs, drive) => {
      const answer = onRoute(legs, { 'vehicle.drive': drive, 'trip.fuel': '30 gal' });
      const charge = line(answer, 'legs.charge');
      const came = total(line(answer, 'legs.charged')) + total(line(answer, 'legs.engine'));
      const went = total(line(answer, 'legs.net')) + total(line(answer, 'legs.spilled'));
      expect((charge[0] ?? 0) + came - went).toBeCloseTo(charge.at(-1) ?? Number.NaN, 4);
    }),
    settings,
  );
});

test('a battery is never fuller than full, however long the way down', () => {
  fc.assert(
    fc.property(any, (legs) => {
      for (const each of line(onRoute(legs), 'legs.charge')) {
        expect(each).toBeLessThanOrEqual(110 + 1e-6);
      }
    }),
    settings,
  );
});

test('over a hill and down again never takes less than the level road', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 3, max: 40 }),
      fc.integer({ min: 25, max: 70 }),
      fc.integer({ min: 1, max: 3000 }),
      (distance, speed, climb) => {
        const leg = { distance, speed, temperature: 68, headwind: 0 };
        // Air is a little thinner higher up; with so low a drag that saves less than a hundredth.
        const low = { 'vehicle.dragArea': '1 ft²', 'trailer.dragArea': '0 ft²' };
        const hill = onRoute(
          [
            { ...leg, climb },
            { ...leg, climb: -climb },
          ],
          low,
        ).values['route.energy'];
        const flat = { ...leg, climb: 0 };
        const level = onRoute([flat, flat], low).values['route.energy'];
        expect(hill.lo).toBeGreaterThanOrEqual(level.lo * 0.99);
      },
    ),
    settings,
  );
});

test('heavier, more wind ahead, more drag or less charge never leaves more', () => {
  const worse: readonly FactsGiven[] = [
    { 'trailer.dryWeight': '5,200 lb' },
    { 'trailer.dragArea': '30 ft²' },
    { 'trip.startCharge': '90 %' },
    { 'vehicle.driveEfficiency': '85 %' },
    { 'vehicle.batteryHealth': '90 %' },
  ];
  fc.assert(
    fc.property(upward, fc.constantFrom(...worse), (drawn, more) => {
      // With less in the battery a full one is less full: without stops, and without a tail wind
      // that would push the rig along.
      const legs = drawn.map(({ chargeTo: _, ...leg }) => ({
        ...leg,
        headwind: Math.abs(leg.headwind),
      }));
      const [before, after] = [onRoute(legs), onRoute(legs, more)];
      expect(after.values['route.lowest'].lo).toBeLessThanOrEqual(
        before.values['route.lowest'].lo + 1e-6,
      );
      const windier = onRoute(legs.map((leg) => ({ ...leg, headwind: leg.headwind + 5 })));
      expect(windier.values['route.energy'].lo).toBeGreaterThanOrEqual(
        before.values['route.energy'].lo - 1e-6,
      );
    }),
    settings,
  );
});

test('miles and pounds or kilometers and kilograms, the verdict is the same', () => {
  fc.assert(
    fc.property(any, (legs) => {
      const point = (value: number, unit: string) => ({ lo: value, hi: value, unit });
      const metric = legs.map((leg) => ({
        distance: point(leg.distance * 1.609344, 'km'),
        speed: point(leg.speed * 1.609344, 'km/h'),
        climb: point(leg.climb * 0.3048, 'm'),
        temperature: point((leg.temperature - 32) / 1.8, '°C'),
        headwind: point(leg.headwind * 1.609344, 'km/h'),
        ...(leg.chargeTo !== undefined && { chargeTo: `${leg.chargeTo} %` }),
      }));
      const converted = judge({
        ...rig,
        'vehicle.curbWeight': point(6500 * 0.45359237, 'kg'),
        'route.legs': metric,
      });
      const before = onRoute(legs);
      expect(converted.outcome).toBe(before.outcome);
      expect(converted.values['route.energy'].lo).toBeCloseTo(before.values['route.energy'].lo, 4);
    }),
    settings,
  );
});

test('over ranges every point lies inside', () => {
  const share = fc.integer({ min: 0, max: 100 }).map((each) => each / 100);
  fc.assert(
    fc.property(any, share, share, share, (legs, a, b, c) => {
      const wide = onRoute(legs, {
        'vehicle.dragArea': '11–14 ft²',
        'vehicle.regeneration': '40–65 %',
        'rig.rolling': '0.009–0.014',
      }).values;
      const at = onRoute(legs, {
        'vehicle.dragArea': `${11 + 3 * a} ft²`,
        'vehicle.regeneration': `${40 + 25 * b} %`,
        'rig.rolling': `${0.009 + 0.005 * c}`,
      }).values;
      for (const name of ['route.energy', 'route.lowest', 'brakes.power', 'power.most'] as const) {
        expect(at[name].lo).toBeGreaterThanOrEqual(wide[name].lo - 1e-5);
        expect(at[name].hi).toBeLessThanOrEqual(wide[name].hi + 1e-5);
      }
    }),
    { ...settings, numRuns: 25 },
  );
});

test('every rig that is usual for its body and front lies inside what is reckoned from them', () => {
  const share = fc.integer({ min: 0, max: 100 }).map((each) => each / 100);
  const pickup: FactsGiven = {
    'vehicle.usableBattery': '110 kWh',
    'vehicle.body': 'pickup',
    'vehicle.curbWeight': '6,800 lb',
    'vehicle.regeneration': '55 %',
    'solo.consumption': '0.55 kWh/mi',
    'solo.speed': '65 mph',
    'trailer.dryWeight': '4,900 lb',
    'trailer.frontalArea': '70 ft²',
    'trailer.nose': 'rounded',
  };
  fc.assert(
    fc.property(any, share, share, share, (legs, a, b, c) => {
      const usual = judge({ ...pickup, 'route.legs': rows(legs) }).values;
      const one = judge({
        ...pickup,
        'vehicle.dragArea': `${11 + 4 * a} ft²`,
        'trailer.dragArea': `${70 * (0.28 + 0.17 * b)} ft²`,
        'rig.rolling': `${0.009 + 0.006 * c}`,
        'route.legs': rows(legs),
      }).values;
      for (const name of ['route.energy', 'route.lowest', 'power.most', 'brakes.power'] as const) {
        expect(one[name].lo).toBeGreaterThanOrEqual(usual[name].lo - 1e-4);
        expect(one[name].hi).toBeLessThanOrEqual(usual[name].hi + 1e-4);
      }
    }),
    { ...settings, numRuns: 25 },
  );
});

test('whatever of battery, weight, drag or way is not known, it is never said to get there', () => {
  const needed = ['vehicle.usableBattery', 'vehicle.curbWeight', 'trailer.dryWeight'];
  const drag = ['trailer.dragArea', 'route.legs'];
  for (const id of [...needed, ...drag]) {
    const facts: FactsGiven = {
      ...rig,
      'route.legs': [{ distance: '10 mi', speed: '50 mph' }],
      [id]: id === 'route.legs' ? [{ distance: 'unknown', speed: '50 mph' }] : 'unknown',
    };
    expect(judge(facts).outcome).toBe('cannot-say');
    const { [id]: _, ...silent } = facts;
    expect(judge(silent).outcome).toBe('cannot-say');
  }
});

test('a drive that is its own trial drive takes what the trial took', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 40, max: 70 }),
      fc.integer({ min: 6, max: 20 }),
      (speed, tenths) => {
        const { values } = judge({
          'vehicle.usableBattery': '110 kWh',
          'vehicle.body': 'pickup',
          'vehicle.curbWeight': '6,500 lb',
          'trailer.dryWeight': '4,500 lb',
          'trial.consumption': `${tenths / 10} kWh/mi`,
          'trial.speed': `${speed} mph`,
          'route.legs': [{ distance: '40 mi', speed: `${speed} mph` }],
        });
        expect(values['route.consumption'].lo).toBeCloseTo(tenths / 10, 5);
        expect(values['route.consumption'].hi).toBeCloseTo(tenths / 10, 5);
      },
    ),
    settings,
  );
});

test('without a trailer it takes what it is known to take without one', () => {
  fc.assert(
    fc.property(fc.integer({ min: 40, max: 70 }), (speed) => {
      const { values } = judge({
        'vehicle.usableBattery': '110 kWh',
        'vehicle.dragArea': '12 ft²',
        'rig.rolling': '0.011',
        'vehicle.curbWeight': '6,350 lb',
        'load.occupants': [{ weight: '150 lb' }],
        'trailer.dryWeight': '0 lb',
        'trailer.dragArea': '0 ft²',
        'solo.consumption': '0.6 kWh/mi',
        'solo.speed': `${speed} mph`,
        'route.legs': [{ distance: '40 mi', speed: `${speed} mph` }],
      });
      expect(values['route.consumption'].lo).toBeCloseTo(0.6, 5);
      expect(values['route.consumption'].hi).toBeCloseTo(0.6, 5);
    }),
    settings,
  );
});

test('the way grows by each leg, and the floor is the reserve and what the cold locks away', () => {
  fc.assert(
    fc.property(any, (legs) => {
      const { series, values } = judge({ ...rig, 'route.legs': rows(legs) });
      const of = (name: string) => series.legs?.lines[`legs.${name}`]?.ends ?? [];
      legs.forEach(({ distance }, i) => {
        const [from, to] = [of('way')[i]?.lo ?? Number.NaN, of('way')[i + 1]?.lo];
        expect(to).toBeCloseTo(from + distance, 5);
        const full = values['battery.full']?.lo ?? Number.NaN;
        expect(of('floor')[i]?.lo).toBeCloseTo(0.15 * full + (of('locked')[i]?.lo ?? 0), 5);
      });
      expect(of('way').at(-1)?.lo).toBeCloseTo(values['route.distance']?.lo ?? Number.NaN, 5);
    }),
    settings,
  );
});

const engines = ['plug-in-hybrid', 'hybrid', 'engine'];

test('what has an engine is never stopped for want of kilowatt-hours', () => {
  fc.assert(
    fc.property(any, fc.constantFrom(...engines), (legs, drive) => {
      const { 'vehicle.usableBattery': _, ...bare } = rig;
      const far = legs.map(({ chargeTo: _none, ...leg }) => ({
        ...leg,
        distance: leg.distance * 20,
      }));
      for (const battery of [undefined, '1 kWh', '14 kWh', 'unknown']) {
        const more = battery === undefined ? {} : { 'vehicle.usableBattery': battery };
        const facts = { ...bare, ...more, 'vehicle.drive': drive, 'route.legs': rows(far) };
        const { outcome, limits } = judge(facts);
        expect(limits.find(({ id }) => id === 'energy')?.state).toBe('ok');
        expect(outcome).not.toBe('does-not-go-like-this');
      }
    }),
    settings,
  );
});

test('the steeper the grade, the heavier the rig or the faster the way down, the more heat, for every drive', () => {
  const heat = (drive: string, grade: number, weight: number): number =>
    judge({
      ...rig,
      'vehicle.drive': drive,
      'trip.steepestGrade': `${grade} %`,
      'trailer.dryWeight': `${weight} lb`,
      'trip.distance': '5 mi',
    }).values['brakes.power'].hi;
  fc.assert(
    fc.property(
      fc.constantFrom('battery', ...engines),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 2000, max: 9000 }),
      (drive, grade, weight) => {
        expect(heat(drive, grade + 1, weight)).toBeGreaterThanOrEqual(heat(drive, grade, weight));
        expect(heat(drive, grade, weight + 500)).toBeGreaterThanOrEqual(heat(drive, grade, weight));
        expect(heat('engine', grade, weight)).toBeGreaterThanOrEqual(
          heat(drive, grade, weight) - 1e-9,
        );
      },
    ),
    settings,
  );
});

test('a way told as a whole takes what one level leg of it takes', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 3, max: 90 }),
      fc.integer({ min: 30, max: 70 }),
      (distance, speed) => {
        const sea = { ...rig, 'trip.startAltitude': '0 ft' };
        const leg = { distance: `${distance} mi`, speed: `${speed} mph` };
        const byLeg = judge({ ...sea, 'route.legs': [{ ...leg, temperature: '59 °F' }] }).values;
        const whole = judge({
          ...sea,
          'vehicle.auxiliaryPower': '0 W',
          'trip.distance': leg.distance,
          'trip.towSpeed': leg.speed,
        }).values;
        const still = judge({
          ...sea,
          'vehicle.auxiliaryPower': '0 W',
          'route.legs': [{ ...leg, temperature: '59 °F' }],
        }).values;
        expect(whole['route.energy'].lo).toBeCloseTo(still['route.energy'].lo, 6);
        expect(byLeg['route.energy'].lo).toBeGreaterThan(still['route.energy'].lo);
      },
    ),
    settings,
  );
});

test('the range to empty and the range with the reserve kept differ by the reserve', () => {
  const { values } = judge({ ...rig, 'trip.distance': '50 mi' });
  expect(values['range.towing'].lo).toBeCloseTo(values['range.toEmpty'].lo * 0.85, 5);
  const tank = judge({ ...rig, 'vehicle.drive': 'engine', 'vehicle.fuelTank': '26 gal' }).values;
  expect(tank['tank.toReserve'].lo).toBeCloseTo(tank['tank.toEmpty'].lo * 0.85, 5);
});
