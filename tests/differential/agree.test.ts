import { isDeepStrictEqual } from 'node:util';
import { answer, answerTraced, towFit } from '@tarebook/rules';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactCase, latticeCase, openCase } from './arbitrary-case';
import { asOf, differences, judged } from './compare';
import { givenOf } from './given';
import { plainTowFit } from './plain-tow-fit';

const many = Number(process.env.TAREBOOK_RANDOM_CASES ?? 10_000);
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** Asked for more cases, allowed more time: a busy machine is ten times slower than a quiet one. */
const timeout = 120_000 + many * 60;

describe('the rule set agrees with a second derivation', () => {
  test(`on ${many} random exact rigs, in every number, state and word`, { timeout }, () => {
    const outcomes = new Map<string, number>();
    fc.assert(
      fc.property(exactCase(), (plain) => {
        const wanted = plainTowFit(plain);
        outcomes.set(wanted.outcome, (outcomes.get(wanted.outcome) ?? 0) + 1);
        expect(differences(judged(plain), wanted)).toEqual([]);
      }),
      { numRuns: many, seed },
    );
    // A generator that seldom reaches a verdict would prove little about it.
    for (const outcome of ['fits', 'fits-with-care', 'fits-if', 'does-not-fit', 'cannot-say']) {
      expect(outcomes.get(outcome) ?? 0, outcome).toBeGreaterThan(many / 400);
    }
  });

  test('on 2,000 rigs with ratings exactly at, just under or just over what is used', () => {
    const states = new Map<string, number>();
    fc.assert(
      fc.property(latticeCase(), (plain) => {
        const wanted = plainTowFit(plain);
        for (const { state } of Object.values(wanted.limits)) {
          states.set(state, (states.get(state) ?? 0) + 1);
        }
        expect(differences(judged(plain), wanted)).toEqual([]);
      }),
      { numRuns: 2000, seed },
    );
    for (const state of ['ok', 'care', 'stop']) {
      expect(states.get(state) ?? 0, state).toBeGreaterThan(1000);
    }
  });

  test('and json-rules-engine gives the same answer as the walk of its conditions', async () => {
    for (const cases of [exactCase(), openCase()]) {
      await fc.assert(
        fc.asyncProperty(cases, async (plain) => {
          const asked = { facts: givenOf(plain), asOf };
          const [byEngine, byWalk] = [await answer(towFit, asked), answerTraced(towFit, asked)];
          // The quick way first: an answer with all its steps has thousands of parts.
          if (!isDeepStrictEqual(byEngine, byWalk)) expect(byEngine).toEqual(byWalk);
        }),
        { numRuns: Math.max(300, many / 100), seed },
      );
    }
  });
});
