import { describe, expect, test } from 'vitest';
import { type Misread, readQuantity, type Written, wasMisread } from './read';

function read(text: string): Written {
  const found = readQuantity(text);
  if (wasMisread(found)) throw new Error(`“${text}”: ${found.code}`);
  return found;
}
function misread(text: string): Misread {
  const found = readQuantity(text);
  if (!wasMisread(found)) throw new Error(`“${text}” was read as ${JSON.stringify(found)}.`);
  return found;
}

describe('a number with its unit is read as written', () => {
  test.each([
    ['5,500 lb', 5500, 'lb'],
    ['5500lb', 5500, 'lb'],
    ['5 500 lb', 5500, 'lb'],
    ['5\u00a0500 lb', 5500, 'lb'],
    ['5\u202f500 lb', 5500, 'lb'],
    ['1,234,567 lb', 1_234_567, 'lb'],
    ['5,500 pounds', 5500, 'lb'],
    ['5,500 LBS', 5500, 'lb'],
    ['2,000 kg', 2000, 'kg'],
    ['2.5 t', 2.5, 't'],
    ['.5 gal', 0.5, 'gal'],
    ['45.25 L', 45.25, 'L'],
    ['2,800 mm', 2800, 'mm'],
    ['4.2 m', 4.2, 'm'],
    ['4.99 mΩ/ft', 4.99, 'mΩ/ft'],
    ['4.99 mohm/ft', 4.99, 'mohm/ft'],
    ['12 Ω', 12, 'Ω'],
    ['0.05 h/ft²', 0.05, 'h/ft²'],
    ['0.6 Btu/h/°F', 0.6, 'Btu/h/°F'],
    ['0.5 1/h', 0.5, '1/h'],
    ['20 F°', 20, 'F°'],
    ['44°', 44, '°'],
    ['-12.5 °', -12.5, '°'],
    ['-3 ft', -3, 'ft'],
    ['−3 ft', -3, 'ft'],
    ['+3 ft', 3, 'ft'],
    ['50 %', 50, '%'],
    ['50%', 50, '%'],
    ['60 ft²', 60, 'ft²'],
    ['60 ft2', 60, 'ft²'],
    ['60 sq ft', 60, 'ft²'],
    ['60 square feet', 60, 'ft²'],
    ['10 cu ft', 10, 'ft³'],
    ['10 cu. ft.', 10, 'ft³'],
    ['10 CU FT', 10, 'ft³'],
    ['10 cuft', 10, 'ft³'],
    ['10.5 cubic feet', 10.5, 'ft³'],
    ['1 cubic foot', 1, 'ft³'],
    ['2 cubic meters', 2, 'm³'],
    ['10 ft³', 10, 'ft³'],
    ['0.8 lb/gal', 0.8, 'lb/gal'],
    ['70 °F', 70, '°F'],
    ['78 F°', 78, 'F°'],
    ['-5 C°', -5, 'C°'],
    ['$1,200', 1200, 'USD'],
    ['48"', 48, 'in'],
    ["12'", 12, 'ft'],
  ])('%s', (text, value, symbol) => {
    const { from, to, unit, within } = read(text);
    expect([from, to, unit?.symbol, within]).toEqual([value, value, symbol, undefined]);
  });

  test('a bare number has no unit', () => {
    expect(read('2')).toEqual({ from: 2, to: 2, step: 1 });
  });

  test('the last written digit tells the step', () => {
    expect([read('5,500 lb').step, read('1.25 in').step, read('2 5/16 in').step]).toEqual([
      1,
      0.01,
      1 / 16,
    ]);
  });
});

describe('fractions of an inch', () => {
  test.each([
    ['2 5/16 in', 2.3125],
    ['2-5/16 in', 2.3125],
    ['1⅞ in', 1.875],
    ['1 ⅞ in', 1.875],
    ['½ in', 0.5],
    ['3/4 in', 0.75],
    ['2 5/16"', 2.3125],
    ['-1½ in', -1.5],
  ])('%s', (text, value) => {
    expect(read(text)).toMatchObject({ from: value, to: value, unit: { symbol: 'in' } });
  });
});

describe('feet and inches are inches', () => {
  test.each([
    [`6'7"`, 79],
    [`6' 7"`, 79],
    ['6′7″', 79],
    ['6 ft 7 in', 79],
    ['6 feet 7 inches', 79],
    [`6' 7 1/2"`, 79.5],
    ['-1 ft 6 in', -18],
  ])('%s', (text, value) => {
    expect(read(text)).toMatchObject({ from: value, to: value, unit: { symbol: 'in' } });
  });

  test('a range of them', () => {
    expect(read(`5'6"–6'7"`)).toMatchObject({ from: 66, to: 79, unit: { symbol: 'in' } });
    expect(read('5 ft 6 in to 6 ft 7 in')).toMatchObject({ from: 66, to: 79 });
  });
});

