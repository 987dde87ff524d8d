import { readQuantity, wasMisread } from '@tarebook/rules/quantity';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aboutText, entryOf, textOf, unitsFor } from './entry';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_128) };

test('a bare number takes the unit that stands beside it', () => {
  for (const [typed, unit, text] of [
    ['3900', 'lb', '3900 lb'],
    ['3,900', 'kg', '3,900 kg'],
    ['4900-5100', 'lb', '4900-5100 lb'],
    ['560 ± 20', 'lb', '560 ± 20 lb'],
    ['2', '', '2'],
  ] as const) {
    expect(textOf({ typed, unit })).toBe(text);
  }
});

test('a unit that was typed wins over the one beside the field, and then stands there', () => {
  expect(textOf({ typed: '1800 kg', unit: 'lb' })).toBe('1800 kg');
  expect(entryOf('1800 kg', 'lb')).toEqual({ typed: '1800', unit: 'kg' });
  expect(entryOf('6 ft 7 in', 'in')).toEqual({ typed: '6 ft 7 in', unit: 'in' });
  expect(entryOf('2 5/16 in', 'in')).toEqual({ typed: '2 5/16', unit: 'in' });
  expect(entryOf('12', '')).toEqual({ typed: '12', unit: '' });
});

test('an empty field, a question mark and “don’t know” are unknown, and unknown is an empty field', () => {
  for (const typed of ['', '  ', '?', 'unknown', 'Don’t know', "don't know"]) {
    expect(textOf({ typed, unit: 'lb' })).toBe('unknown');
  }
  expect(entryOf('unknown', 'gal')).toEqual({ typed: '', unit: 'gal' });
});

test('what cannot be read is kept as it was typed', () => {
  expect(textOf({ typed: 'about a ton', unit: 'lb' })).toBe('about a ton');
  expect(entryOf('39oo lb', 'lb')).toEqual({ typed: '39oo lb', unit: 'lb' });
});

test('whatever a case says of a weight, field and case say the same', () => {
  const number = fc.integer({ min: 0, max: 20_000 });
  const written = fc.oneof(
    number.map((n) => `${n}`),
    number.map((n) => n.toLocaleString('en-US')),
    fc.tuple(number, number).map(([a, b]) => `${Math.min(a, b)}–${Math.max(a, b)}`),
    fc.tuple(number, number).map(([a, b]) => `${a} ± ${b}`),
    number.map((n) => `${n}.5`),
  );
  fc.assert(
    fc.property(written, fc.constantFrom('lb', 'kg', 'lbs', 'pounds', 't'), (typed, unit) => {
      const text = `${typed} ${unit}`;
      const back = textOf(entryOf(text, 'lb'));
      const [was, is] = [readQuantity(text), readQuantity(back)];
      if (wasMisread(was) || wasMisread(is)) throw new Error(`${text} ► ${back}`);
      expect({ ...is, unit: is.unit?.symbol }).toEqual({ ...was, unit: was.unit?.symbol });
    }),
    seed,
  );
});

test('a field offers its own unit and the metric one, the one in use first', () => {
  expect(unitsFor('lb', 'lb')).toEqual(['lb', 'kg']);
  expect(unitsFor('lb', 'kg')).toEqual(['kg', 'lb']);
  expect(unitsFor('', '')).toEqual([]);
});

test('about is a twentieth on either side, and of what is no one number nothing', () => {
  expect(aboutText('3900')).toBe('3900 ± 195');
  expect(aboutText('3,900 lb')).toBe('3,900 ± 195 lb');
  expect(aboutText('12')).toBe('12 ± 0.6');
  expect(aboutText('4,900–5,100')).toBe('4,900–5,100');
  expect(aboutText('heavy')).toBe('heavy');
});
