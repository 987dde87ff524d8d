import { describe, expect, test } from 'vitest';
import { point } from './interval';
import { readQuantity, wasMisread } from './read';
import {
  figuresOf,
  isFarApart,
  show,
  showFigures,
  showMargin,
  showNumber,
  showParts,
  showRound,
} from './show';

describe('a range is shown as a person writes it', () => {
  test.each([
    [point(4335.1), 'lb', '4,335.1 lb'],
    [point(4335), 'lb', '4,335 lb'],
    [{ lo: 4950, hi: 5050 }, 'lb', '4,950–5,050 lb'],
    [{ lo: 620, hi: Infinity }, 'lb', '620 lb or more'],
    [{ lo: -Infinity, hi: 620 }, 'lb', '620 lb or less'],
    [{ lo: -Infinity, hi: Infinity }, 'lb', 'unknown'],
    [{ lo: 0, hi: Infinity }, 'lb', 'unknown'],
    [{ lo: 0, hi: Infinity }, '°F', '0 °F or more'],
    [{ lo: -5, hi: Infinity }, 'lb', '−5 lb or more'],
    [point(Infinity), 'd', 'no end in sight'],
    [point(Infinity), 'h', 'no end in sight'],
    [point(Infinity), 'lb', 'no limit'],
    [{ lo: 9, hi: Infinity }, 'd', '9 d or more'],
    [point(0.135), '1', '13.5 %'],
    [point(-258.1), 'lb', '−258.1 lb'],
    [point(-0.0001), 'lb', '0 lb'],
    [{ lo: 4950.01, hi: 4950.02 }, 'lb', '4,950 lb'],
    [point(2.3125), 'in', '2 5/16 in'],
    [point(1.875), 'in', '1⅞ in'],
    [point(-0.375), 'in', '−⅜ in'],
    [point(0.0625), 'in', '1/16 in'],
    [point(24.25), 'in', '24.25 in'],
    [point(3.0563), 'in', '3.06 in'],
    [{ lo: 1.875, hi: 2.3125 }, 'in', '1⅞–2 5/16 in'],
    [point(0.0024), 'V/°F', '0.0024 V/°F'],
    [point(0.05), 'A', '0.05 A'],
    [point(0.03), 'A', '0.03 A'],
    [point(0.03), 'h', '0 h'],
    [point(0.2), 'h/ft²', '0.2 h/ft²'],
    [point(2), '', '2'],
    [{ lo: 1.1, hi: 1.25 }, '', '1.1–1.25'],
    [point(0.764), 'mΩ/ft', '0.764 mΩ/ft'],
    [point(65.45), '', '65.45'],
    [point(65.45 - 1e-13), 'kWh', '65.5 kWh'],
  ])('%j %s is “%s”', (range, unit, wanted) => {
    expect(show(range, unit)).toBe(wanted);
  });
});

describe('in metric the same quantity in its own unit', () => {
  test.each([
    [point(1000), 'lb', '453.6 kg'],
    [point(100), 'in', '2,540 mm'],
    [point(10), 'ft', '3.05 m'],
    [point(10), 'gal', '37.9 L'],
    [point(100), 'ft²', '9.29 m²'],
    [point(1000), 'lb·ft', '138.3 kg·m'],
    [point(8.34), 'lb/gal', '1 kg/L'],
    [{ lo: 1000, hi: Infinity }, 'lb', '453.6 kg or more'],
    [point(212), '°F', '100 °C'],
    [point(9), 'F°', '5 C°'],
  ])('%j %s is “%s”', (range, unit, wanted) => {
    expect(show(range, unit, 'metric')).toBe(wanted);
  });
});

test('number and unit can be had apart, and an unknown has none', () => {
  expect(showParts(point(12), 'lb')).toEqual({ number: '12', unit: 'lb' });
  expect(showParts({ lo: -Infinity, hi: Infinity }, 'lb')).toEqual({ number: 'unknown', unit: '' });
});

test('what is shown can be read again to within its last digit', () => {
  for (const [value, unit] of [
    [4335.14, 'lb'],
    [-12.34, 'ft'],
    [2.3125, 'in'],
    [-1.875, 'in'],
    [0.987, 'in'],
    [123_456.7, 'lb'],
  ] as const) {
    const read = readQuantity(show(point(value), unit));
    if (wasMisread(read)) throw new Error(read.found);
    expect(Math.abs(read.from - value)).toBeLessThanOrEqual(0.5 * read.step + 1e-9);
    expect(read.unit?.symbol).toBe(unit);
  }
});

test('thousands are parted and decimals cut to what was asked for', () => {
  expect([showNumber(1234567.891, 2), showNumber(-0.4, 0), showNumber(5, 3)]).toEqual([
    '1,234,567.89',
    '0',
    '5',
  ]);
});

describe('a weight goes without its tenths where they tell nobody anything', () => {
  test.each([
    [point(4335.1), 'lb', '4,335 lb'],
    [point(48.5), 'lb', '48.5 lb'],
    [{ lo: 48.5, hi: 586.9 }, 'lb', '48.5–587 lb'],
    [{ lo: 620.4, hi: Infinity }, 'lb', '620 lb or more'],
    [point(109.6), 'gal', '109.6 gal'],
  ])('as a whole: %j %s is “%s”', (range, unit, wanted) => {
    expect(showRound(range, unit)).toBe(wanted);
  });

  test.each([
    [point(44.1), 'lb', '44 lb'],
    [point(6.9), 'lb', '6.9 lb'],
    [{ lo: 6.9, hi: 113.1 }, 'lb', '6.9–113 lb'],
    [point(0.34), 'V', '0.34 V'],
  ])('as what is left: %j %s is “%s”', (range, unit, wanted) => {
    expect(showMargin(range, unit)).toBe(wanted);
  });

  test('but not where the two sides of a limit would then look alike', () => {
    expect(isFarApart({ lo: -0.4, hi: -0.4 })).toBe(false);
    expect(isFarApart({ lo: -39, hi: 9.5 })).toBe(false);
    expect(isFarApart({ lo: 10, hi: Infinity })).toBe(true);
  });
});

test('aloud, nobody keeps a tenth of a mile or of a gallon in mind; in writing it stays', () => {
  const range = { lo: 86.7, hi: 173.5 };
  expect(showFigures(figuresOf(range, 'mi', 'us', 'aloud'))).toBe('87–174 mi');
  expect(showFigures(figuresOf(range, 'mi', 'us', 'round'))).toBe('86.7–173.5 mi');
  expect(showFigures(figuresOf({ lo: 6.5, hi: 6.5 }, 'gal', 'us', 'aloud'))).toBe('6.5 gal');
  expect(showFigures(figuresOf({ lo: 39.6, hi: 39.6 }, 'gal', 'us', 'aloud'))).toBe('40 gal');
});
