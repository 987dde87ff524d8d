import { describe, expect, test } from 'vitest';
import { readQuantity, wasMisread } from './read';
import { convert, unitOf } from './units';

/** Both ends of what was read, in a unit. */
function endsIn(text: string, unit: string): readonly [number, number] | string {
  const read = readQuantity(text);
  if (wasMisread(read)) return read.code;
  const { from, to, within = 0, unit: written = unitOf('1') } = read;
  const end = (value: number) => Math.round(convert(value, written, unitOf(unit)) * 1e6) / 1e6;
  return [end(from - within), end(to + within)];
}

describe('what is said loosely is read as people mean it: five percent either way', () => {
  test.each([
    ['about 5,000 lb', 4750, 5250, 'lb'],
    ['About 5,000 lbs.', 4750, 5250, 'lb'],
    ['~5,000 lb', 4750, 5250, 'lb'],
    ['~ 5,000 lb', 4750, 5250, 'lb'],
    ['≈5,000#', 4750, 5250, 'lb'],
    ['around 20 ft', 19, 21, 'ft'],
    ['roughly 100 gal', 95, 105, 'gal'],
    ['approx. 100 gal', 95, 105, 'gal'],
    ['approximately 100 gal', 95, 105, 'gal'],
    ['about 6 ft 8 in', 76, 84, 'in'],
    ['about −3 ft', -3.15, -2.85, 'ft'],
    ['about 4,000–5,000 lb', 3750, 5250, 'lb'],
    ['~4,000–~5,000 lb', 3750, 5250, 'lb'],
    ['about 20', 19, 21, '1'],
    ['about 0 °F', -0.5, 0.5, '°F'],
  ])('%s', (text, lo, hi, unit) => {
    expect(endsIn(text, unit)).toEqual([lo, hi]);
  });

  test('what the writer says of the spread counts before it', () => {
    expect(endsIn('about 500 ± 10 lb', 'lb')).toEqual([490, 510]);
  });
});

describe('pounds as the trade writes them', () => {
  test.each([
    ['5,000 lbs.', 5000],
    ['5,000 lb.', 5000],
    ['5,000#', 5000],
    ['5,000 #', 5000],
    ['4,000#–5,000#', undefined],
    ['500 ± 20#', undefined],
  ])('%s', (text, value) => {
    const read = readQuantity(text);
    if (wasMisread(read)) throw new Error(read.code);
    expect(read.unit?.symbol).toBe('lb');
    if (value !== undefined) expect([read.from, read.to]).toEqual([value, value]);
  });

  test.each([
    ['12 gal.', 'gal'],
    ['18 ft.', 'ft'],
    ['6 ft. 7 in.', 'in'],
    ['3 hrs.', 'h'],
  ])('%s, with the point of a word cut short', (text, unit) => {
    const read = readQuantity(text);
    expect(wasMisread(read) ? read.code : read.unit?.symbol).toBe(unit);
  });

  test.each(['# 5', '5 lb..', '5 # lb', '~', 'about', 'about unknown', '5 about lb', '5 lb ~ 6'])(
    '%s is no quantity',
    (text) => {
      expect(wasMisread(readQuantity(text))).toBe(true);
    },
  );
});

describe('a bound leaves the other end open', () => {
  test.each([
    ['at least 800 lb', 800, Infinity],
    ['At least 800 lbs.', 800, Infinity],
    ['≥ 800 lb', 800, Infinity],
    ['>= 800 lb', 800, Infinity],
    ['800 lb or more', 800, Infinity],
    ['at most 6,000 lb', -Infinity, 6000],
    ['up to 6,000 lb', -Infinity, 6000],
    ['≤6,000 lb', -Infinity, 6000],
    ['<= 6,000 lb', -Infinity, 6000],
    ['6,000 lb or less', -Infinity, 6000],
  ])('%s', (text, lo, hi) => {
    expect(endsIn(text, 'lb')).toEqual([lo, hi]);
  });

  test.each([
    'at least 5–6 lb',
    'at least about',
    'at least',
    'at most at least 5 lb',
    'up to 5 ± 1 lb',
  ])('%s is no quantity', (text) => {
    expect(wasMisread(readQuantity(text))).toBe(true);
  });
});
