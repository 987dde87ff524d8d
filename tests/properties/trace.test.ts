import { askedOf, type CaseDocument } from '@tarebook/casebook';
import { shorePower, topics } from '@tarebook/rules';
import { type Asked, answerTraced, type Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compiledOf, reckoned } from '../../packages/rules/src/engine/answer/answer';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { anyFacts } from './any-facts';
import { readsOf } from './reads';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** For each step, what it was reckoned with and neither it nor anything below it tells. */
function untold(topic: Topic, asked: Asked): readonly string[] {
  const { trace, asOf } = answerTraced(topic, asked);
  const { run } = reckoned(topic, asked, asOf);
  const reads = readsOf(compiledOf(topic), run);
  const below = (name: string, seen = new Set<string>()): ReadonlySet<string> => {
    if (seen.has(name)) return seen;
    seen.add(name);
    const { from = [], decidedBy = [] } = trace.steps[name] ?? {};
    for (const each of [...from, ...decidedBy]) below(each, seen);
    return seen;
  };
  return Object.entries(trace.steps).flatMap(([name, { kind }]) => {
    if (kind !== 'formula' && kind !== 'decision') return [];
    const told = below(name);
    return [...reads(name)]
      .filter((each) => !told.has(each) || !Object.hasOwn(trace.steps, each))
      .map((each) => `${name}: ${each}`);
  });
}

const worked = markdownBelow(casesFolder, refusedFolder).map(
  ({ name, text }): readonly [string, CaseDocument] => [name, readFiled(text)],
);

describe('every fact, parameter and table that a result was reckoned with stands in its trace', () => {
  test.each(worked)('%s', (_, doc) => {
    const { topic, asked } = askedOf(doc);
    expect(untold(topic, asked)).toEqual([]);
  });

  test.each(Object.values<Topic>(topics).map((topic) => [topic.id, topic] as const))(
    'random facts of %s',
    (_, topic) => {
      fc.assert(
        fc.property(anyFacts(topic), (facts) => {
          expect(untold(topic, { facts, asOf: '2026-11-01' })).toEqual([]);
        }),
        // Looking through what a catalogue allows takes seconds where little is told.
        { numRuns: topic.catalogues ? 2 : 25, seed },
      );
    },
  );
});

test('the hours of the day that shore power is reckoned over are told in its cases', () => {
  const hours = worked.filter(([, doc]) => doc.topic?.id === 'shore-power');
  const told = hours.map(([, doc]) => {
    const { topic, asked } = askedOf(doc);
    return Object.keys(answerTraced(topic, asked).trace.steps);
  });
  const names = Object.keys(shorePower.parameters);
  expect(names.filter((name) => !told.some((steps) => steps.includes(name)))).toEqual([]);
});
