import { expect, test } from 'vitest';
import { isAsWished, readWish } from './wishes';

const heron = {
  name: 'Heron 17',
  facts: {},
  cells: { body: 'travel trailer', length: '21.5 ft', price: '$18,900', lot: '' },
};
const wished = (...texts: readonly string[]): boolean =>
  isAsWished(
    heron,
    texts.flatMap((text) => readWish(text) ?? []),
  );

test('a word is the same in any letters, a number on its side of another', () => {
  expect(wished('body=Travel Trailer', 'length<=22', 'price >= 15,000')).toBe(true);
  expect(wished('length<=21')).toBe(false);
  expect(wished('price<=18000')).toBe(false);
});

test('a cell that nobody filled in is not as wished', () => {
  expect(wished('lot=here')).toBe(false);
  expect(wished('sleeps>=2')).toBe(false);
});

test.each(['axles', '=2', '<=3', ''])('%j is no wish', (text) => {
  expect(readWish(text)).toBeUndefined();
});
