import { topics } from '@tarebook/rules';
import type { answerNow, Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { reckoned } from '../../packages/rules/src/engine/answer/answer';
import { anyFacts } from './any-facts';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';

/** Results and slopes that are no numbers; what compares with one is never so, and would pass. */
function noNumbers(topic: Topic, facts: Parameters<typeof answerNow>[1]['facts']) {
  const { run } = reckoned(topic, { facts }, asOf);
  return Object.keys(topic.formulas).filter((name) => {
    const value = run.value(name);
    if (value.kind !== 'number') return false;
    const ends = [value, ...value.slopes.values()].flatMap(({ lo, hi }) => [lo, hi]);
    return ends.some(Number.isNaN) || !(value.lo <= value.hi);
  });
}

test.each(Object.values<Topic>(topics).map((topic) => [topic.id, topic] as const))(
  'whatever is told and not told, every result of %s has two ends',
  (_, topic) => {
    fc.assert(
      fc.property(anyFacts(topic), (facts) => {
        expect(noNumbers(topic, facts)).toEqual([]);
      }),
      // Looking through what a catalogue allows takes seconds where little is told.
      { numRuns: topic.catalogues ? 2 : 100, seed },
    );
  },
);
