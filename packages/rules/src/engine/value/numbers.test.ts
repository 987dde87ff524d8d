import { expect, test } from 'vitest';
import { arithmetic } from './numbers';
import { exactly, type NumberValue } from './values';

test('endless less endless may be anything, and never no number at all', () => {
  const unlimited = exactly(Infinity);
  expect(arithmetic('-', unlimited, unlimited)).toMatchObject({ lo: -Infinity, hi: Infinity });
});

test('what rises without end and falls without end may move either way', () => {
  const steep = (lo: number, hi: number): NumberValue => ({
    kind: 'number',
    lo: 0,
    hi: 1,
    slopes: new Map([['x', { lo, hi }]]),
  });
  const found = arithmetic('+', steep(Infinity, Infinity), steep(-Infinity, -Infinity));
  expect(found.slopes.get('x')).toEqual({ lo: -Infinity, hi: Infinity });
});
