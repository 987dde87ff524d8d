import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Clause, components, countWays, leastWays } from './count';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

const holds = (clause: Clause, setting: number): boolean =>
  clause.some((literal) => ((setting >> (Math.abs(literal) - 1)) & 1) === (literal > 0 ? 1 : 0));

/** Every setting of the variables, tried one by one. */
function settings(variables: number, clauses: readonly Clause[]): readonly number[] {
  return Array.from({ length: 2 ** variables }, (_, setting) => setting).filter((setting) =>
    clauses.every((clause) => holds(clause, setting)),
  );
}

const variables = 10;
const literal = fc
  .tuple(fc.integer({ min: 1, max: variables }), fc.boolean())
  .map(([variable, yes]) => (yes ? variable : -variable));
const clauses = fc.array(fc.uniqueArray(literal, { minLength: 1, maxLength: 4 }), {
  maxLength: 14,
});

describe('counting ways', () => {
  test('agrees with trying every setting', () => {
    fc.assert(
      fc.property(clauses, (given) => {
        expect(countWays(variables, given)).toBe(BigInt(settings(variables, given).length));
      }),
      { numRuns: 400, seed },
    );
  });

  test('of no clause, every variable is free; of an empty one, nothing holds', () => {
    expect(countWays(40, [])).toBe(2n ** 40n);
    expect(countWays(3, [[]])).toBe(0n);
    expect(countWays(1, [[1], [-1]])).toBe(0n);
  });

  test('counts beyond what a double holds exactly', () => {
    const pairs = Array.from({ length: 40 }, (_, i): Clause => [2 * i + 1, 2 * i + 2]);
    expect(countWays(80, pairs)).toBe(3n ** 40n);
  });

  test('parts that share no variable are told apart, and no clause is lost', () => {
    fc.assert(
      fc.property(clauses, (given) => {
        const parts = components(given);
        expect(parts.flat()).toHaveLength(given.length);
        const names = parts.map((part) => new Set(part.flat().map(Math.abs)));
        const all = names.flatMap((each) => [...each]);
        expect(new Set(all).size).toBe(all.length);
      }),
      { numRuns: 200, seed },
    );
  });
});

test('the least ways are exactly those settings that hold no smaller one that holds', () => {
  fc.assert(
    fc.property(clauses, (given) => {
      const all = settings(variables, given);
      const least = all.filter((each) => !all.some((o) => o !== each && (o & each) === o));
      const found = leastWays(given).map((way) =>
        [...way].reduce((bits, variable) => bits | (1 << (variable - 1)), 0),
      );
      expect(found.toSorted((a, b) => a - b)).toEqual(least);
    }),
    { numRuns: 300, seed },
  );
});
