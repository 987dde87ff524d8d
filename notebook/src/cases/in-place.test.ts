import { expect, test } from 'vitest';
import { inPlace } from './in-place';

test('what stood stays where it stood; what came since stands last and is drawn', () => {
  const first = inPlace(['c', 'b', 'a']);
  expect(first).toEqual({ all: ['c', 'b', 'a'], later: new Set() });
  const copied = inPlace(['a copy', 'a', 'c', 'b'], first);
  expect(copied).toEqual({ all: ['c', 'b', 'a', 'a copy'], later: new Set(['a copy']) });
});

test('what is deleted leaves its place, unless the way back stands there', () => {
  const first = inPlace(['c', 'b', 'a']);
  expect(inPlace(['c', 'a'], first).all).toEqual(['c', 'a']);
  expect(inPlace(['c', 'a'], first, new Set(['b'])).all).toEqual(['c', 'b', 'a']);
  expect(inPlace(['b', 'c', 'a'], inPlace(['c', 'a'], first, new Set(['b']))).all).toEqual([
    'c',
    'b',
    'a',
  ]);
});
