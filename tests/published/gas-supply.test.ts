import { answerNow, gasSupply } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven) => answerNow(gasSupply, { facts, asOf: '2026-11-01' });
const valuesOf = (facts: FactsGiven) => judge(facts).values;

/** Filling density of propane by weight: 29 CFR 1910.110 (published). */
describe('cylinder fill, 29 CFR 1910.110 (published)', () => {
  test('47.6 lb of water at 42 % are the twenty pounds a cylinder is sold by', () => {
    const { lo, hi } = valuesOf({ 'cylinder.waterCapacity': '47.6 lb' })['cylinder.full'];
    expect(lo).toBeCloseTo(evaluate('47.6 * 0.42'), 6);
    expect(Math.round(hi)).toBe(20);
  });

  /**
   * (b)(19)(v) prints 79.877 gal for 100 gal of water, 42 %, specific gravity 0.510 at 60 °F and a
   * volume correction of 1.031 to 40 °F: 100 × 42 ÷ 0.510 ÷ 1.031 ÷ 100 = 79.877.
   */
  test('100 gal of water: the printed 79.877 gal, by our pounds and the printed gravity', () => {
    const water = evaluate('100 gallon to L').toNumber('L');
    const waterPounds = unit(water * 0.999016, 'kg').toNumber('lb');
    const full = valuesOf({ 'cylinder.waterCapacity': `${waterPounds} lb` })['cylinder.full'].lo;
    const gallons = full / (waterPounds / 100) / 0.51 / 1.031;
    expect(gallons).toBeCloseTo(79.877, 2);
  });

  test('the fill of a cylinder by weight is not the 80 % by volume of a tank: it is a little over', () => {
    const facts = { 'cylinder.fill': '20 lb', 'outside.temperature': '60 °F' };
    const { lo } = valuesOf(facts)['fill.share'];
    expect(lo).toBeGreaterThan(0.8);
    expect(lo).toBeLessThan(0.84);
  });
});

/** 91,502 Btu/gal, 21,548 Btu/lb, 4.20 lb/gal: LP-gas property tables, NFPA 58 annex (published). */
describe('energy tables (published)', () => {
  test('a pound is 21,548 Btu and a gallon 91,502 Btu, each by its own figure', () => {
    expect(valuesOf({ 'cylinder.fill': '30 lb' })['energy.aboard'].lo).toBe(646_440);
    const tank = { 'tank.waterCapacity': '10 gal', 'tank.gauge': '50 %' };
    expect(valuesOf(tank)['energy.aboard'].lo).toBeCloseTo(5 * 91_502, 4);
  });

  test('the three figures do not multiply out: they lie 1.2 % apart, and no more', () => {
    expect(91_502 / (21_548 * 4.2)).toBeCloseTo(1.011, 3);
  });

  /** Gross heat of combustion of propane, 2,219.2 kJ/mol at 25 °C; 44.0956 g/mol (handbook tables). */
  test('against the heat of combustion of propane from chemistry, within 1 %', () => {
    const kilojoules = evaluate('2219.2 / 0.0440956');
    const perPound = unit(kilojoules, 'kJ').toNumber('BTU') * 0.45359237;
    expect(perPound / 21_548).toBeCloseTo(1, 2);
  });
});

/** Antoine equation of propane, log10(bar) with kelvin, 230.6–320.7 K: NIST WebBook (from memory). */
describe('vapor pressure of pure propane', () => {
  const antoine = (fahrenheit: number): number => {
    const kelvin = unit(fahrenheit, 'degF').toNumber('K');
    const bar = evaluate('10^(3.98292 - 819.296 / (T - 24.417))', { T: kelvin });
    return unit(bar, 'bar').toNumber('psi') - 14.696;
  };
  const pressureAt = (fahrenheit: number) => {
    const facts = { 'cylinder.fill': '20 lb', 'outside.temperature': `${fahrenheit} °F` };
    return valuesOf(facts)['vapor.pressure'].lo;
  };

  /** CoolProp 8.0.0, pure propane (published equation of state, run). */
  test.each([
    [0, 23.7],
    [40, 63.9],
    [70, 110.2],
    [100, 173.9],
  ])('%d °F: %f psi, as CoolProp has it, and Antoine within 3 %%', (fahrenheit, psi) => {
    expect(pressureAt(fahrenheit)).toBeCloseTo(psi, 6);
    const absolute = (psi + 14.696) / (antoine(fahrenheit) + 14.696);
    expect(Math.abs(absolute - 1)).toBeLessThan(0.03);
  });

  test('at the normal boiling point nothing drives it out', () => {
    expect(pressureAt(-44)).toBeCloseTo(0, 6);
    expect(Math.abs(antoine(-43.8))).toBeLessThan(0.5);
  });
});

