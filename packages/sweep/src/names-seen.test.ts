import { expect, test } from 'vitest';
import { namesSeen } from './names-seen';

test('of a hundred thousand names each is new once, and known from then on', () => {
  const isSeen = namesSeen();
  const names = Array.from({ length: 100_000 }, (_, i) => `Plover ${i % 2 === 0 ? i : -i}`);
  expect(names.filter(isSeen)).toEqual([]);
  expect(names.every(isSeen)).toBe(true);
  expect(isSeen('Plover')).toBe(false);
  expect(isSeen('')).toBe(false);
  expect(isSeen('')).toBe(true);
});
