import { readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { beforeAll, expect, test } from 'vitest';
import { countOf, kindOf, kindsOfPeople, people, peopleInWords, peopleList } from './people';
import { withOneLess, withOneMore } from './people-counted';
import { openReader } from './reading';
import { openTopic } from './topics';

const blank = '---\ntitle: People\ntopic: tow-fit\n---\n\nWho comes?\n';
const more = (text: string, ...kinds: readonly (typeof kindsOfPeople)[number][]): string =>
  kinds.reduce((before, kind) => withOneMore(readCase(before), kind), text);

beforeAll(async () => {
  await openReader();
  await openTopic('tow-fit');
});

test('a case that says nothing of who comes has the driver whom the rules count', () => {
  expect(peopleInWords(readCase(blank))).toBe('1 adult');
  expect(withOneLess(readCase(blank), 'adult')).toBe(blank);
});

test('everyone who is added is a row that can be read, with a name and a weight of its own', () => {
  const doc = readCase(more(blank, 'adult', 'child', 'child', 'dog'));
  expect(doc.troubles).toEqual([]);
  expect(doc.facts[peopleList]).toEqual([
    { label: 'Driver', weight: '150 lb' },
    { label: 'Adult 2', weight: '150 lb' },
    { label: 'Child', weight: '80 lb' },
    { label: 'Child 2', weight: '80 lb' },
    { label: 'Dog', weight: '60 lb' },
  ]);
  expect(peopleInWords(doc)).toBe('2 adults, 2 children and 1 dog');
});

test('the last of a kind goes first, and the driver stays', () => {
  let text = more(blank, 'adult', 'dog');
  text = withOneLess(readCase(text), 'adult');
  expect(countOf(readCase(text), 'adult')).toBe(1);
  expect(withOneLess(readCase(text), 'adult')).toBe(text);
  text = withOneLess(readCase(text), 'dog');
  expect(withOneLess(readCase(text), 'dog')).toBe(text);
  expect(peopleInWords(readCase(text))).toBe('1 adult');
});

test('people of a case that was written by hand are counted by what they are called', () => {
  expect(kindOf('Driver')).toBe('adult');
  expect(kindOf('Older child')).toBe('child');
  expect(kindOf('Dog and crate')).toBe('dog');
  expect(kindOf('Parrot')).toBeUndefined();
});

test('a name is never given twice, whatever was left out before', () => {
  let text = more(blank, 'adult', 'adult');
  const doc = readCase(text);
  const rows = doc.facts[peopleList];
  expect(Array.isArray(rows) && rows.length).toBe(3);
  text = text.replace('| Adult 2 | 150 lb |\n', '');
  const labels = readCase(more(text, 'adult')).facts[peopleList];
  const names = Array.isArray(labels) ? labels.map((row) => row.label) : [];
  expect(new Set(names).size).toBe(names.length);
});

test('the weights that are taken are within what the topic takes, and a published one is what is printed', () => {
  for (const kind of kindsOfPeople) {
    expect(readCase(more(blank, kind)).troubles).toEqual([]);
  }
  const silent = topics['tow-fit']?.facts[peopleList];
  expect(silent?.kind).toBe('rows');
  // 49 CFR 571.110: 68 kg, which the label in the door gives as 150 lb.
  expect(Math.round(68 / 0.45359237)).toBe(150);
  expect(people.adult.weight).toBe('150 lb');
});
