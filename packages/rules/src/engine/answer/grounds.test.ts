import { expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Finding, Topic } from '../define/shapes';
import { formula, shelf } from '../define/small-topic.fixture';
import { answerNow } from './answer';

const braces = shelf.findings['not-braced'];
if (!braces) throw new Error('The shelf has lost its braces.');

/** The shelf whose limit is asked only when its rating is mentioned. */
const modest = (more: Partial<Finding> = {}): Topic =>
  defineTopic<Topic>({
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

test('a load that nobody told and that the rules bound is compared like any other range', () => {
  const topic = modest();
  const least = formula('box.weight + min(box.lid, box.weight)');
  const made: Topic = defineTopic<Topic>({
    ...topic,
    formulas: { ...topic.formulas, 'load.total': least },
  });
  const told = { 'shelf.rating': '100 lb', 'box.weight': '20 lb', 'shelf.kind': 'oak' };
  const judge = (of: Topic) =>
    answerNow(of, { facts: { ...told, 'box.lid': 'unknown' }, asOf: '2026-11-01' });
  expect([judge(made).outcome, judge(made).binding]).toEqual(['holds', 'all-boxes']);
  expect([judge(topic).outcome, judge(topic).binding]).toEqual(['cannot-say', null]);
});
