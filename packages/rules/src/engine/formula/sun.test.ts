import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactly, type NumberValue } from '../value/values';
import { sunHeight } from './sun';

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

test('the height of the sun over ranges holds every point', () => {
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

test('where nobody knows the place, the sun may stand anywhere from the horizon up', () => {
  const anywhere: NumberValue = { kind: 'number', lo: -Infinity, hi: Infinity, slopes: new Map() };
  expect(sunHeight(anywhere, exactly(172), exactly(12))).toMatchObject({ lo: 0, hi: 1 });
  expect(sunHeight(exactly(0.7), exactly(172), anywhere)).toMatchObject({ lo: 0, hi: 1 });
});
