import { expect, test } from 'vitest';
import { shelf } from '../define/small-topic.fixture';
import { answerNow, checkTopic, defineTopic, InputError, topicFromPublished } from '../index';

// Written as a program without a compiler writes it.
// biome-ignore lint/suspicious/noExplicitAny: a rule set that the compiler would not take
type Loose = any;

const changed = (change: (topic: Loose) => void): Loose => {
  const copy: Loose = structuredClone(shelf);
  change(copy);
  return copy;
};

const refused = (act: () => unknown): readonly string[] => {
  try {
    act();
  } catch (problem) {
    if (problem instanceof InputError) return problem.problems.map(({ fact }) => fact);
    throw problem;
  }
  return [];
};

const first = (group: object): string => Object.keys(group)[0] ?? '';
const parameter = (value: unknown) => (topic: Loose) => {
  topic.parameters[first(shelf.parameters)].values[0].value = value;
};
const words = (value: unknown) => (topic: Loose) => {
  topic.wordTables = {
    density: {
      ...{ label: 'Density', valueUnit: 'lb/gal', values: { oak: value } },
      source: { class: 'invented', cite: 'For this test' },
    },
  };
};

test.each<readonly [string, (topic: Loose) => void, RegExp]>([
  ['null for the value of a parameter', parameter(null), /^parameters\./],
  ['a text for it', parameter('19'), /^parameters\./],
  ['no number for it', parameter(Number.NaN), /^parameters\./],
  ['null in a table of words', words(null), /^wordTables\.density\.values\.oak/],
  ['a text in a table of words', words('eighty'), /^wordTables\.density\.values\.oak/],
  ['a density below nothing', words(-8.3), /^wordTables density oak/],
  [
    'a version in words',
    (topic) => {
      topic.version = 'one';
    },
    /^version/,
  ],
  [
    'an outcome left out',
    (topic) => {
      delete topic.outcomes.stop;
    },
    /^outcomes\.stop/,
  ],
  [
    'no outcome where a proviso is open',
    (topic) => {
      delete topic.outcomes.if;
    },
    /^outcomes if/,
  ],
  [
    'one outcome for two levels',
    (topic) => {
      topic.outcomes.stop.id = topic.outcomes.ok.id;
    },
    /^outcomes /,
  ],
  [
    'null for a fact',
    (topic) => {
      topic.facts[first(shelf.facts)] = null;
    },
    /^facts\./,
  ],
  [
    'a text for the cautions',
    (topic) => {
      topic.cautions = 'Weigh the rig.';
    },
    /^cautions/,
  ],
  [
    'a text for the least of a fact',
    (topic) => {
      const [id] =
        Object.entries<Loose>(topic.facts).find(([, { kind }]) => kind === 'quantity') ?? [];
      topic.facts[id ?? ''].least = '0';
    },
    /^facts\./,
  ],
])('%s is told by the check, and refused by whatever answers', (_, change, place) => {
  const told = checkTopic(defineTopic(changed(change))).map(({ fact }) => fact);
  expect(told.join('\n')).toMatch(place);
  expect(refused(() => answerNow(defineTopic(changed(change)), { facts: {} })).join()).toMatch(
    place,
  );
});

test('what was right stays so, also as it is published', () => {
  expect(checkTopic(defineTopic(changed(() => undefined)))).toEqual([]);
  expect(() => topicFromPublished(structuredClone(shelf))).not.toThrow();
});
