import { shorePower } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(shorePower, { facts, asOf: '2026-11-01' });
const order = ['may-run', 'may-run-with-care', 'cannot-say', 'must-not-run'];
const worse = (facts: FactsGiven) => order.indexOf(judge(facts).outcome);

const watts = fc.integer({ min: 0, max: 3_000 });
const hours = fc.constantFrom(0.2, 2, 3, 8);
const appliance = fc.record({ power: watts, hours, leg: fc.constantFrom(1, 2) });
const appliances = fc.array(appliance, { maxLength: 5 });
type Appliance = { readonly power: number; readonly hours: number; readonly leg?: number };

const rows = (all: readonly Appliance[]) =>
  all.map(({ power, hours: h, leg }) => ({
    power: `${power} W`,
    hours: `${h} h`,
    ...(leg !== undefined && { leg: String(leg) }),
  }));

const outlets = ['household-15', 'household-20', 'trailer-30', 'four-pin-50'];
const place = fc.record({
  outlet: fc.constantFrom(...outlets),
  inlet: fc.constantFrom('30', '50'),
});
const plugged = ({ outlet, inlet }: { outlet: string; inlet: string }, all: Appliance[]) => ({
  'supply.outlet': outlet,
  'trailer.inlet': inlet,
  'shore.appliances': rows(all),
});
const run = { numRuns: 100, seed };

test('one more appliance never betters the verdict', () => {
  fc.assert(
    fc.property(place, appliances, appliance, (at, all, more) => {
      expect(worse(plugged(at, [...all, more]))).toBeGreaterThanOrEqual(worse(plugged(at, all)));
    }),
    run,
  );
});

test('a longer cord never betters the verdict, and a thicker one never loses more', () => {
  const gauges = ['16', '14', '12', '10', '8', '6'];
  fc.assert(
    fc.property(
      place,
      appliances,
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: 0, max: 4 }),
      (at, all, feet, thin) => {
        const cord = (gauge: string | undefined, length: number) => ({
          ...plugged(at, all),
          'cord.gauge': gauge ?? '16',
          'cord.length': `${length} ft`,
          'voltage.outlet': '118 V',
        });
        const gauge = gauges[thin];
        expect(worse(cord(gauge, feet + 50))).toBeGreaterThanOrEqual(worse(cord(gauge, feet)));
        const lost = (g: string | undefined) => judge(cord(g, feet)).values['cord.drop']?.lo ?? -1;
        expect(lost(gauges[thin + 1])).toBeLessThanOrEqual(lost(gauge));
      },
    ),
    run,
  );
});

test('what may run with legs unknown may run however they are spread', () => {
  fc.assert(
    fc.property(fc.array(appliance, { maxLength: 4 }), (all) => {
      const at = { outlet: 'four-pin-50', inlet: '50' };
      const open = all.map(({ power, hours: h }) => ({ power, hours: h }));
      const told = judge(plugged(at, all));
      const untold = judge(plugged(at, open));
      if (untold.outcome === 'may-run') expect(told.outcome).toBe('may-run');
      const within = untold.values['leg.fuller'];
      const fuller = told.values['leg.fuller'];
      expect(fuller?.lo).toBeGreaterThanOrEqual((within?.lo ?? Infinity) - 1e-9);
      expect(fuller?.hi).toBeLessThanOrEqual((within?.hi ?? -Infinity) + 1e-9);
    }),
    run,
  );
});

test('nothing is lost between the legs: together they carry what runs', () => {
  fc.assert(
    fc.property(place, appliances, (at, all) => {
      const { values } = judge(plugged(at, all));
      const both = (values['legOne.current']?.lo ?? 0) + (values['legTwo.current']?.lo ?? 0);
      const sum = all.reduce((total, { power }) => total + power, 0) / 120;
      expect(both).toBeCloseTo(sum, 5);
    }),
    run,
  );
});

test('higher up a generator never gives more', () => {
  const feet = fc.integer({ min: -500, max: 14_000 });
  fc.assert(
    fc.property(feet, feet, (a, b) => {
      const gives = (altitude: number) =>
        judge({
          'supply.outlet': 'generator',
          'generator.power': '3,000 W',
          'generator.altitude': `${altitude} ft`,
        }).values['generator.available']?.lo ?? -1;
      expect(gives(Math.max(a, b))).toBeLessThanOrEqual(gives(Math.min(a, b)));
    }),
    run,
  );
});

const dangers: readonly FactsGiven[] = [
  { 'supply.outlet': 'dryer' },
  { 'supply.outlet': 'welder' },
  { 'supply.outlet': 'no-label' },
  { 'voltage.outlet': '240 V' },
  { 'voltage.outlet': '95 V', 'voltage.secondLeg': '125 V' },
  { 'lights.brighten': 'yes' },
  { 'skin.tingles': 'yes' },
  { 'plug.hot': 'yes' },
  { 'outlet.tester': 'open-ground' },
  { 'outlet.tester': 'open-neutral' },
  { 'outlet.tester': 'reversed' },
  { 'generator.place': 'near-openings' },
  { 'generator.place': 'enclosed' },
];

test.each(dangers)('a danger is never milder than stop, whatever else is well: %j', (danger) => {
  for (const inlet of ['30', '50', 'unknown']) {
    const well = {
      'supply.outlet': 'trailer-30',
      'trailer.inlet': inlet,
      'voltage.outlet': '120 V',
      'outlet.tester': 'correct',
      'shore.appliances': [{ power: '100 W', hours: '1 h' }],
    };
    expect(judge({ ...well, ...danger }).outcome).toBe('must-not-run');
  }
});

test('a missing rating never turns into “may run”', () => {
  const load = { 'shore.appliances': [{ power: '1,560 W', hours: '5 h' }] };
  for (const outlet of ['generator', 'unknown']) {
    const { outcome } = judge({ 'supply.outlet': outlet, 'trailer.inlet': '30', ...load });
    expect(outcome).toBe('cannot-say');
  }
});