/** NFPA 54 sizing table as printed in an appliance manual (published): 60 ft, 11 inWC, 0.5 inWC drop. */
describe('gas pipe', () => {
  const capacity = (size: string, feet: number) =>
    valuesOf({ 'pipe.size': size, 'pipe.material': 'iron', 'pipe.length': `${feet} ft` })[
      'pipe.capacity'
    ].lo;

  test('120,000 Btu/h over 60 ft: half-inch carries 103,000 and will not do, three-quarter 217,000', () => {
    const stateOf = (size: string) =>
      judge({
        'pipe.size': size,
        'pipe.material': 'iron',
        'pipe.length': '60 ft',
        'gas.appliances': [{ input: '120,000 Btu/h' }],
      }).limits.find(({ id }) => id === 'pipe')?.state;
    expect(capacity('half-inch', 60)).toBe(103_000);
    expect(capacity('three-quarter-inch', 60)).toBe(217_000);
    expect([stateOf('half-inch'), stateOf('three-quarter-inch')]).toEqual(['stop', 'ok']);
  });

  /**
   * The low-pressure equation, D = Q^0.381 ÷ (19.17 (ΔH ÷ (Cr L))^0.206) with Cr 1.2462 for propane
   * (from memory), 36.38 ft³/gal, inner diameters of schedule-40 pipe 0.622 and 0.824 in: an own way
   * to the same figure, within a tenth, and the same fall with length.
   */
  test.each([
    ['half-inch', 0.622],
    ['three-quarter-inch', 0.824],
  ])('%s against the low-pressure equation, within a tenth', (size, inches) => {
    const byEquation = (feet: number): number =>
      evaluate('(19.17 * D * (0.5 / (1.2462 * L))^0.206)^(1 / 0.381) * 91502 / 36.38', {
        D: inches,
        L: feet,
      });
    expect(Math.abs(capacity(size, 60) / byEquation(60) - 1)).toBeLessThan(0.1);
    expect(capacity(size, 120) / capacity(size, 60)).toBeCloseTo(
      byEquation(120) / byEquation(60),
      3,
    );
  });
});

/** A maker's table (published): a 100 lb cylinder with 10 lb left at 0 °F gives 28,000 Btu/h. */
test('vaporization: the maker’s 28,000 Btu/h lie inside what the rule gives, and near its middle', () => {
  const values = valuesOf({
    'cylinder.fill': '100 lb',
    'cylinder.tare': '70 lb',
    'cylinder.scaleWeight': '80 lb',
    'outside.temperature': '0 °F',
  });
  expect(values['vapor.least'].hi).toBeLessThan(28_000);
  expect(values['vapor.most'].lo).toBeGreaterThan(28_000);
  expect(values['vapor.rule'].lo / 28_000).toBeGreaterThan(0.7);
  expect(values['vapor.rule'].lo / 28_000).toBeLessThan(1.4);
});

test('that cylinder starves at a lasting 45,000 Btu/h; two full thirties at 20 °F with a common furnace do not', () => {
  const stateOf = (facts: FactsGiven) =>
    judge(facts).findings.find(({ id }) => id === 'vaporization')?.level;
  const nearlyEmpty = {
    'cylinder.fill': '100 lb',
    'cylinder.tare': '70 lb',
    'cylinder.scaleWeight': '80 lb',
    'outside.temperature': '0 °F',
  };
  const lasting = (input: string) => ({ ...nearlyEmpty, 'gas.appliances': [{ input }] });
  expect(stateOf(lasting('45,000 Btu/h'))).toBe('stop');
  expect(stateOf(lasting('28,000 Btu/h'))).toBe('care');
  const thirties = { 'cylinder.fill': '30 lb', 'cylinder.spare': '1', 'cylinder.filled': 'yes' };
  const furnace = { 'furnace.input': '30,000 Btu/h', 'furnace.duty': '60 %' };
  expect(stateOf({ ...thirties, ...furnace, 'outside.temperature': '20 °F' })).toBe('ok');
});

