import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aboveOf, fromOf, fromOver, fromTimes } from './turns';

const nearest = (x: number): number => Math.round(x * 1e6) / 1e6;
/** Doubles close to a number, and the number. */
function around(x: number): readonly number[] {
  const far = [1e-6, 5e-7, 4.999999e-7, 1e-9, Math.abs(x) * 2 ** -52, Math.abs(x) * 2 ** -51];
  return [x, ...far.flatMap((each) => [x - each, x + each]), 0, -0, Infinity, -Infinity, NaN];
}

const limits = fc.oneof(
  fc.double({ min: -1e12, max: 1e12, noNaN: true }),
  fc.double({ min: -20_000, max: 20_000, noNaN: true }),
  fc.integer({ min: -20_000, max: 20_000 }),
  fc.integer({ min: -2e9, max: 2e9 }).map((n) => n / 1e6),
  fc.integer({ min: -2e9, max: 2e9 }).map((n) => (n + 0.5) / 1e6),
);

test('held against where it turns a number comes out as it does rounded', () => {
  fc.assert(
    fc.property(limits, fc.double(), (limit, other) => {
      const [above, from] = [aboveOf(limit), fromOf(limit)];
      for (const x of [other, ...around(limit), ...around(above), ...around(from)]) {
        const found = [above <= x, from <= x, x < from, x < above];
        const rounded = nearest(x);
        const wanted = [limit < rounded, limit <= rounded, rounded < limit, rounded <= limit];
        if (`${found}` !== `${wanted}`) expect({ x, found }).toEqual({ x, found: wanted });
      }
    }),
    { numRuns: 3000 },
  );
});

test('half a millionth goes up', () => {
  expect(aboveOf(0)).toBe(5e-7);
  expect(fromOf(0)).toBe(-5e-7);
  expect(nearest(aboveOf(990))).toBe(990.000001);
});

test('so does what is multiplied or divided', () => {
  const by = fc.oneof(
    fc.double({ min: 1e-6, max: 1e12, noNaN: true }),
    fc.double({ min: 0.01, max: 400, noNaN: true }),
    fc.constantFrom(0.5, 1, 2, 3, 1 / 3, 0.45359237),
  );
  fc.assert(
    fc.property(limits, by, fc.double(), (limit, factor, other) => {
      const [times, over] = [fromTimes(limit, factor), fromOver(limit, factor)];
      for (const x of [other, ...around(limit), ...around(times), ...around(over)]) {
        const found = [times <= x, x < times, over <= x, x < over];
        const [product, quotient] = [x * factor, x / factor];
        const wanted = [limit <= product, product < limit, limit <= quotient, quotient < limit];
        if (`${found}` !== `${wanted}`) expect({ x, found }).toEqual({ x, found: wanted });
      }
    }),
    { numRuns: 3000 },
  );
});

test('where there is none, none is looked for without end', () => {
  for (const odd of [NaN, Infinity, -Infinity, 1e300]) {
    expect([aboveOf(odd), fromOf(odd), fromTimes(odd, 2), fromOver(odd, 2)]).toEqual(
      Array.from({ length: 4 }, () => NaN),
    );
    expect(fromTimes(1, odd)).toBe(NaN);
  }
  for (const by of [0, -0, -1]) {
    expect([fromTimes(5, by), fromOver(5, by)]).toEqual([NaN, NaN]);
  }
});