describe('ranges', () => {
  test.each([
    ['5,500–5,700 lb', 5500, 5700, 'lb'],
    ['5,500 - 5,700 lb', 5500, 5700, 'lb'],
    ['5500-5700 lb', 5500, 5700, 'lb'],
    ['5,500 lb – 5,700 lb', 5500, 5700, 'lb'],
    ['5,500 to 5,700 lb', 5500, 5700, 'lb'],
    ['5,500 lb to 5,700 lb', 5500, 5700, 'lb'],
    ['2 through 3 in', 2, 3, 'in'],
    ['$1,000–$1,200', 1000, 1200, 'USD'],
    ['5 t to 6 t', 5, 6, 't'],
    ['1⅞–2 5/16 in', 1.875, 2.3125, 'in'],
    ['-9–-7 ft', -9, -7, 'ft'],
    ['-9 – -7 ft', -9, -7, 'ft'],
  ])('%s', (text, from, to, symbol) => {
    expect(read(text)).toMatchObject({ from, to, unit: { symbol } });
  });

  test('below zero on both sides of the word “to”, it is a range and not a unit', () => {
    expect(read('-9.75 to -7.25 ft')).toMatchObject({ from: -9.75, to: -7.25 });
    expect(read('-9 through -7 ft')).toMatchObject({ from: -9, to: -7, unit: { symbol: 'ft' } });
  });
});

describe('what stands after ±', () => {
  test.each(['560 ± 20 lb', '560±20 lb', '560 lb ± 20 lb', '560 +/- 20 lb', '560 +- 20 lb'])(
    '%s',
    (text) => {
      expect(read(text)).toMatchObject({ from: 560, to: 560, within: 20, unit: { symbol: 'lb' } });
    },
  );

  test('also about a range', () => {
    expect(read('500–600 ± 20 lb')).toMatchObject({ from: 500, to: 600, within: 20 });
  });
});

describe('what is no quantity is refused by its kind, and never read as something else', () => {
  test.each([
    ['', 'not-a-quantity'],
    ['   ', 'not-a-quantity'],
    ['lb', 'not-a-quantity'],
    ['some 500 lb', 'not-a-quantity'],
    ['1,23 lb', 'not-a-quantity'],
    ['5,5000 lb', 'not-a-quantity'],
    ['1.2.3 lb', 'not-a-quantity'],
    ['5e3 lb', 'not-a-quantity'],
    ['0x10 lb', 'not-a-quantity'],
    ['1/0 in', 'not-a-quantity'],
    ['Infinity lb', 'not-a-quantity'],
    ['NaN', 'not-a-quantity'],
    ['5 lb 3', 'not-a-quantity'],
    ['560 ± -20 lb', 'not-a-quantity'],
    ['560 ± 10–20 lb', 'not-a-quantity'],
    ['5 stones', 'no-such-unit'],
    ['5 lbx', 'no-such-unit'],
    ['5 kg–6 lb', 'two-units'],
    ['560 lb ± 20 kg', 'two-units'],
    ['5,700–5,500 lb', 'back-to-front'],
    [`6'7"–5'6"`, 'back-to-front'],
    ['__proto__', 'not-a-quantity'],
    ['5 constructor', 'no-such-unit'],
  ])('“%s”: %s', (text, code) => {
    expect(misread(text).code).toBe(code);
  });

  test('more digits than a number holds are refused, and so is a text of more than 120', () => {
    expect(misread(`${'9'.repeat(400)} lb`).code).toBe('not-a-quantity');
    expect(misread(`5${' '.repeat(130)}lb`).code).toBe('not-a-quantity');
  });

  test('a text made to be slow is refused at once', () => {
    const start = performance.now();
    for (const each of ['1 ', '1,111', '1/', "1'", '±', 'a·', '–']) {
      expect(() => readQuantity(each.repeat(60).slice(0, 119))).not.toThrow();
    }
    expect(performance.now() - start).toBeLessThan(200);
  });
});

describe('a point that may stand between thousands is told', () => {
  test.each(['2.150 kg', '2.150–2,300 kg', '3.500 ± 20 lb', '3.500 kg ± 20 kg'])(
    '“%s” can be read in two ways',
    (text) => {
      expect(readQuantity(text)).toMatchObject({ unclear: true });
    },
  );

  test.each([
    '2.1500 kg',
    '2.15 kg',
    '0.245 kg',
    '4,950.125 lb',
    '12.750 V',
    '1.317',
    '4.205 lb/gal',
    '3.125 in',
    '47.625 mm',
    '8.353 lb ± 0.001 lb',
  ])('“%s” can mean one thing only', (text) => {
    expect(readQuantity(text)).not.toHaveProperty('unclear');
  });
});