/** 30,000 Btu/h for 11 h at 60 % is 198,000 Btu; an energy balance in kilowatt-hours by mathjs. */
test('a night of furnace in kilowatt-hours closes with the gas it takes', () => {
  const values = valuesOf({
    'cylinder.fill': '20 lb',
    'furnace.input': '30,000 Btu/h',
    'furnace.hours': '11 h',
    'furnace.duty': '60 %',
  });
  const kilowattHours = unit(30_000, 'BTU').toNumber('kWh') * 11 * 0.6;
  const gas = unit(values['furnace.gasNight'].lo * 21_548, 'BTU').toNumber('kWh');
  expect(gas).toBeCloseTo(kilowattHours, 5);
});

/**
 * The month on the collar held against the calendar of the machine: the day is stamped nowhere, so
 * both ends of that month are. That a cylinder is good for 12 years, 7 after an S and 5 after an E is
 * from memory, after 49 CFR 180.209.
 */
describe('the date on a cylinder’s collar', () => {
  const dated = (year: number, month: number, asOf: string, kind = 'made') =>
    answerNow(gasSupply, {
      facts: {
        'cylinder.stampYear': `${year}`,
        'cylinder.stampMonth': `${month}`,
        'cylinder.dateKind': kind,
      },
      asOf,
    });
  const levelOf = (...told: Parameters<typeof dated>) =>
    dated(...told).findings.find(({ id }) => id === 'cylinder-date')?.level;

  test('is as long ago as the calendar says, from either end of its month', () => {
    const now = Date.UTC(2026, 10, 1);
    const years = (from: number): number => (now - from) / 86_400_000 / 365.2425;
    for (let month = 1; month <= 12; month += 1) {
      for (const year of [1998, 2014, 2021, 2025]) {
        const { lo, hi } = dated(year, month, '2026-11-01').values['cylinder.sinceStamp'];
        expect(Math.abs(hi - years(Date.UTC(year, month - 1, 1)))).toBeLessThan(0.01);
        expect(Math.abs(lo - years(Date.UTC(year, month, 1)))).toBeLessThan(0.01);
      }
    }
  });

  test.each([
    ['2026-10-31', 'care'],
    ['2026-11-15', 'if'],
    ['2026-12-02', 'stop'],
  ])('made in November 2014, on %s: %s', (asOf, level) => {
    expect(levelOf(2014, 11, asOf)).toBe(level);
  });

  test.each([
    ['requalified', 'ok'],
    ['requalified-s', 'care'],
    ['requalified-e', 'stop'],
  ])('June 2020, %s: %s', (kind, level) => {
    expect(levelOf(2020, 6, '2026-11-01', kind)).toBe(level);
  });

  test('without its month it is any of the year, and one that lies ahead was misread', () => {
    const facts = { 'cylinder.stampYear': '2020' };
    const { lo, hi } = answerNow(gasSupply, { facts, asOf: '2026-11-01' }).values[
      'cylinder.sinceStamp'
    ];
    expect([Math.floor(lo), Math.floor(hi)]).toEqual([5, 6]);
    const ahead = dated(2027, 1, '2026-11-01');
    expect(ahead.findings.find(({ id }) => id === 'stamp-misread')?.level).toBe('unknown');
  });

  test('years that are past stay past, whatever month and year are told beside', () => {
    for (const stampYear of ['2024', '2010 – 2026', 'unknown']) {
      const facts = {
        'cylinder.age': '13 yr',
        'cylinder.dateKind': 'made',
        'cylinder.stampYear': stampYear,
      };
      const { findings } = answerNow(gasSupply, { facts, asOf: '2026-11-01' });
      expect(findings.find(({ id }) => id === 'cylinder-date')?.level, stampYear).toBe('stop');
    }
  });
});

test('a pipe shorter than any table prints carries no more than the shortest that is printed', () => {
  const capacity = (length: string) =>
    valuesOf({ 'pipe.size': 'half-inch', 'pipe.material': 'iron', 'pipe.length': length })[
      'pipe.capacity'
    ].hi;
  expect(capacity('5 ft')).toBe(capacity('10 ft'));
  expect(capacity('10 ft')).toBeGreaterThan(capacity('11 ft'));
});
