import { describe, expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import { bringingCatalogues } from '../answer/bringing-catalogues';
import { publish } from '../answer/stock';
import type { Topic } from '../define/shapes';
import { topicFromPublished } from '../versions/published';
import { defineTopic } from './define';
import { isPlain } from './given';
import { sayProblem } from './messages';
import { InputError } from './problem';
import { checkTopic } from './topic';
import { soundTables } from './wrong-tables.fixture';
import { shelfWith, soundShelves } from './wrong-topics.fixture';

/** Every place in it, as the keys that lead there. */
function* placesIn(value: unknown, at: readonly string[] = []): Generator<readonly string[]> {
  if (at.length > 0) yield at;
  if (!isPlain(value) && !Array.isArray(value)) return;
  for (const [key, inner] of Object.entries(value)) yield* placesIn(inner, [...at, key]);
}

/** The same with something else in that place; undefined: with nothing there. */
function withAt(whole: unknown, [key = '', ...rest]: readonly string[], other: unknown): unknown {
  const inner: unknown = Object.entries(Object(whole)).find(([each]) => each === key)?.[1];
  const now = rest.length === 0 ? other : withAt(inner, rest, other);
  return Array.isArray(whole)
    ? whole.map((each, i) => (String(i) === key ? now : each))
    : { ...Object(whole), [key]: now };
}

const refusals = (act: () => unknown): readonly string[] => {
  try {
    act();
  } catch (problem) {
    if (problem instanceof InputError) return problem.problems.map(sayProblem);
    throw problem;
  }
  return [];
};

const others = [null, 5, 'x', [], {}, undefined] as const;
const sound = Object.entries({ ...soundShelves, ...soundTables });
const whole: readonly (readonly [string, Topic])[] = [['shelf', shelfWith({})], ...sound];

describe.each(whole)('in a rule set with %s', (part, topic) => {
  const places = [...placesIn(topic)].filter(([key]) => part === 'shelf' || key === part);

  test('nothing is told of it as it should be', () => {
    expect(places.length).toBeGreaterThan(3);
    expect(checkTopic(bringingCatalogues(topic)).map(sayProblem)).toEqual([]);
  });

  test.each(others)('whatever is %j is told in sentences, or taken', (other) => {
    for (const at of places) {
      // biome-ignore lint/suspicious/noExplicitAny: a rule set from a file may be anything
      const made = (): Topic => bringingCatalogues(withAt(topic, at, other) as any);
      const told = [
        ...checkTopic(made()).map(sayProblem),
        ...refusals(() => answerNow(defineTopic(made()), { facts: { 'box.weight': '5 lb' } })),
        ...refusals(() => topicFromPublished(publish(defineTopic(made())))),
      ];
      for (const each of told) expect(each).toMatch(/^\S.*[.?]$/s);
    }
  });
});
