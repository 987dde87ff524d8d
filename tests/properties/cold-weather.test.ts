import { coldWeather, gasSupply } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(coldWeather, { facts, asOf: '2026-12-01' });
const order = ['may-stay', 'may-stay-with-care', 'may-stay-if', 'cannot-say', 'must-not-stay-so'];
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
  'frost.hours': '24 h',
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

const states = ['in-use', 'drained', 'winterized'];
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
    'frost.hours': '12 h',
    'heater.isolated': 'yes',
    'heat.portable': 'no',
    'antifreeze.kind': 'none',
    'battery.chemistry': 'lifepo4',
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

const gasFacts = fc.record({
  'furnace.input': fc.constantFrom('20,000 Btu/h', '40,000 Btu/h', 'unknown'),
  'furnace.hours': fc.constantFrom('6 h', '12 h', '20 h', 'unknown'),
  'furnace.duty': fc.constantFrom('20 %', '60–90 %', '100 %', 'unknown'),
  'trip.nights': fc.constantFrom('1', '2', '5', 'unknown'),
  'outside.temperature': fc.constantFrom('-20 °F', '10 °F', '31 °F', '50 °F', 'unknown'),
  'inside.temperature': fc.constantFrom('55 °F', '70 °F', 'unknown'),
  'body.length': fc.constantFrom('14 ft', '26 ft', 'unknown'),
  'body.insulation': fc.constantFrom('thin', 'four-season', 'unknown'),
  'windows.area': fc.constantFrom('20 ft²', '60 ft²', 'unknown'),
  'windows.glazing': fc.constantFrom('single-pane', 'double-pane', 'unknown'),
  'night.gas': fc.constantFrom('3 lb', '9 lb', 'unknown'),
  'water.state': fc.constantFrom('in-use', 'drained', 'unknown'),
  'trailer.use': fc.constantFrom('lived-in', 'stands-unused', 'unknown'),
  'frost.hours': fc.constantFrom('2 h', '10 h', '24 h', 'unknown'),
  'cylinder.fill': fc.constantFrom('20 lb', '30 lb', 'unknown'),
  'cylinder.filled': fc.constantFrom('yes', 'no', 'unknown'),
  'cylinder.spare': fc.constantFrom('0', '1', 'unknown'),
});

test('the same facts are the same gas, the same hours and the same vaporization as in gas supply', () => {
  const rigs = gasFacts.chain((all) =>
    fc
      .tuple(...Object.keys(all).map(() => fc.integer({ min: 0, max: 2 })))
      .map((kept) =>
        Object.fromEntries(Object.entries(all).filter((_, index) => (kept[index] ?? 0) > 0)),
      ),
  );
  fc.assert(
    fc.property(rigs, (facts) => {
      const here = judge(facts);
      const there = answerNow(gasSupply, { facts, asOf: '2026-12-01' });
      const stateOf = (answer: typeof here | typeof there) => ({
        gas: answer.limits.find(({ id }) => id === 'gas')?.state,
        needed: answer.values['gas.neededPounds'],
        runs: answer.values['furnace.runs'],
        on: answer.values['furnace.on'],
        lasting: answer.values['demand.lasting'],
        alarms: answer.findings.find(({ id }) => id === 'alarms')?.level,
      });
      expect(stateOf(here)).toEqual(stateOf(there));
    }),
    { numRuns: 150, seed },
  );
});

test('a document with the option’s old name is read, and means the same', () => {
  const facts = { 'outside.temperature': '5 °F', 'heater.isolated': 'yes' };
  const now = judge({ ...facts, 'water.state': 'winterized' });
  expect(judge({ ...facts, 'water.state': 'winterised' }).findings).toEqual(now.findings);
});

const edges = [
  [20, 10, 'enclosed', 'watch'],
  [19.9, 10, 'enclosed', 'drain'],
  [32, 10, 'exposed', 'drain'],
  [32.1, 10, 'exposed', 'nothing-freezes'],
  [31, 4, 'exposed', 'lines'],
  [31, 4.1, 'exposed', 'drain'],
  [19.9, 1, 'exposed', 'drain'],
] as const;

test.each(edges)(
  'at the edge of frost: %d °F for %d h, %s: %s',
  (degrees, hours, place, wanted) => {
    const { choices } = judge({
      'outside.temperature': `${degrees} °F`,
      'frost.hours': `${hours} h`,
      'water.state': 'in-use',
      'trailer.use': 'lived-in',
      'tanks.place': place,
    });
    expect(choices['water.action']?.among).toEqual([wanted]);
  },
);

test.each([
  [50, 'ok'],
  [50.1, 'stop'],
])('lines blown out with %d psi: %s', (psi, wanted) => {
  const { limits } = judge({ 'blowout.pressure': `${psi} psi` });
  expect(limits.find(({ id }) => id === 'blow-out')?.state).toBe(wanted);
});
