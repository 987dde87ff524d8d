import { answerNow, shorePower } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven) => answerNow(shorePower, { facts, asOf: '2026-11-01' });
const valuesOf = (facts: FactsGiven) => judge(facts).values;
const powerOf = (outlet: string, inlet: string) =>
  valuesOf({ 'supply.outlet': outlet, 'trailer.inlet': inlet })['supply.power'].lo;

/**
 * NEC 551.73, worked example (published): 3 × 9,600 + 30 × 3,600 + 9 × 2,400 = 158,400 VA, of which
 * 41 % count, 64,944 VA. The 9,600 VA of a 50 A site are those of the edition the example is from.
 */
test('the sites of the worked park example: 30 A are 3,600 VA and 20 A are 2,400 VA', () => {
  const [thirty, twenty] = [powerOf('trailer-30', '30'), powerOf('household-20', '30')];
  const park = 3 * 9_600 + 30 * thirty + 9 * twenty;
  expect(park).toBe(158_400);
  expect(park * 0.41).toBeCloseTo(64_944, 6);
});

/** NEC 551 (from memory): a 50 A, 120/240 V site is 12,000 VA. */
test('two legs of 50 A are 12,000 VA, and that is 50 A at 240 V', () => {
  expect(powerOf('four-pin-50', '50')).toBe(12_000);
  expect(unit(50, 'A').toNumber('A') * unit(240, 'V').toNumber('V')).toBe(12_000);
});

/** NEC 210 (from memory): a continuous load may take 80 % of the rating: 1,440 W of 15 A at 120 V. */
test.each([
  ['household-15', 1_440],
  ['household-20', 1_920],
  ['trailer-30', 2_880],
])('%s gives %d W for three hours and more, and a watt more is over', (outlet, watts) => {
  const stateAt = (power: number, hours: string) =>
    judge({
      'supply.outlet': outlet,
      'trailer.inlet': '30',
      'shore.appliances': [{ power: `${power} W`, hours }],
    }).limits.find(({ id }) => id === 'lasting-load')?.state;
  const facts = { 'supply.outlet': outlet, 'trailer.inlet': '30' };
  expect(valuesOf(facts)['supply.lasting'].lo).toBeCloseTo(watts, 6);
  expect(stateAt(watts, '3 h')).toBe('ok');
  expect(stateAt(watts + 1, '3 h')).toBe('stop');
  expect(stateAt(watts + 1, '2.9 h')).toBe('ok');
});

/** 100 ft of 16 AWG at 4.99 Ω per 1,000 ft and 4 A: 3.992 V, a worked example of a training text (published). */
describe('voltage drop of a cord', () => {
  const drop = (gauge: string, feet: number, watts: number) =>
    valuesOf({
      'supply.outlet': 'trailer-30',
      'trailer.inlet': '30',
      'cord.gauge': gauge,
      'cord.length': `${feet} ft`,
      'shore.appliances': [{ power: `${watts} W`, hours: '1 h' }],
    })['cord.drop'].lo;

  test('the worked example: 3.992 V, printed as 4.0 V', () => {
    expect(drop('16', 100, 480)).toBeCloseTo(3.992, 9);
  });

  /**
   * Wire by its size: ASTM B258 diameters, 0.005 in × 92^((36 − n)/39), and copper of 1.7241 µΩ·cm
   * at 20 °C, +0.393 % a kelvin to 75 °C (International Annealed Copper Standard; published, the
   * figures from memory). The table's stranded rows lie a few per cent above the solid wire.
   */
  test.each([14, 12, 10, 8, 6])('%d AWG against the resistance of solid copper at 75 °C', (awg) => {
    const meters = unit(0.005 * 92 ** ((36 - awg) / 39), 'in').toNumber('m');
    const resistivity = 1.7241e-8 * (1 + 0.00393 * 55);
    const ohms = (resistivity * 2 * 100 * 0.3048) / ((Math.PI / 4) * meters * meters);
    const ratio = drop(String(awg), 100, 1_200) / (10 * ohms);
    expect(ratio).toBeGreaterThan(0.98);
    expect(ratio).toBeLessThan(1.05);
  });

  /**
   * Two legs with one neutral, solved as a network by mathjs: two sources of 120 V in series, the
   * same resistance R in each of the three wires, currents given. Unknown: the voltage lost between
   * the hot of the fuller leg and the neutral (Kirchhoff; published).
   */
  test.each([
    [28, 26],
    [40, 10],
    [30, 0],
  ])('two legs of %d and %d A lose what Kirchhoff says', (one, two) => {
    const ohms = (0.491 / 1000) * 100;
    // Unknowns: the drops in hot one, hot two and neutral; what the neutral carries is their difference.
    const network = {
      A: [
        [1 / ohms, 0, 0],
        [0, 1 / ohms, 0],
        [1, -1, -1],
      ],
      b: [one, two, 0],
    };
    const lost: number = evaluate('sum(lusolve(A, b)[[1, 3], 1])', network);
    const { values } = judge({
      'supply.outlet': 'four-pin-50',
      'trailer.inlet': '50',
      'cord.gauge': '6',
      'cord.length': '100 ft',
      'shore.appliances': [
        { power: `${one * 120} W`, hours: '1 h', leg: '1' },
        { power: `${two * 120} W`, hours: '1 h', leg: '2' },
      ],
    });
    expect(values['cord.drop'].lo).toBeCloseTo(lost, 9);
  });
});

/** Barometric share of the air, ISO 2533 (published): an engine that breathes loses about as much. */
test.each([
  [5_000, 0.8617],
  [10_000, 0.7386],
])('at %d ft the 3.5 %% rule lies within an eighth of the density of the air', (feet, density) => {
  const share = valuesOf({
    'supply.outlet': 'generator',
    'generator.power': '2,000 W',
    'generator.altitude': `${feet} ft`,
  })['generator.share'].lo;
  expect(share).toBeCloseTo(1 - (0.035 * feet) / 1000, 9);
  expect(Math.abs(share / density - 1)).toBeLessThan(1 / 8);
});
