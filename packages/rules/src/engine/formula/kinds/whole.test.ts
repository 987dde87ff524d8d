import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactly, type NumberValue } from '../../value/values';
import { wholeOf } from './whole';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const input = (key: string, lo: number, hi: number): NumberValue => ({
  kind: 'number',
  lo,
  hi,
  slopes: lo === hi ? new Map() : new Map([[key, { lo: 1, hi: 1 }]]),
});
const range = (min: number, max: number) =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.double({ min, max, noNaN: true }))
    .map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
const part = fc.double({ min: 0, max: 1, noNaN: true });
const between = ([lo, hi]: readonly [number, number], t: number) =>
  Math.min(hi, Math.max(lo, lo + (hi - lo) * t));

test('rounding a range down holds every point of it', () => {
  fc.assert(
    fc.property(range(-20, 20), part, (a, t) => {
      const found = wholeOf(input('a', ...a));
      const at = Math.floor(between(a, t) + 1e-9);
      expect(at).toBeGreaterThanOrEqual(found.lo);
      expect(at).toBeLessThanOrEqual(found.hi);
    }),
    { numRuns: 300, seed },
  );
  expect(wholeOf(exactly(2.9999999999)).lo).toBe(3);
});
