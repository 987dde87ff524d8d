import type { ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import type { Given } from '../state/given';
import type { Asked } from '../state/questions';
import { earlierOver } from './earlier';
import type { Group } from './order';

const given = (question: string, text: string, day: string, form = 'everybody'): Given => ({
  ...{ kind: 'answer', id: `${day}-${text}`, by: 'Ines', channel: 'phone', saved: {} },
  ...{ question, text, day, form },
});

const entry = (id: string, ...questions: readonly string[]) => {
  const asked: Asked = {
    ...{ kind: 'message', id, channel: '', asker: '', askedOn: '', text: questions.join(' ') },
    ...{ came: 0, place: 0, urgent: '', topics: {}, struck: [], wordings: {}, done: 0 },
  };
  const parts = questions.map((text) => ({
    ...{ text, topic: null, because: [], facts: {}, words: {}, ask: [], answeredBy: null },
  }));
  const told = { urgent: null, urgentBecause: [], firstReply: null, sameAs: null, personal: [] };
  const read: ReadMessage = { id, parts, ...told };
  return { asked, read };
};

test('what was answered to one who asked the same is shown to who asks again, the latest first', () => {
  const of = earlierOver([
    given('How cold is too cold?', 'Below freezing.', '2026-11-20'),
    given('How cold is too cold?', 'Below 28 °F.', '2026-11-27'),
    given('How cold is too cold?', 'Below freezing.', '2026-11-21', 'post'),
    given('How cold is too cold?', 'Drain it now.', '2026-11-28', 'first reply'),
    given('When do you open?', 'At eight.', '2026-11-28'),
  ]);
  const group: Group = [entry('a', 'How cold is too cold?'), entry('b', 'what is too cold for it')];
  expect(of(group).map(({ text }) => text)).toEqual(['Below 28 °F.', 'Below freezing.']);
  expect(of([entry('c', 'Does it fit?')])).toEqual([]);
});

test('a question is found by what is left of it once what is personal is masked', () => {
  const of = earlierOver([given('Call me at […]: is it level?', 'Yes.', '2026-11-20')]);
  expect(of([entry('a', 'Call me at 555-0142: is it level?')])).toHaveLength(1);
  expect(of([entry('b', 'is it level?')])).toEqual([]);
});
