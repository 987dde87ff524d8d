import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import type { CurveFigure } from './figure';
import { stayFigures } from './off-grid-stay';

function figuresOf(name: string): readonly CurveFigure[] {
  const file = new URL(`../../../cases/off-grid-stay/${name}.md`, import.meta.url);
  const doc = readCase(readFileSync(file, 'utf8'));
  return stayFigures({ doc, answer: judgeCaseNow(doc) }).filter(
    (each): each is CurveFigure => each.kind === 'curve',
  );
}

test('each store goes from full to nothing on its day, the first of them first', () => {
  const [days] = figuresOf('cassette-for-four');
  const ends = days?.lines.map(({ label, points }) => [label, points.at(-1)?.x]);
  // 5 gal at 1.6 a day, 80 at 14, 70 at 11.9; the battery loses nothing and is foretold for 90 days.
  expect(ends?.map(([label]) => label)).toEqual([
    'Room in the black tank',
    'Fresh water',
    'Room in the gray tank',
    'Battery above its stop line',
  ]);
  [5 / 1.6, 80 / 14, 70 / 11.9, 90].forEach((at, i) => {
    expect(ends?.[i]?.[1]).toBeCloseTo(at, 4);
  });
  expect(days?.here).toEqual({ label: 'the stay', x: { lo: 4, hi: 4 } });
});

test('what lasts much longer is cut off, and never what runs out first', () => {
  const [days] = figuresOf('cassette-for-four');
  expect(days?.x.most).toBeGreaterThan(5 / 1.6);
  expect(days?.x.most).toBeLessThan(90);
  expect(figuresOf('everything-just-so')[0]?.x.most).toBeUndefined();
});

test('a battery that fails the first night may last from no time to a day', () => {
  const [days, battery] = figuresOf('balanced-but-not-by-night');
  const points = days?.lines.find(({ label }) => label.startsWith('Battery'))?.points;
  expect(points).toEqual([
    { x: 0, y: { lo: 0, hi: 100 } },
    { x: 1, y: { lo: 0, hi: 0 } },
  ]);
  // The night itself, hour by hour: below the stop line and up again in the sun.
  const hours = battery?.lines[0]?.points.map(({ y }) => y.hi) ?? [];
  expect(hours).toHaveLength(25);
  expect(Math.min(...hours)).toBeLessThan(battery?.stops?.[0]?.at ?? 0);
});

test('a store of which nothing is known has no line', () => {
  expect(figuresOf('nobody-looked-at-the-gauge')).toEqual([]);
  const [days] = figuresOf('first-weekend-in-the-woods');
  expect(days?.lines.map(({ label }) => label)).toEqual(['Fresh water', 'Room in the gray tank']);
});
