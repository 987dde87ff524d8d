import { expect, test } from 'vitest';
import type { Asked } from '../state/questions';
import { draftOf, newRound } from '../state/round';
import type { Answered, AnswerForm } from './answer-shapes';
import { withForm } from './form-for';
import { followed, spokenOf } from './make-round';
import type { Sought } from './reader';

const asked = (wordings: Readonly<Record<string, string>> = {}): Asked => ({
  ...{ kind: 'message', id: 'k1', came: 1, place: 0, channel: 'Mail', asker: '', askedOn: '' },
  ...{ text: 'Can it pull it?', topics: {}, struck: [], wordings, waits: '', urgent: '', done: 0 },
});
const part = {
  ...{ text: 'Can it pull it, 205 and all?', topic: 'tow-fit', because: [], facts: {} },
  ...{ words: {}, ask: [], answeredBy: null },
};
const caution = 'Cross the chains every time.';

/** Answers in the form that is wanted, else in the one that fits. */
const answer =
  (fits: AnswerForm) =>
  async ({ form }: Sought): Promise<Answered> => {
    const now = form === 'aloud' ? 'everybody' : (form ?? fits);
    return {
      ...{ form: now, fits, text: `Said in ${now}.`, cautions: [caution], saved: {} },
      ...{ isWarning: false, doc: '# A case', asks: [] },
    };
  };

test('the round says what stands on the card, in the form that it shows', async () => {
  const said = async (fits: AnswerForm, more: object = {}, of = asked()) =>
    (await spokenOf(of, part, { answer: answer(fits), ...more }))?.answer;
  expect(await said('post')).toBe('Said in post.');
  expect(await said('post', { form: 'spoken' })).toBe('Said in spoken.');
  expect(await said('post', {}, withForm(asked(), part, 'everybody'))).toBe('Said in everybody.');
  // What was chosen for another question is not taken for this one.
  const other = withForm(asked(), { text: 'And how fast?' }, 'everybody');
  expect(await said('post', {}, other)).toBe('Said in post.');
  // Nobody is asked back aloud: it is said to everybody.
  expect(await said('askBack')).toBe('Said in everybody.');
});

test('what is asked of one person is no part of the round; a mere question gives way', async () => {
  const ask = 'Find out next: what does it weigh? (a scale)';
  const answering =
    (text: string, aloud: string) =>
    async (of: Sought): Promise<Answered> => ({
      ...(await answer('post')(of)),
      text: of.form === 'aloud' ? aloud : text,
    });
  const said = async (text: string, aloud: string) =>
    (await spokenOf(asked(), part, { answer: answering(text, aloud) }))?.answer;
  expect(await said(`Weigh it. ${ask}`, 'All weigh it.')).toBe('Weigh it.');
  expect(await said(ask, `All weigh it. ${ask}`)).toBe('All weigh it.');
  expect(await said(ask, ask)).toBe(
    'That cannot be said before this is known: what does it weigh?',
  );
  // Words of one's own stay as they were written.
  const own = asked({ [`post ${part.text}`]: ask });
  expect((await spokenOf(own, part, { answer: answer('post') }))?.answer).toBe(ask);
});

test('words of one’s own are spoken as they stand, and nothing is added to them', async () => {
  const own = asked({ [`post ${part.text}`]: 'Yes, it does.' });
  const chosen = { answer: answer('post') };
  expect((await spokenOf(own, part, chosen))?.answer).toBe('Yes, it does.');
});

test('what is not used is told beside the card, and never spoken', async () => {
  const chosen = { answer: answer('post') };
  expect((await spokenOf(asked(), part, chosen))?.answer).not.toContain('205');
});

test('what was set right beside a question is followed; what was written in the round stays', async () => {
  const spoken = await spokenOf(asked(), part, { answer: answer('post') });
  if (!spoken) throw new Error('Nothing is spoken.');
  const reading = { ...{ id: 'k1', parts: [part], urgent: null, urgentBecause: [] } };
  const readings = new Map([['k1', { ...reading, firstReply: null, sameAs: null, personal: [] }]]);
  const now = asked({ [`post ${part.text}`]: 'It is 6,800 lb.' });
  const after = async (item: typeof spoken) => {
    const round = { ...newRound(1), items: [item] };
    return (await followed(round, [now], readings, { answer: answer('post') })).items[0];
  };
  expect((await after({ ...spoken, name: 'Ann' }))?.answer).toBe('It is 6,800 lb.');
  expect((await after({ ...spoken, name: 'Ann' }))?.name).toBe('Ann');
  expect((await after({ ...spoken, answer: 'By hand.' }))?.answer).toBe('By hand.');
  expect((await after({ ...spoken, isKept: true }))?.answer).toBe('Said in post.');
  expect(draftOf(spoken)).toBe(spoken.drafted);
  expect(spoken.cautions).toEqual([caution]);
});
