import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NumberValue } from '../../value/values';
import { powerOf } from './power';

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

test('a power over ranges holds every point, and its slope every step, of bases below and above one', () => {
  fc.assert(
    fc.property(range(0, 5), range(-2, 3), part, part, part, (b, e, t, u, v) => {
      const found = powerOf(input('b', ...b), input('e', ...e));
      const [x, y, z] = [between(b, t), between(e, u), between(b, v)];
      const slack = 1e-9 * (1 + Math.abs(x ** y));
      expect(x ** y).toBeGreaterThanOrEqual(found.lo - slack);
      expect(x ** y).toBeLessThanOrEqual(found.hi + slack);
      const slope = found.slopes.get('b');
      if (slope && e[0] === e[1] && Math.abs(x - z) > 1e-3) {
        const step = (x ** y - z ** y) / (x - z);
        expect(step).toBeGreaterThanOrEqual(slope.lo - 1e-6 * (1 + Math.abs(step)));
        expect(step).toBeLessThanOrEqual(slope.hi + 1e-6 * (1 + Math.abs(step)));
      }
    }),
    { numRuns: 500, seed },
  );
});
