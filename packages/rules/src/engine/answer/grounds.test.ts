import { expect, test } from 'vitest';
import type { Finding, Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { answerNow } from './answer';

const braces = shelf.findings['not-braced'];
if (!braces) throw new Error('The shelf has lost its braces.');

/** The shelf whose limit is asked only when its rating is mentioned. */
const modest = (more: Partial<Finding> = {}): Topic => ({
  ...shelf,
  limits: Object.fromEntries(
    Object.entries(shelf.limits).map(([id, limit]) => [
      id,
      { ...limit, askedBy: ['shelf.rating'] },
    ]),
  ),
  findings: { 'not-braced': { ...braces, ...more } },
});

const outcome = (topic: Topic, facts: Readonly<Record<string, string>>) =>
  answerNow(topic, { facts, asOf: '2026-11-01' }).outcome;

test('a verdict that compared nothing is not clean', () => {
  expect(outcome(modest(), { 'shelf.braced': 'yes' })).toBe('cannot-say');
});

test('a stop needs no comparison of anything else', () => {
  expect(outcome(modest(), { 'shelf.braced': 'no' })).toBe('breaks');
});

test('a finding that answers a question by itself is ground enough, once it is known', () => {
  const settled = modest({ settles: true });
  expect(outcome(settled, { 'shelf.braced': 'yes' })).toBe('holds');
  expect(outcome(settled, { 'shelf.braced': 'unknown' })).toBe('cannot-say');
});

test('a limit compared by what was told is ground enough', () => {
  const told = { 'shelf.rating': '100 lb', 'box.weight': '20 lb', 'shelf.kind': 'oak' };
  expect(outcome(modest(), told)).toBe('holds');
});
