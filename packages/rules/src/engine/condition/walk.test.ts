import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Condition, operators } from '../define/shapes';
import { rulesHoldingByEngine } from './engine';
import { compare, type Named } from './operators';
import type { ConditionRule } from './rules';
import { holds, lookingIn, rulesHolding } from './walk';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** Small whole ranges, so that every point inside them can be tried. */
const range = fc
  .tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 3 }))
  .map(([lo, width]) => ({ lo, hi: lo + width }));
const options = ['oak', 'pine', 'ash'] as const;
const among = fc.subarray([...options], { minLength: 1 }).map((each) => ({ among: each }));
const numberOperators = operators.filter((name) => name !== 'in' && name !== 'notIn');

/** Halves between, so that what holds only between whole numbers is met too. */
const pointsOf = ({ lo, hi }: { lo: number; hi: number }) =>
  Array.from({ length: (hi - lo) * 2 + 1 }, (_, i) => lo + i / 2);

const plainly: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  greaterThan: (a, b) => a > b,
  greaterThanInclusive: (a, b) => a >= b,
  lessThan: (a, b) => a < b,
  lessThanInclusive: (a, b) => a <= b,
  equal: (a, b) => a === b,
  notEqual: (a, b) => a !== b,
};

describe('certain is: for every point; possible is: for some point', () => {
  test.each(numberOperators)('%s of two numbers, against every pair of points', (operator) => {
    const plain = plainly[operator];
    if (!plain) throw new Error(`${operator} is not tried.`);
    fc.assert(
      fc.property(range, range, (a, b) => {
        const all = pointsOf(a).flatMap((x) => pointsOf(b).map((y) => plain(x, y)));
        expect(compare('certain', operator, a, b)).toBe(all.every(Boolean));
        expect(compare('possible', operator, a, b)).toBe(all.some(Boolean));
      }),
      { numRuns: 300, seed },
    );
  });

  test.each(['equal', 'notEqual', 'in', 'notIn'])(
    '%s of a choice, against every option',
    (operator) => {
      fc.assert(
        fc.property(among, fc.subarray([...options], { minLength: 1 }), (left, words) => {
          const wanted =
            operator === 'equal' || operator === 'notEqual' ? words.slice(0, 1) : words;
          const right = wanted.length === 1 && wanted[0] ? wanted[0] : wanted;
          const positive = operator === 'equal' || operator === 'in';
          const all = left.among.map((option) => wanted.includes(option) === positive);
          expect(compare('certain', operator, left, right)).toBe(all.every(Boolean));
          expect(compare('possible', operator, left, right)).toBe(all.some(Boolean));
        }),
        { numRuns: 200, seed },
      );
    },
  );
});

const names = ['a.a', 'b.b', 'c.c'] as const;
const leaf: fc.Arbitrary<Condition> = fc.oneof(
  fc.record({
    fact: fc.constantFrom(...names),
    operator: fc.constantFrom(...numberOperators),
    value: fc.record({ fact: fc.constantFrom(...names) }),
  }),
  fc.record({
    fact: fc.constant('wood.kind'),
    operator: fc.constantFrom('equal', 'notEqual'),
    value: fc.constantFrom(...options),
  }),
);
const condition: fc.Arbitrary<Condition> = fc.letrec<{ tree: Condition }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 3 },
    leaf,
    fc.array(tie('tree'), { minLength: 1, maxLength: 3 }).map((all) => ({ all })),
    fc.array(tie('tree'), { minLength: 1, maxLength: 3 }).map((any) => ({ any })),
  ),
})).tree;
const values = fc.tuple(range, range, range, among).map(
  ([a, b, c, kind]) =>
    new Map<string, Named>([
      ['a.a', a],
      ['b.b', b],
      ['c.c', c],
      ['wood.kind', kind],
    ]),
);

