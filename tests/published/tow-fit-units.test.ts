import ucum from '@lhncbc/ucum-lhc';
import { towFit } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { convert, unitOf, unitSymbols } from '@tarebook/rules/quantity';
import { unit as mathjsUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';

/**
 * Each unit with its base, then as mathjs and as UCUM (@lhncbc/ucum-lhc) write both. An empty name
 * means that the library has no such unit.
 */
const rows: readonly (readonly [
  ours: string,
  base: string,
  mathjs: string,
  mathjsBase: string,
  code: string,
  codeBase: string,
])[] = [
  ['lb', 'kg', 'lbm', 'kg', '[lb_av]', 'kg'],
  ['oz', 'kg', 'oz', 'kg', '[oz_av]', 'kg'],
  ['g', 'kg', 'g', 'kg', 'g', 'kg'],
  ['t', 'kg', 'tonne', 'kg', 't', 'kg'],
  ['kg', 'lb', 'kg', 'lbm', 'kg', '[lb_av]'],
  ['in', 'm', 'inch', 'm', '[in_i]', 'm'],
  ['ft', 'm', 'foot', 'm', '[ft_i]', 'm'],
  ['yd', 'm', 'yard', 'm', '[yd_i]', 'm'],
  ['mi', 'm', 'mile', 'm', '[mi_i]', 'm'],
  ['mm', 'm', 'mm', 'm', 'mm', 'm'],
  ['cm', 'm', 'cm', 'm', 'cm', 'm'],
  ['m', 'ft', 'm', 'foot', 'm', '[ft_i]'],
  ['km', 'm', 'km', 'm', 'km', 'm'],
  ['in²', 'm²', 'sqin', 'm^2', '[in_i]2', 'm2'],
  ['ft²', 'm²', 'sqft', 'm^2', '[ft_i]2', 'm2'],
  ['m²', 'ft²', 'm^2', 'sqft', 'm2', '[ft_i]2'],
  ['gal', 'L', 'gallon', 'litre', '[gal_us]', 'L'],
  ['qt', 'L', 'quart', 'litre', '[qt_us]', 'L'],
  ['L', 'gal', 'litre', 'gallon', 'L', '[gal_us]'],
  ['ft³', 'L', 'cuft', 'litre', '[ft_i]3', 'L'],
  ['min', 's', 'minute', 's', 'min', 's'],
  ['h', 's', 'hour', 's', 'h', 's'],
  ['d', 's', 'day', 's', 'd', 's'],
  ['s', 'h', 's', 'hour', 's', 'h'],
  ['mph', 'm/s', 'mile/hour', 'm/s', '[mi_i]/h', 'm/s'],
  ['km/h', 'm/s', 'km/hour', 'm/s', 'km/h', 'm/s'],
  ['m/s', 'mph', 'm/s', 'mile/hour', 'm/s', '[mi_i]/h'],
  ['Ah', 'A·s', 'A hour', 'A s', 'A.h', 'A.s'],
  ['mA', 'A', 'mA', 'A', 'mA', 'A'],
  ['mAh', 'A·s', 'mA hour', 'A s', 'mA.h', 'A.s'],
  ['kW', 'W', 'kW', 'W', 'kW', 'W'],
  ['Wh', 'W·s', 'W hour', 'J', 'W.h', 'J'],
  ['kWh', 'W·s', 'kW hour', 'J', 'kW.h', 'J'],
  ['Btu', 'W·s', 'BTU', 'J', '[Btu_IT]', 'J'],
  ['Btu/h', 'W', 'BTU/hour', 'W', '[Btu_IT]/h', 'W'],
  ['W', 'Btu/h', 'W', 'BTU/hour', 'W', '[Btu_IT]/h'],
  ['V', 'W/A', 'V', 'W/A', 'V', 'W/A'],
  ['A', 'W/V', 'A', 'W/V', 'A', 'W/V'],
  ['psi', 'kPa', 'psi', 'kPa', '[psi]', 'kPa'],
  ['kPa', 'bar', 'kPa', 'bar', 'kPa', 'bar'],
  ['bar', 'kPa', 'bar', 'kPa', 'bar', 'kPa'],
  // mathjs has no inch of water by this convention; UCUM prints 249.08891 Pa.
  ['inWC', 'kPa', '', '', "[in_i'H2O]", 'kPa'],
  ['lb·ft', 'kg·m', 'lbm foot', 'kg m', '[lb_av].[ft_i]', 'kg.m'],
  ['lb/gal', 'kg/L', 'lbm/gallon', 'kg/litre', '[lb_av]/[gal_us]', 'kg/L'],
  ['%', '1', '', '', '%', '1'],
  ['°', '1', 'deg', 'rad', 'deg', 'rad'],
  ['m³', 'L', 'm^3', 'litre', 'm3', 'L'],
  ['wk', 'd', 'week', 'day', 'wk', 'd'],
  // A mean Gregorian year; mathjs has the Julian one.
  ['yr', 'd', '', '', 'a_g', 'd'],
  ['mpg', 'km/L', 'mile/gallon', 'km/litre', '[mi_i]/[gal_us]', 'km/L'],
  ['lbf', 'N', 'lbf', 'N', '[lbf_av]', 'N'],
  ['N', 'lbf', 'N', 'lbf', 'N', '[lbf_av]'],
  ['Ω', 'V/A', 'ohm', 'V/A', 'Ohm', 'V/A'],
  ['mΩ', 'Ω', 'mohm', 'ohm', 'mOhm', 'Ohm'],
  ['hp', 'W', 'hp', 'W', '[HP]', 'W'],
  ['F°', 'C°', 'degF', 'degC', '', ''],
  ['C°', 'F°', 'degC', 'degF', '', ''],
];

const utils = ucum.UcumLhcUtils.getInstance();

/** One part in 10⁹, the product's own step; mathjs keeps psi to 12 digits. */
const same = (found: number, wanted: number) =>
  expect(Math.abs(found / wanted - 1)).toBeLessThan(1e-9);

describe('NIST SP 811 appendix B.8 (published), exact', () => {
  test.each([
    ['lb', 'kg', 0.45359237],
    ['gal', 'L', 3.785411784],
    ['in', 'mm', 25.4],
    ['ft', 'm', 0.3048],
    ['mph', 'm/s', 0.44704],
    ['Btu', 'W·s', 1055.05585262],
  ])('1 %s is so many %s: %d', (from, to, wanted) => {
    expect(convert(1, unitOf(from), unitOf(to))).toBeCloseTo(wanted, 12);
  });
});

describe('every factor agrees with two general unit libraries', () => {
  const byMathjs = rows.filter(([, , name]) => name !== '');
  test.each(byMathjs)('mathjs: %s in %s', (ours, base, name, nameBase) => {
    // A difference of temperatures: the zero points fall out.
    const zero =
      name.startsWith('deg') && name !== 'deg' ? mathjsUnit(0, name).toNumber(nameBase) : 0;
    same(convert(1, unitOf(ours), unitOf(base)), mathjsUnit(1, name).toNumber(nameBase) - zero);
  });

  const byUcum = rows.filter(([, , , , code]) => code !== '');
  test.each(byUcum)('UCUM: %s in %s', (ours, base, _name, _nameBase, code, codeBase) => {
    const { status, toVal } = utils.convertUnitTo(code, 1, codeBase);
    expect(status).toBe('succeeded');
    same(convert(1, unitOf(ours), unitOf(base)), toVal ?? Number.NaN);
  });

  test.each([-40, 0, 32, 60, 212])('%d °F in °C by both', (fahrenheit) => {
    const ours = convert(fahrenheit, unitOf('°F'), unitOf('°C'));
    expect(ours).toBeCloseTo(mathjsUnit(fahrenheit, 'degF').toNumber('degC'), 9);
    expect(ours).toBeCloseTo(utils.convertUnitTo('[degF]', fahrenheit, 'Cel').toVal ?? 1e9, 9);
  });

  test('no unit of the library goes unchecked', () => {
    const checked = new Set(rows.map(([ours]) => ours));
    const apart = ['1', '°F', '°C', 'USD', '% per 1,000 ft'];
    expect(unitSymbols.filter((symbol) => !checked.has(symbol) && !apart.includes(symbol))).toEqual(
      [],
    );
    // Money has no other unit; the loss with altitude is a hundredth over a thousand feet.
    same(convert(2, unitOf('% per 1,000 ft'), unitOf('1/ft')), 0.02 / 1000);
  });
});

test('every unit that tow fit writes is a unit', () => {
  const topic: Topic = towFit;
  for (const { unit } of Object.values(topic.formulas)) {
    if (unit !== '' && unit !== 'yes-no') expect(() => unitOf(unit)).not.toThrow();
  }
});
