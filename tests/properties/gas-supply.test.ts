import { gasSupply } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(gasSupply, { facts, asOf: '2026-11-01' });
const order = [
  'may-go-ahead',
  'may-go-ahead-with-care',
  'may-go-ahead-if',
  'cannot-say',
  'must-not-go-ahead',
];
const worse = (facts: FactsGiven) => order.indexOf(judge(facts).outcome);

const inlets = ['11-inwc', 'cylinder-pressure', 'other-gas', 'unreadable'];
const regulators = ['none', 'trim', 'high-pressure'];
const points = ['after-regulator', 'trailer-cylinder', 'separate-cylinder'];
const adapters = ['no', 'yes'];

const connection = (inlet: string, regulator: string, point: string, adapter: string) => ({
  'appliance.inlet': inlet,
  'appliance.ownRegulator': regulator,
  'supply.point': point,
  'supply.adapter': adapter,
});

/**
 * What a careful fitter would let stand, told apart from the table: no adapter, and either 11 inWC
 * without a regulator that wants more, after the trailer's regulator; or a regulator made for a
 * cylinder, at a cylinder; and nothing at all where nobody knows what the plate said.
 */
function mayStand(inlet: string, regulator: string, point: string, adapter: string): boolean {
  if (adapter === 'yes' || inlet === 'unreadable' || inlet === 'other-gas') return false;
  const made = regulator === 'high-pressure';
  if (point === 'after-regulator') return inlet === '11-inwc' && !made;
  return made;
}

const every = inlets.flatMap((inlet) =>
  regulators.flatMap((regulator) =>
    points.flatMap((point) =>
      adapters.map((adapter) => [inlet, regulator, point, adapter] as const),
    ),
  ),
);

test.each(every)('a wrong connection is never softened: %s, %s, %s, adapter %s', (...told) => {
  const { outcome, findings } = judge(connection(...told));
  const level = findings.find(({ id }) => id === 'connection')?.level;
  if (mayStand(...told)) expect(['ok', 'care']).toContain(level);
  else expect([level, outcome]).toEqual(['stop', 'must-not-go-ahead']);
});

/** Words a person may have told: one, `unknown`, or nothing at all; and what each may stand for. */
const told = (words: readonly string[]) => [
  ...words.map((word) => ({ given: word, among: [word] })),
  { given: 'unknown', among: words },
  { given: undefined, among: words },
];

test('what may be wrong for want of a fact is never right and never mere care', () => {
  for (const inlet of told(inlets)) {
    for (const regulator of told(regulators)) {
      for (const point of told(points)) {
        const wrong = inlet.among.some((i) =>
          regulator.among.some((r) => point.among.some((p) => !mayStand(i, r, p, 'no'))),
        );
        const facts = {
          'supply.adapter': 'no',
          ...(inlet.given && { 'appliance.inlet': inlet.given }),
          ...(regulator.given && { 'appliance.ownRegulator': regulator.given }),
          ...(point.given && { 'supply.point': point.given }),
        };
        const { outcome } = judge(facts);
        if (wrong)
          expect(['cannot-say', 'must-not-go-ahead'], JSON.stringify(facts)).toContain(outcome);
      }
    }
  }
});

test('a plate nobody read: not even its own regulator on its own cylinder is let stand', () => {
  for (const point of points) {
    const facts = (inlet: string) => connection(inlet, 'high-pressure', point, 'no');
    expect(judge(facts('unreadable')).outcome).toBe('must-not-go-ahead');
    expect(['cannot-say', 'must-not-go-ahead']).toContain(judge(facts('unknown')).outcome);
  }
});

test('an open connection speaks none of its results: it names them, and what they hang on', () => {
  for (const point of [...points, 'unknown']) {
    const { findings } = judge({ 'appliance.inlet': '11-inwc', 'supply.point': point });
    const found = findings.find(({ id }) => id === 'connection');
    expect(found?.level).toBe('unknown');
    expect(found?.says).toMatch(/^The answer hangs on /);
    expect(found?.alternatives.length).toBeGreaterThan(1);
  }
});

test('whatever else is in order, a smell of gas or a portable flame indoors is stop', () => {
  for (const [inlet, regulator, point, adapter] of every) {
    const facts = connection(inlet, regulator, point, adapter);
    expect(judge({ ...facts, 'gas.smell': 'yes' }).outcome).toBe('must-not-go-ahead');
    expect(judge({ ...facts, 'appliance.usedAt': 'indoors' }).outcome).toBe('must-not-go-ahead');
  }
});

