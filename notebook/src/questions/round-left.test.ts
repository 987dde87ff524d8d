import { expect, test } from 'vitest';
import type { Asked } from '../state/questions';
import { ownPlace, unansweredIn } from './round-left';

const asked = (id: string, more: Partial<Asked> = {}): Asked => ({
  ...{ kind: 'message', id, came: 1, place: 0, channel: 'Mail', asker: '', askedOn: '' },
  ...{ text: id, topics: {}, struck: [], wordings: {}, urgent: '', done: 0, ...more },
});
const part = (text: string, topic: string | null) => ({
  ...{ text, topic, because: [], facts: {}, words: {}, ask: [], answeredBy: null },
});
const read = (
  id: string,
  parts: readonly ReturnType<typeof part>[],
  sameAs: string | null = null,
) =>
  [
    id,
    { id, parts, urgent: null, urgentBecause: [], firstReply: null, sameAs, personal: [] },
  ] as const;

test('what nothing answers is left out of a round, once, and said; what can be answered is not', () => {
  const readings = new Map([
    read('a', [part('a1', null), part('a2', 'tires')]),
    read('b', [part('b1', null)]),
    read('again', [part('b1', null)], 'b'),
    read('own', [part('c1', null)]),
    read('done', [part('d1', null)]),
    read('urgent', [part('e1', null)]),
  ]);
  const messages = [
    ...[asked('a'), asked('b'), asked('again')],
    asked('own', { wordings: { [ownPlace({ text: 'c1' })]: 'Until noon.' } }),
    asked('done', { done: 1 }),
    asked('urgent', { urgent: 'gas' }),
  ];
  const left = unansweredIn({ items: [] }, messages, readings);
  expect(left.map((each) => [each.part.text, each.isOnly])).toEqual([
    ['a1', false],
    ['b1', true],
  ]);
});
