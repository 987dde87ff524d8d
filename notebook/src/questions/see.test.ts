import type { QuestionPart, ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import type { Asked } from '../state/questions';
import { seenOf } from './see';

const asked = (id: string, askedOn: string, more: Partial<Asked> = {}): Asked => ({
  ...{ kind: 'message', id, channel: 'mail', asker: '', askedOn, text: id },
  ...{ came: Date.UTC(2026, 10, 29, 12), place: 0, urgent: '' },
  ...{ topics: {}, struck: [], wordings: {}, done: 0, ...more },
});
const part = (text: string, topic: string | null, more: Partial<QuestionPart> = {}) => ({
  ...{ text, topic, because: [], facts: {}, words: {}, ask: [], answeredBy: null, ...more },
});
const read = (id: string, ...parts: readonly QuestionPart[]): [string, ReadMessage] => [
  id,
  { id, parts, urgent: null, urgentBecause: [], firstReply: null, sameAs: null, personal: [] },
];

test('what was asked is counted by topic and month, and open questions by what they wait for', () => {
  const messages = [
    asked('a', '2026-10-03'),
    asked('b', 'Nov 27'),
    asked('c', '11/27/2026, 9:14 AM', { done: 1 }),
    asked('d', 'yesterday', { topics: { D: 'note/when-we-are-open' } }),
    asked('e', ''),
  ];
  const readings = new Map([
    read('a', part('A', 'tires', { ask: ['Which load range?'], answeredBy: 'tires/x' })),
    read('b', part('B', 'tires', { ask: ['Which load range?'] }), part('B2', 'sway')),
    read('c', part('C', 'tires')),
    read('d', part('D', null)),
    read('e', part('E', null)),
  ]);
  const seen = seenOf(messages, readings);
  expect(seen.months).toEqual(['2026-10', '2026-11']);
  expect(seen.topics[0]).toEqual({
    ...{ about: 'tires', count: 3, months: { '2026-10': 1, '2026-11': 2 } },
  });
  expect(seen.unfiled.map(({ question }) => question)).toEqual(['B', 'B2', 'C', 'E']);
  expect(seen.waiting.map(({ what, questions }) => [what, questions.length])).toEqual([
    ['nothing: its answer is ready', 2],
    ['Which load range?', 2],
    ['a note, or words of your own', 1],
  ]);
});

test('messages that are not read yet are in no table', () => {
  expect(seenOf([asked('a', '')], new Map())).toEqual({
    ...{ months: [], topics: [], unfiled: [], waiting: [] },
  });
});
