import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { walkedCase } from './record';
import { sumsOf } from './sums';

const topics = ['tow-fit', 'gas-supply', 'tires'] as const;

beforeAll(async () => {
  await Promise.all([openReader(), ...topics.map(openTopic)]);
});

function sums(path: string) {
  const text = readFileSync(new URL(`../../../cases/${path}.md`, import.meta.url), 'utf8');
  const walked = walkedCase({ text });
  return walked ? sumsOf(walked).map(({ label, working, says }) => [label, working, says]) : [];
}

test('what was asked is reckoned line by line, and then what the limit holds', () => {
  const lines = sums('gas-supply/four-cold-nights');
  expect(lines.slice(0, 2)).toEqual([
    ['Furnace, a night', '30,000 Btu/h × 11 h × 60 %', '198,000 Btu'],
    ['Propane for the furnace, a night', '198,000 Btu ÷ 21,548 Btu/lb', '9.2 lb'],
  ]);
  expect(lines.at(-1)).toEqual([
    'Propane on board, counted by its heat',
    '861,920 Btu ÷ 21,548 Btu/lb',
    '40 lb',
  ]);
  expect(sums('tires/four-good-tires').length).toBeLessThanOrEqual(6);
});

test('of a load that is known in part the part is said, and nothing of what nobody knows', () => {
  expect(sums('tow-fit/two-too-many').at(-1)).toEqual([
    'Payload used',
    '1,140 lb + unknown',
    '1,140 lb or more',
  ]);
  expect(sums('tow-fit/minimal-no-fact')).toEqual([]);
});

test('an age is said as a person says it, without the day that it was reckoned on', () => {
  expect(sums('tires/minimal-one-fact-made-in-2018')).toEqual([
    ['Age of the tire (three digits: at the least)', '', '7.9–8.9 yr'],
  ]);
});
