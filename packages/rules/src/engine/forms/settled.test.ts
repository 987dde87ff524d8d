import { expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { english } from '../words/en';
import { sayer } from '../words/say';
import { begun } from './length';
import { matterOf } from './matter';
import { careHeard } from './settled';

const limit = shelf.limits['all-boxes'] ?? expect.fail();
const topic: Topic = defineTopic<Topic>({
  ...shelf,
  limits: { 'all-boxes': { ...limit, near: 'Put nothing more on it.' } },
  outcomes: { ...shelf.outcomes, care: { ...shelf.outcomes.care, plain: 'It holds' } },
});
const facts = {
  'shelf.kind': 'oak',
  'shelf.braced': 'yes',
  'box.weight': '45 lb',
  'shelf.rating': '49 lb',
};
const matter = matterOf(topic, { facts, asOf: '2026-11-01', language: english });
const say = sayer({ language: english, medium: 'spoken' });
const heard = (...lines: readonly string[]) =>
  careHeard(matter, undefined, lines, (of) => begun(say(of)));

test('what is to be done is pointed at only where it was said', () => {
  const minded = 'It holds, but mind one thing.';
  expect(heard(minded, 'Put nothing more on it.')).toEqual([minded, 'Put nothing more on it.']);
  expect(heard('Put nothing more on it.', minded)[1]).toBe('It holds, if you do that.');
  expect(heard('For now: put nothing more on it.', minded)[1]).toBe('It holds, if you do that.');
  expect(heard(minded, 'Look before you load.')).toEqual([
    'It just holds.',
    'Look before you load.',
  ]);
  expect(heard('It holds, if you do that.')).toEqual(['It just holds.']);
});
