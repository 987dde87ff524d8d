import { readFileSync } from 'node:fs';
import { readCase } from '@tarebook/casebook';
import { parse } from 'csv-parse/sync';
import { beforeAll, expect, test } from 'vitest';
import { isAboard, type LoadRow, loadsFor } from './loads';
import { turned } from './loads-turned';
import { rowsOf } from './people';
import { openReader } from './reading';
import { openTopic } from './topics';

const rows: LoadRow[] = parse(
  readFileSync(new URL('../../../seeds/loads.csv', import.meta.url), 'utf8'),
  { columns: true, comment: '#' },
);
const lists = ['load.occupants', 'load.cargo', 'trailer.cargo'];
const loads = loadsFor(rows, lists);
const text = `---
title: Loads
topic: tow-fit
---

| \`load.occupants\` | Weight |
| --- | --- |
| Driver | 170 lb |
| Grandmother | 120 lb |

| \`trailer.cargo\` | Weight |
| --- | --- |
| Tools | 45 lb |
`;
const named = (name: string) => {
  const found = loads.find((each) => each.name === name);
  if (!found) throw new Error(`There is no load “${name}”.`);
  return found;
};

beforeAll(async () => {
  await openReader();
  await openTopic('tow-fit');
});

test('every load of the seeds is a row that its list takes', () => {
  for (const load of loads) {
    const doc = readCase(turned(readCase(text), load, loads));
    expect(doc.troubles, load.name).toEqual([]);
    expect(isAboard(doc, load), load.name).toBe(true);
  }
});

test('a load takes the place of another, stands beside what was packed by hand, and goes again', () => {
  const weekend = readCase(turned(readCase(text), named('a weekend'), loads));
  const week = readCase(turned(weekend, named('a week'), loads));
  expect(isAboard(week, named('a week'))).toBe(true);
  expect(isAboard(week, named('a weekend'))).toBe(false);
  expect(rowsOf(week, 'trailer.cargo').map(({ label }) => label)).toContain('Tools');
  const again = readCase(turned(week, named('a week'), loads));
  expect(rowsOf(again, 'trailer.cargo').map(({ label }) => label)).toEqual(['Tools']);
});

test('who rides along is whoever is named, and nobody else', () => {
  const two = readCase(turned(readCase(text), named('two and a dog'), loads));
  const names = (doc: typeof two) => rowsOf(doc, 'load.occupants').map(({ label }) => label);
  expect(names(two)).toEqual(['Driver', 'Partner', 'Dog and crate']);
  const four = readCase(turned(two, named('four of us'), loads));
  expect(names(four)).toEqual(['Driver', 'Partner', 'Child', 'Child']);
  expect(rowsOf(four, 'load.cargo')).toHaveLength(1);
});

test('a topic that asks for none of its lists offers no load', () => {
  expect(loadsFor(rows, ['boxes'])).toEqual([]);
});