const pounds = fc.integer({ min: 1, max: 20 });
const hours = fc.integer({ min: 1, max: 24 });
const cold = fc.integer({ min: -40, max: 60 });

const night = (left: number, set: number, temperature: number): FactsGiven => ({
  'cylinder.fill': '20 lb',
  'cylinder.tare': '17 lb',
  'cylinder.scaleWeight': `${17 + left} lb`,
  'furnace.input': '25,000 Btu/h',
  'furnace.hours': `${set} h`,
  'furnace.duty': '50 %',
  'outside.temperature': `${temperature} °F`,
  'trip.nights': '2',
});

test('more gas never makes it worse, nor do fewer hours, nor a milder night', () => {
  fc.assert(
    fc.property(
      pounds,
      hours,
      cold,
      fc.integer({ min: 0, max: 10 }),
      (left, set, degrees, more) => {
        const now = worse(night(left, set, degrees));
        expect(worse(night(Math.min(20, left + more), set, degrees))).toBeLessThanOrEqual(now);
        expect(worse(night(left, Math.max(1, set - more), degrees))).toBeLessThanOrEqual(now);
        expect(worse(night(left, set, degrees + more))).toBeLessThanOrEqual(now);
      },
    ),
    { numRuns: 150, seed },
  );
});

test('another appliance never makes the gas last longer, or the cylinder keep up better', () => {
  fc.assert(
    fc.property(pounds, hours, fc.integer({ min: 0, max: 60_000 }), (left, set, input) => {
      const facts = night(left, set, 20);
      const more = { ...facts, 'gas.appliances': [{ input: `${input} Btu/h`, hours: '1 h' }] };
      const [before, after] = [judge(facts).values, judge(more).values];
      expect(after['gas.days'].lo).toBeLessThanOrEqual(before['gas.days'].lo + 1e-9);
      expect(worse(more)).toBeGreaterThanOrEqual(worse(facts));
    }),
    { numRuns: 150, seed },
  );
});

test('a smaller cylinder, full, never boils off more than a larger one', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 0, max: 60 }), (fill, more) => {
      const rule = (pounds: number) =>
        judge({ 'cylinder.fill': `${pounds} lb`, 'outside.temperature': '20 °F' }).values[
          'vapor.rule'
        ].lo;
      expect(rule(fill + more)).toBeGreaterThanOrEqual(rule(fill) - 1e-6);
    }),
    { numRuns: 100, seed },
  );
});

test('a tare nobody read never leaves gas enough', () => {
  fc.assert(
    fc.property(pounds, hours, (left, set) => {
      const { outcome } = judge({ ...night(left, set, 40), 'cylinder.tare': 'unknown' });
      expect(['cannot-say', 'must-not-go-ahead']).toContain(outcome);
    }),
    { numRuns: 100, seed },
  );
});

test('pounds or kilograms, Btu or watts, °F or °C: the verdict is the same', () => {
  fc.assert(
    fc.property(pounds, hours, cold, (left, set, degrees) => {
      const kilograms = (17 + left) * 0.45359237;
      const watts = (25_000 * 1055.05585262) / 3600;
      const metric: FactsGiven = {
        ...night(left, set, degrees),
        'cylinder.scaleWeight': { lo: kilograms, hi: kilograms, unit: 'kg' },
        'furnace.input': { lo: watts, hi: watts, unit: 'W' },
        'outside.temperature': {
          lo: (degrees - 32) / 1.8,
          hi: (degrees - 32) / 1.8,
          unit: '°C',
        },
      };
      expect(judge(metric).outcome).toBe(judge(night(left, set, degrees)).outcome);
    }),
    { numRuns: 100, seed },
  );
});

test('what boils off along the temperatures is what boils off once one of them is forecast', () => {
  const cylinder = {
    'cylinder.fill': '30 lb',
    'cylinder.scaleWeight': '38 lb',
    'cylinder.tare': '25 lb',
  };
  const { boil } = judge(cylinder).series;
  const of = (name: string) => boil?.lines[name]?.ends ?? [];
  const temperatures = of('boil.temperature');
  expect(temperatures.map(({ lo }) => Math.round(lo))).toEqual([
    -20, -15, -10, -5, 0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60,
  ]);
  temperatures.forEach(({ lo }, i) => {
    const { values } = judge({ ...cylinder, 'outside.temperature': `${lo} °F` });
    expect(of('boil.least')[i]?.lo).toBeCloseTo(values['vapor.least']?.lo ?? Number.NaN, 2);
    expect(of('boil.most')[i]?.hi).toBeCloseTo(values['vapor.most']?.hi ?? Number.NaN, 2);
  });
});
