import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  common,
  divide,
  hull,
  type Interval,
  least,
  most,
  multiply,
  negate,
  reciprocal,
  rounded,
  subtract,
} from './interval';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
/** Nothing here is smaller than a millionth, the step below which numbers count as equal. */
const value = fc
  .double({ min: -1e6, max: 1e6, noNaN: true })
  .map((each) => (Math.abs(each) < 1e-6 ? 0 : each));
const share = fc.double({ min: 0, max: 1, noNaN: true });
const interval = fc
  .tuple(value, value)
  .map(([a, b]): Interval => ({ lo: Math.min(a, b), hi: Math.max(a, b) }));
const inside = ({ lo, hi }: Interval, at: number) =>
  Math.min(hi, Math.max(lo, lo + at * (hi - lo)));
const holds = ({ lo, hi }: Interval, x: number) => {
  const slack = 1e-9 * Math.max(1, Math.abs(x));
  return lo - slack <= x && x <= hi + slack;
};

const operations: readonly (readonly [
  string,
  (a: Interval, b: Interval) => Interval,
  (a: number, b: number) => number,
])[] = [
  ['sum', add, (a, b) => a + b],
  ['difference', subtract, (a, b) => a - b],
  ['product', multiply, (a, b) => a * b],
  ['quotient', divide, (a, b) => a / b],
  ['lesser', least, Math.min],
  ['greater', most, Math.max],
];

describe('every result of numbers inside two ranges lies inside the range of the result', () => {
  test.each(operations)('%s', (_, ofRanges, ofNumbers) => {
    fc.assert(
      fc.property(interval, interval, share, share, (a, b, i, j) => {
        const [x, y] = [inside(a, i), inside(b, j)];
        const result = ofNumbers(x, y);
        fc.pre(Number.isFinite(result));
        expect(holds(ofRanges(a, b), result)).toBe(true);
      }),
      { numRuns: 1000, seed },
    );
  });

  test.each(operations)('%s: with an open end too', (_, ofRanges, ofNumbers) => {
    fc.assert(
      fc.property(
        value,
        interval,
        fc.double({ min: 0, max: 1e9, noNaN: true }),
        share,
        (lo, b, up, j) => {
          const [x, y] = [lo + up, inside(b, j)];
          const result = ofNumbers(x, y);
          fc.pre(Number.isFinite(result));
          expect(holds(ofRanges({ lo, hi: Infinity }, b), result)).toBe(true);
        },
      ),
      { numRuns: 500, seed },
    );
  });
});

describe('ends', () => {
  test('the ends of sums and products of ranges are reached, not merely bounds', () => {
    const [a, b] = [
      { lo: -2, hi: 3 },
      { lo: 4, hi: 5 },
    ];
    expect(add(a, b)).toEqual({ lo: 2, hi: 8 });
    expect(subtract(a, b)).toEqual({ lo: -7, hi: -1 });
    expect(multiply(a, b)).toEqual({ lo: -10, hi: 15 });
    expect(negate(a)).toEqual({ lo: -3, hi: 2 });
    expect(hull(a, b)).toEqual({ lo: -2, hi: 5 });
  });

  test('a divisor that may be zero gives an open end, never a number', () => {
    expect(reciprocal({ lo: 0, hi: 4 })).toEqual({ lo: 0.25, hi: Infinity });
    expect(reciprocal({ lo: -4, hi: 0 })).toEqual({ lo: -Infinity, hi: -0.25 });
    expect(reciprocal({ lo: -1, hi: 1 })).toEqual({ lo: -Infinity, hi: Infinity });
    expect(divide({ lo: 1, hi: 1 }, { lo: 0, hi: 0 }).hi).toBe(Infinity);
  });

  test('nothing times anything at all is nothing', () => {
    expect(multiply({ lo: 0, hi: 0 }, { lo: 0, hi: Infinity })).toEqual({ lo: 0, hi: 0 });
  });

  test('what no limit is stated for uses up nothing of it, also with an open end', () => {
    const unlimited = { lo: Infinity, hi: Infinity };
    expect(divide({ lo: 5, hi: 5 }, unlimited)).toEqual({ lo: 0, hi: 0 });
    expect(divide({ lo: 0, hi: Infinity }, unlimited)).toEqual({ lo: 0, hi: 0 });
  });

  test('two numbers divide to their own quotient', () => {
    expect(divide({ lo: 1, hi: 1 }, { lo: 3, hi: 3 })).toEqual({ lo: 1 / 3, hi: 1 / 3 });
    expect(divide({ lo: -6, hi: 3 }, { lo: -3, hi: -3 })).toEqual({ lo: -1, hi: 2 });
  });

  test('what two ranges have in common is inside both; without any, the first stands', () => {
    expect(common({ lo: 0, hi: 5 }, { lo: 3, hi: 9 })).toEqual({ lo: 3, hi: 5 });
    expect(common({ lo: 0, hi: 1 }, { lo: 3, hi: 9 })).toEqual({ lo: 0, hi: 1 });
  });

  test('less than a millionth is no difference, and zero has no sign', () => {
    expect(rounded(900 * 1.1)).toBe(990);
    expect(Object.is(rounded(-1e-9), 0)).toBe(true);
    expect(rounded(Infinity)).toBe(Infinity);
  });
});
