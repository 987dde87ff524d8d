import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { power, whole } from './special';
import { sunHeight } from './sun';
import { exactly, type NumberValue } from './values';

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

describe('over ranges the result holds every point, and the slope every step', () => {
  test('power, of bases below and above one', () => {
    fc.assert(
      fc.property(range(0, 5), range(-2, 3), part, part, part, (b, e, t, u, v) => {
        const found = power(input('b', ...b), input('e', ...e));
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

  test('whole', () => {
    fc.assert(
      fc.property(range(-20, 20), part, (a, t) => {
        const found = whole(input('a', ...a));
        const at = Math.floor(between(a, t) + 1e-9);
        expect(at).toBeGreaterThanOrEqual(found.lo);
        expect(at).toBeLessThanOrEqual(found.hi);
      }),
      { numRuns: 300, seed },
    );
    expect(whole(exactly(2.9999999999)).lo).toBe(3);
  });

  test('the height of the sun', () => {
    const radians = Math.PI / 180;
    fc.assert(
      fc.property(
        range(20, 60),
        range(1, 365),
        range(0, 24),
        part,
        part,
        part,
        (l, d, h, t, u, v) => {
          const latitude = input('l', l[0] * radians, l[1] * radians);
          const found = sunHeight(latitude, input('d', ...d), input('h', ...h));
          const at = sunHeight(
            exactly(between(l, t) * radians),
            exactly(between(d, u)),
            exactly(between(h, v)),
          );
          expect(at.lo).toBeGreaterThanOrEqual(found.lo - 1e-3);
          expect(at.lo).toBeLessThanOrEqual(found.hi + 1e-3);
        },
      ),
      { numRuns: 200, seed },
    );
  });
});

/** Declination by Cooper (1969), a textbook formula: 23.45° · sin(360° · (284 + n) ÷ 365). */
test.each([80, 172, 266, 355])(
  'at noon of day %i the sun stands where Cooper’s formula has it',
  (n) => {
    const declination = 23.45 * Math.sin((2 * Math.PI * (284 + n)) / 365);
    const expected = Math.sin(((90 - (44 - declination)) * Math.PI) / 180);
    const { lo } = sunHeight(exactly((44 * Math.PI) / 180), exactly(n), exactly(12));
    // Cooper’s formula is good to about a degree and a half near the equinoxes.
    expect(Math.abs(lo - expected)).toBeLessThan(0.02);
  },
);
