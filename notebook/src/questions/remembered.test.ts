import { expect, test } from 'vitest';
import type { Asked } from '../state/questions';
import { setRightAsBefore } from './remembered';

const asked = (id: string, more: Partial<Asked> = {}): Asked => ({
  ...{ kind: 'message', id, channel: '', asker: '', askedOn: '', text: '', came: 0, place: 0 },
  ...{ urgent: '', topics: {}, struck: [], wordings: {}, done: 0, ...more },
});
const read = (id: string, text: string) => ({
  ...{ id, urgent: null, urgentBecause: [], firstReply: null, sameAs: null, personal: [] },
  parts: [{ text, topic: null, because: [], facts: {}, words: {}, ask: [], answeredBy: null }],
});

test('what a person set right counts for whoever asks in the same words', () => {
  const messages = [
    asked('a', { topics: { 'U open Saturday?': 'note/when-we-are-open' } }),
    asked('b'),
  ];
  const [now, another] = setRightAsBefore(messages, [read('b', 'u open saturday')]);
  expect(now?.topics).toEqual({ 'u open saturday': 'note/when-we-are-open' });
  expect(another).toBe(undefined);
});

test('other words, an own choice, and what is done are left as they are', () => {
  const right = { 'U open Saturday?': 'note/when-we-are-open' };
  const own = asked('b', { topics: { 'u open saturday': 'none' } });
  expect(
    setRightAsBefore([asked('a', { topics: right }), own], [read('b', 'u open saturday')]),
  ).toEqual([]);
  const both = [asked('a', { topics: right }), asked('b')];
  expect(setRightAsBefore(both, [read('b', 'are you open on monday')])).toEqual([]);
  const done = [asked('a', { topics: right }), asked('b', { done: 5 })];
  expect(setRightAsBefore(done, [read('b', 'u open saturday')])).toEqual([]);
});
