import { expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { sayer } from '../words/say';
import { limitsInOrder, overSaid } from './limit';
import { matterOf } from './matter';

const { label, used, limit, source } = shelf.limits['all-boxes'] ?? expect.fail();
const of = { label, used, limit, source };
const facts = { 'shelf.kind': 'oak', 'box.weight': '45 lb', 'shelf.rating': '40 lb' };

const saidOf = (limits: Topic['limits']): string => {
  const matter = matterOf(defineTopic<Topic>({ ...shelf, limits }), { facts, asOf: '2026-11-01' });
  return overSaid(matter, limitsInOrder(matter)).map(sayer({})).join(' ');
};

test('beside what falls short a load is over, and a rating exceeded', () => {
  const stock = { ...of, short: 'the stock', supply: true };
  const board = { ...of, short: 'the board' };
  const rating = { ...of, short: 'the board’s rating', exceeded: true };
  expect(saidOf({ stock, board })).toBe('The stock falls short by 5 lb; over, too: the board.');
  expect(saidOf({ stock, rating })).toBe(
    'The stock falls short by 5 lb; exceeded, too: the board’s rating.',
  );
  expect(saidOf({ stock, board, rating })).toBe(
    'The stock falls short by 5 lb; over, too: the board; exceeded, too: the board’s rating.',
  );
});
