import { readCase } from '@tarebook/casebook';
import { answerNow } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { pairAsCase } from './as-case';
import type { YardAsked } from './asked';
import { yardOf, yardTopic, yardWhys } from './which-of';

const hybrid: YardAsked = {
  kind: 'which',
  facts: {
    'vehicle.maxTrailerWeight': '3,500 lb',
    'load.occupants': [{ label: 'Four of us', weight: '600 lb' }],
  },
  chosen: undefined,
  system: 'us',
  house: undefined,
  files: undefined,
  wishes: [],
  people: 4,
};

test('a rating and four people: which, and what must be looked up', async () => {
  const { against, rows, sentence } = await yardOf(hybrid);
  expect(against).toBe('trailers');
  expect(sentence).toMatch(/^Of 30 trailers, \d+ may fit, once more is known: /);
  expect(sentence).toMatch(/Look up .*payload/);
  const open = rows.filter(({ level }) => level === 'unknown');
  expect(open.length).toBeGreaterThan(3);
  for (const { needs } of open) expect(needs.join()).toMatch(/payload is at least [\d,]+ lb/);
  const whys = [...yardWhys()];
  expect(whys.map(({ name }) => name)).toEqual(rows.map(({ name }) => name));
  for (const { says } of whys) expect(says).toMatch(/\.$/);
  // What is said of a need is not asked once more.
  expect(whys.flatMap(({ asks }) => asks).join()).not.toContain('door label');
});

test('what is narrowed down is counted by itself and comes out as before', async () => {
  const all = await yardOf(hybrid);
  const short = await yardOf({
    ...hybrid,
    wishes: [{ column: 'length', is: '<=', value: '15' }],
  });
  expect(short.rows.length).toBeGreaterThan(2);
  expect(short.rows.length).toBeLessThan(all.rows.length);
  expect(short.sentence).toMatch(new RegExp(`^Of ${short.rows.length} trailers`));
  const before = new Map(all.rows.map(({ name, level }) => [name, level]));
  for (const { name, level } of short.rows) expect(level).toBe(before.get(name));
});

test('a trailer of the catalogue against what people drive', async () => {
  const found = await yardOf({
    ...hybrid,
    facts: { 'load.occupants': [] },
    chosen: { side: 'trailers', name: 'Sallow 13' },
  });
  expect(found.against).toBe('vehicles');
  expect(found.rows.some(({ level }) => level === 'if')).toBe(true);
  expect(found.rows.some(({ level }) => level === 'stop')).toBe(true);
});

test('any pair opened as a case comes out as in the list', async () => {
  const topic = await yardTopic(undefined);
  const { rows } = await yardOf(hybrid);
  for (const { name, facts, words } of rows) {
    const doc = readCase(pairAsCase(`Theirs and ${name}`, facts, () => 'the yard'));
    expect(doc.troubles).toEqual([]);
    expect(answerNow(topic, { facts: doc.facts }).words).toBe(words);
  }
});
