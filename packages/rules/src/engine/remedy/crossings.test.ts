import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossings } from './crossings';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asked: { count: number } = { count: 0 };

/** Zeros of one function, in order, with how often it was asked for counted. */
function zeros(of: (x: number) => number, from: number, to: number): readonly number[] {
  asked.count = 0;
  const counted = (x: number) => {
    asked.count += 1;
    return [of(x)];
  };
  return [...crossings(counted, from, to, 0.01)].sort((a, b) => a - b);
}

describe('where a number crosses zero is solved, not searched for', () => {
  test('a straight line by its two ends and two points between that prove it', () => {
    const [zero] = zeros((x) => 3 * x - 100, 0, 1000);
    expect(zero).toBeCloseTo(100 / 3, 9);
    expect(asked.count).toBe(4);
  });

  test('a quotient of two lines by four points', () => {
    const [zero, more] = zeros((x) => (550 + 0.2 * x) / (5000 - x) - 0.13, 0, 2000);
    expect(zero).toBeCloseTo(100 / 0.33, 6);
    expect(more).toBeUndefined();
    expect(asked.count).toBe(4);
  });

  test('a corner is met where the lines from both sides meet', () => {
    const [zero] = zeros((x) => Math.max(10, x) - 40, 0, 100);
    expect(zero).toBeCloseTo(40, 9);
    expect(asked.count).toBeLessThan(40);
  });

  test('a jump is found to the finest piece', () => {
    for (const at of [41.7, 85, 99.99, 3.3]) {
      const [zero] = zeros((x) => (x < at ? 1 : -1), 0, 100);
      expect(Math.abs((zero ?? 0) - at)).toBeLessThan(0.01);
    }
  });

  test('backward as well as forward, and none where there is none', () => {
    expect(zeros((x) => x - 5, 10, 0)[0]).toBeCloseTo(5, 9);
    expect(zeros((x) => x + 1, 0, 10)).toEqual([]);
    expect(zeros(() => 7, 0, 10)).toEqual([]);
    expect(zeros(() => 0, 0, 10)).toEqual([]);
    expect(zeros((x) => x, 3, 3)).toEqual([]);
  });

  test('a number with an open end is left aside, and the others are not', () => {
    const found = crossings((x) => [Infinity, Number.NaN, x - 2], 0, 10, 0.01);
    expect(found).toHaveLength(1);
    expect(found[0]).toBeCloseTo(2, 9);
  });
});

test('every zero of a line with two corners is found, against the formula of each piece', () => {
  const slope = fc.double({ min: 0.2, max: 5, noNaN: true });
  fc.assert(
    fc.property(slope, slope, slope, fc.double({ min: 5, max: 95, noNaN: true }), (a, b, c, at) => {
      // Falls to the first corner, rises to the second, falls again; shifted so that `at` is a zero.
      const [first, second] = [100 / 3, 200 / 3];
      const shape = (x: number): number =>
        x < first
          ? -a * x
          : x < second
            ? -a * first + b * (x - first)
            : -a * first + b * (second - first) - c * (x - second);
      const found = zeros((x) => shape(x) - shape(at), 0, 100);
      expect(Math.min(...found.map((x) => Math.abs(x - at)))).toBeLessThan(1e-3);
      for (const x of found) expect(Math.abs(shape(x) - shape(at))).toBeLessThan(0.06);
    }),
    { numRuns: 300, seed },
  );
});
