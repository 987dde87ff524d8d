import { topics } from '@tarebook/rules';
import {
  type FactsGiven,
  type FormName,
  formNames,
  formsOf,
  presentId,
  type Topic,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

/**
 * That somebody does not know a fact is heard however it is written, and under whatever name the fact
 * had before: in every form the same.
 */
const asOf = '2026-11-01';

const formsWith = (topic: Topic, facts: FactsGiven) =>
  formsOf(topic, { facts, asOf }, { changes: { remedies: [] } }).forms;

/** A slip shows what was told as it was written; all else is made of what that means. */
const made = formNames.filter((form) => form !== 'slip');

function differing(
  topic: Topic,
  [one, other]: readonly [FactsGiven, FactsGiven],
  forms: readonly FormName[],
): readonly string[] {
  const [a, b] = [formsWith(topic, one), formsWith(topic, other)];
  return forms
    .filter((form) => a[form] !== b[form])
    .map((form) => `${topic.id}, ${form}: ${a[form]} | ${b[form]}`);
}

/** A fact that a danger is asked by, of each topic that has one. */
const dangerous = Object.values(topics).flatMap((topic) => {
  const all = Object.values(topic.findings).filter(({ first }) => first);
  const facts = all.flatMap(({ askedBy = [] }) => askedBy);
  return [...new Set(facts)]
    .filter((fact) => topic.facts[fact]?.kind !== 'rows')
    .slice(0, 3)
    .map((fact) => ({ topic, fact }));
});

const renamed = Object.values(topics).flatMap((topic) =>
  Object.keys(topic.renamed ?? {}).map((old) => ({ topic, old, now: presentId(topic, old) })),
);

describe('what somebody does not know is the same', () => {
  test('in whatever letters', () => {
    expect(dangerous.length).toBeGreaterThan(20);
    expect(
      dangerous.flatMap(({ topic, fact }) =>
        differing(topic, [{ [fact]: 'unknown' }, { [fact]: ' Unknown ' }], made),
      ),
    ).toEqual([]);
  });

  test('under whatever id', () => {
    expect(renamed.length).toBeGreaterThan(3);
    const scalar = renamed.filter(({ topic, now }) => topic.facts[now]?.kind !== 'rows');
    expect(
      scalar.flatMap(({ topic, old, now }) =>
        differing(topic, [{ [now]: 'unknown' }, { [old]: 'unknown' }], formNames),
      ),
    ).toEqual([]);
  });
});
