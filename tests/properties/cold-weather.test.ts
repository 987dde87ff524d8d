import { coldWeather } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(coldWeather, { facts, asOf: '2026-12-01' });
const order = ['may-stay', 'may-stay-with-care', 'cannot-say', 'must-not-stay-so'];
const worse = (facts: FactsGiven) => order.indexOf(judge(facts).outcome);

const night = (outside: number, inside: number, hours: number): FactsGiven => ({
  'outside.temperature': `${outside} °F`,
  'inside.temperature': `${inside} °F`,
  'body.length': '22 ft',
  'body.insulation': 'usual',
  'windows.area': '45 ft²',
  'windows.glazing': 'double-pane',
  'furnace.input': '30,000 Btu/h',
  'furnace.hours': `${hours} h`,
  'furnace.blowerCurrent': '6 A',
  'cylinder.fill': '30 lb',
  'trip.nights': '2',
  'battery.chemistry': 'agm',
  'battery.capacity': '100 Ah',
  'battery.temperature': '40 °F',
  'water.state': 'in-use',
  'trailer.use': 'lived-in',
  'tanks.place': 'enclosed',
});
const cold = fc.integer({ min: -30, max: 55 });
const warm = fc.integer({ min: 50, max: 75 });
const hours = fc.integer({ min: 4, max: 24 });
const some = fc.integer({ min: 0, max: 15 });

test('a colder night, a warmer room or more hours never make it better, nor save gas', () => {
  fc.assert(
    fc.property(cold, warm, hours, some, (outside, inside, set, more) => {
      const now = judge(night(outside, inside, set));
      const harder = [
        night(outside - more, inside, set),
        night(outside, Math.min(85, inside + more), set),
        night(outside, inside, Math.min(24, set + more)),
      ].map(judge);
      for (const { outcome, values } of harder) {
        expect(order.indexOf(outcome)).toBeGreaterThanOrEqual(order.indexOf(now.outcome));
        const [less, most] = [now.values['furnace.gasNight'], values['furnace.gasNight']];
        expect(most.lo).toBeGreaterThanOrEqual(less.lo - 1e-6);
        expect(most.hi).toBeGreaterThanOrEqual(less.hi - 1e-6);
      }
    }),
    { numRuns: 80, seed },
  );
});

test('better walls never lose more', () => {
  fc.assert(
    fc.property(cold, warm, (outside, inside) => {
      const loss = (make: string) =>
        judge({ ...night(outside, inside, 10), 'body.insulation': make }).values['heat.loss'];
      const [thin, usual, four] = ['thin', 'usual', 'four-season'].map(loss);
      expect(thin?.hi).toBeGreaterThanOrEqual(usual?.hi ?? Number.NaN);
      expect(usual?.hi).toBeGreaterThanOrEqual(four?.hi ?? Number.NaN);
      expect(usual?.lo).toBeGreaterThanOrEqual(four?.lo ?? Number.NaN);
    }),
    { numRuns: 60, seed },
  );
});

test('a furnace, a cylinder or a battery of which nothing is known never comes to “may stay”', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 33, max: 55 }),
      fc.constantFrom('furnace.input', 'cylinder.fill', 'battery.capacity', 'outside.temperature'),
      (outside, fact) => {
        const { outcome } = judge({ ...night(outside, 65, 8), [fact]: 'unknown' });
        expect(['cannot-say', 'must-not-stay-so']).toContain(outcome);
      },
    ),
    { numRuns: 60, seed },
  );
});

const states = ['in-use', 'drained', 'winterised'];
const uses = ['lived-in', 'stands-unused'];
const places = ['heated', 'enclosed', 'exposed'];
const every = [40, 27, 5].flatMap((degrees) =>
  states.flatMap((state) =>
    uses.flatMap((use) => places.map((place) => [degrees, state, use, place] as const)),
  ),
);

test.each(every)('water that may burst its lines is stop: %d °F, %s, %s, %s', (...told) => {
  const [degrees, state, use, place] = told;
  const { outcome } = judge({
    'outside.temperature': `${degrees} °F`,
    'water.state': state,
    'trailer.use': use,
    'tanks.place': place,
  });
  const wet = degrees <= 32 && state === 'in-use';
  const kept =
    use === 'lived-in' && (place === 'heated' || (place === 'enclosed' && degrees >= 20));
  if (wet && !kept) expect(outcome).toBe('must-not-stay-so');
  else if (wet || (degrees <= 32 && state === 'drained'))
    expect(outcome).toBe('may-stay-with-care');
  else expect(outcome).toBe('may-stay');
});

test('a flame for warmth is stop, whatever the rest', () => {
  fc.assert(
    fc.property(cold, warm, hours, (outside, inside, set) => {
      const facts = { ...night(outside, inside, set), 'heat.portable': 'yes' };
      expect(judge(facts).outcome).toBe('must-not-stay-so');
    }),
    { numRuns: 40, seed },
  );
});

test('°F or °C, pounds or kilograms: the verdict is the same', () => {
  fc.assert(
    fc.property(cold, warm, hours, (outside, inside, set) => {
      const celsius = (degrees: number) => (degrees - 32) / 1.8;
      const exactly = (value: number, unit: string) => ({ lo: value, hi: value, unit });
      const metric: FactsGiven = {
        ...night(outside, inside, set),
        'outside.temperature': exactly(celsius(outside), '°C'),
        'inside.temperature': exactly(celsius(inside), '°C'),
        'cylinder.fill': exactly(30 * 0.45359237, 'kg'),
      };
      expect(worse(metric)).toBe(worse(night(outside, inside, set)));
    }),
    { numRuns: 60, seed },
  );
});
