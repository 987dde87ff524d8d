import { type Answer, answerTraced, quickly, topics, towFit } from '@tarebook/rules';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { anyFacts } from './any-facts';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';

/** What an answer says of itself, in the three words of a verdict alone. */
function verdictOf({ id, outcomes }: (typeof topics)[keyof typeof topics], found: Answer) {
  const level = Object.entries(outcomes).find(([, each]) => each.id === found.outcome)?.[0];
  const states = [
    ...found.limits.map((each) => [`limit.${each.id}`, each.state] as const),
    ...found.findings.map((each) => [`finding.${each.id}`, each.level] as const),
  ];
  const decided = level === 'ok' ? undefined : states.find(([, state]) => state === level);
  expect(level, `${id} has no outcome ${found.outcome}`).toBeDefined();
  return { outcome: found.outcome, level, decidedBy: decided?.[0] ?? null };
}

const cases = markdownBelow(casesFolder, refusedFolder);

test('of every filed case the quick verdict is the one that is explained', () => {
  let seen = 0;
  const levels = new Set<string>();
  for (const { name, text } of cases) {
    const { topic, facts, front } = readFiled(text);
    if (!topic) continue;
    const day = front.asOf ?? asOf;
    const quick = quickly(topic, { asOf: day })(facts);
    expect(quick, name).toEqual(verdictOf(topic, answerTraced(topic, { facts, asOf: day })));
    levels.add(quick.level);
    seen += 1;
  }
  expect(seen).toBeGreaterThan(150);
  expect([...levels].toSorted()).toEqual(['care', 'if', 'ok', 'stop', 'unknown']);
});

describe('of facts at random the quick verdict is the one that is explained', () => {
  test.each(Object.values(topics))('$id', (topic) => {
    const judged = quickly(topic, { asOf });
    fc.assert(
      fc.property(anyFacts(topic), (facts) => {
        expect(judged(facts)).toEqual(verdictOf(topic, answerTraced(topic, { facts, asOf })));
      }),
      // Where models are sold, an open one is looked through with each of them.
      { numRuns: topic.catalogues ? 1 : 40, seed },
    );
  });
});

describe('what is no case is refused as an answer refuses it', () => {
  const judged = quickly(towFit, { asOf });
  test.each([
    ['a misspelled fact', { 'trailer.gvw': '5,000 lb' }, /trailer\.gvwr/],
    ['a weight that is none', { 'trailer.gvwr': 'heavy' }, /trailer\.gvwr/],
  ])('%s', (_, facts, says) => {
    expect(() => judged(JSON.parse(JSON.stringify(facts)))).toThrow(says);
  });
  test('no facts at all, and a day that is none', () => {
    expect(() => judged(JSON.parse('null'))).toThrow(/facts/);
    expect(() => quickly(towFit, { asOf: 'soon' })).toThrow(/day/);
  });
});
