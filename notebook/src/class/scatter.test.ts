import { expect, test } from 'vitest';
import type { Question } from './predict';
import { scattered, scatterSays } from './scatter';

const said = (...all: readonly string[]) => all.map((each) => ({ said: each }));

test('the scatter of figures shows how far apart they lie, and neither a figure nor what came out', () => {
  const question: Question = {
    ...{ kind: 'number', result: 'payload.used', label: 'Payload used', within: 20 },
    found: { lo: 1016, hi: 1016, unit: 'lb' },
  };
  const rows = scattered(
    said('1003 lb', '900', '1,001.5', 'cannot be told from this'),
    question,
    'us',
  );
  expect(rows.every(({ met }) => !met)).toBe(true);
  expect(rows.reduce((sum, { count }) => sum + count, 0)).toBe(4);
  expect(rows.at(-1)).toMatchObject({ word: 'cannot be told from this', count: 1 });
  const words = rows.map(({ word }) => word).join();
  expect(words).toMatch(/^900 to 920 lb,/);
  expect(words).not.toMatch(/1,016|1,003|1,001|near enough|too/);
  expect(scattered(said('900'), question, 'us').map(({ count }) => count)).toContain(1);
  expect(scattered(said('0'), question, 'us').map(({ count }) => count)).toContain(1);
});

test('how few questions would do is not told by how many were asked', () => {
  const question: Question = {
    ...{ kind: 'several', result: 'ask', label: 'Asked', enough: 1, found: '1 question: A' },
    words: ['A', 'B', 'C'],
  };
  expect(scattered(said('A · B', 'B · A'), question, 'us')).toEqual([
    { word: '2 questions', count: 2, met: false },
  ]);
});

test('how many answered is said, and how many were certain, not who was right', () => {
  expect(scatterSays([])).toBe('Nobody made a guess.');
  expect(scatterSays([{ said: 'a', sure: 'certain' }, { said: 'b' }])).toBe(
    '2 answers; 1 of them certain.',
  );
});