/** Every case that the ranges allow, with one value for each name. */
function points(open: ReadonlyMap<string, Named>): readonly ReadonlyMap<string, Named>[] {
  let all: ReadonlyMap<string, Named>[] = [new Map()];
  for (const [name, value] of open) {
    const each: Named[] =
      'among' in value
        ? value.among.map((option) => ({ among: [option] }))
        : pointsOf(value).map((x) => ({ lo: x, hi: x }));
    all = all.flatMap((before) => each.map((one) => new Map([...before, [name, one]])));
  }
  return all;
}

describe('whole conditions', () => {
  test('what is certain holds in every case the ranges allow; what holds in any is possible', () => {
    fc.assert(
      fc.property(condition, values, (when, open) => {
        const held = points(open).map((each) => holds(when, 'certain', lookingIn(each)));
        if (holds(when, 'certain', lookingIn(open))) expect(held.every(Boolean)).toBe(true);
        if (held.some(Boolean)) expect(holds(when, 'possible', lookingIn(open))).toBe(true);
      }),
      { numRuns: 60, seed },
    );
  });

  test('of exact values both questions have one answer', () => {
    fc.assert(
      fc.property(condition, values, (when, open) => {
        const [exact] = points(open);
        if (!exact) throw new Error('There is no point.');
        expect(holds(when, 'certain', lookingIn(exact))).toBe(
          holds(when, 'possible', lookingIn(exact)),
        );
      }),
      { numRuns: 200, seed },
    );
  });

  test('json-rules-engine and the walk hold the same rules, for both questions', async () => {
    const rules = (all: readonly Condition[]): ConditionRule[] =>
      all.map((conditions, i) => ({
        name: `rule.${i}`,
        conditions,
        event: { type: 'stop', params: { of: `rule.${i}` } },
      }));
    await fc.assert(
      fc.asyncProperty(
        fc.array(condition, { minLength: 1, maxLength: 5 }),
        values,
        async (all, open) => {
          for (const question of ['certain', 'possible'] as const) {
            const byEngine = await rulesHoldingByEngine(rules(all), question, open);
            expect([...byEngine].toSorted()).toEqual(
              [...rulesHolding(rules(all), question, open)].toSorted(),
            );
          }
        },
      ),
      { numRuns: 100, seed },
    );
  });

  test('an engine that is used again remembers nothing, and runs at once do not meet in one', async () => {
    await fc.assert(
      fc.asyncProperty(
        condition,
        fc.array(values, { minLength: 2, maxLength: 12 }),
        async (conditions, many) => {
          const of = 'rule';
          const rules: ConditionRule[] = [
            { name: of, conditions, event: { type: 'stop', params: { of } } },
          ];
          const walked = many.map((open) => [...rulesHolding(rules, 'possible', open)]);
          const asked = (open: (typeof many)[number]) =>
            rulesHoldingByEngine(rules, 'possible', open).then((held) => [...held]);
          expect(await Promise.all(many.map(asked))).toEqual(walked);
          for (const [i, open] of many.entries()) expect(await asked(open)).toEqual(walked[i]);
        },
      ),
      { numRuns: 60, seed },
    );
  });
});

describe('what cannot be compared is never taken to hold', () => {
  test.each<readonly [string, Named, Named | string]>([
    ['equal', { among: ['oak'] }, { lo: 1, hi: 1 }],
    ['equal', { lo: 1, hi: 1 }, 'oak'],
    ['greaterThan', { lo: 1, hi: 1 }, { among: ['oak'] }],
    ['contains', { lo: 1, hi: 1 }, { lo: 1, hi: 1 }],
  ])('%s of %j and %j', (operator, left, right) => {
    expect(() => compare('possible', operator, left, right)).toThrow(/compare/);
  });

  test('a name without a value is an error, not a pass', () => {
    const when: Condition = { all: [{ fact: 'x.y', operator: 'equal', value: 'no' }] };
    expect(() => holds(when, 'possible', lookingIn(new Map()))).toThrow(/“x\.y”/);
  });
});
