import type { ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import { type Asked, recordsOf } from '../state/questions';
import { caseName } from './back-link';
import { leftTaken, takenBack } from './take-back';
import { factsOf } from './told-so-far';

const text = 'Can I tow it?';
const record = (): Asked => {
  const [made] = recordsOf([{ channel: '', asker: '', askedOn: '', text }], 1);
  if (!made) throw new Error('A message makes a record.');
  return made;
};
const asked = record();
const linkTo = (question: string, topic = 'tow-fit') =>
  `https://here.example/#/case/${topic}/${caseName(asked, { text: question })}/AbC`;
const part = {
  ...{ text, topic: 'tow-fit', because: [], facts: {}, words: {}, ask: [] },
  answeredBy: null,
};
const others = { urgentBecause: [], firstReply: null, sameAs: null };
const reading: ReadMessage = { id: asked.id, parts: [part], urgent: null, personal: [], ...others };

/** A page with this one message, and what was put there. */
function page(message: Asked = asked, readings = new Map([[asked.id, reading]])) {
  const put: Asked[] = [];
  const host = {
    ...{
      messages: [message],
      readings,
      titleOf: (topic: string) => topic,
      labels: (_: string, fact: string) => fact,
    },
    isRead: async () => undefined,
    putBack: async (now: Asked) => put.push(now) > 0,
  };
  return { host, put };
}

const came =
  (topic: string, facts: Readonly<Record<string, string>>, unread: readonly string[] = []) =>
  async () => ({
    ...{ topic, name: caseName(asked, { text }), facts, unread },
  });

test('what comes back is kept with the rules it was asked by, and counts by no others', async () => {
  const { host, put } = page();
  const back = await takenBack(
    [linkTo(text)],
    host,
    came('tow-fit', { 'trailer.gvwr': '5000 lb' }),
  );
  expect(back).toMatchObject({ taken: [linkTo(text)], held: [] });
  const [now] = put;
  if (!now) throw new Error('It was put.');
  expect(now.backTopics).toEqual({ [text]: 'tow-fit' });
  expect(factsOf(now, part)).toEqual({ 'trailer.gvwr': '5000 lb' });
  expect(factsOf(now, { ...part, topic: 'battery-runtime' })).toEqual({});
});

test('answers by rules that the question is not about any more are not put, and it is said', async () => {
  const { host, put } = page({ ...asked, topics: { [text]: 'battery-runtime' } });
  const back = await takenBack(
    [linkTo(text)],
    host,
    came('tow-fit', { 'trailer.gvwr': '5000 lb' }),
  );
  expect(put).toEqual([]);
  expect(back).toMatchObject({ taken: [], held: [linkTo(text)] });
  expect(back.says).toContain('were not put');
});

test('what was not read is named, and “not known” undoes no answer in silence', async () => {
  const before = { [text]: { 'trailer.gvwr': '5000 lb' } };
  const { host, put } = page({ ...asked, back: before, backTopics: { [text]: 'tow-fit' } });
  const open = came('tow-fit', { 'trailer.gvwr': 'unknown' }, ['Payload “1260”']);
  const { says } = await takenBack([linkTo(text)], host, open);
  expect(put).toEqual([]);
  expect(says).toContain('Nothing new came back');
  expect(says).toContain('Payload “1260”');
  expect(says).toMatch(/nobody knows trailer\.gvwr, which came back before and stands/);
});

test('what another page left is left no more only once it was put', async () => {
  let left = linkTo(text);
  const tab = {
    link: () => left,
    isPut: () => {
      left = '';
    },
  };
  const away = await leftTaken(() => Promise.reject(new Error('away')), tab);
  expect(away).toHaveProperty('wrong');
  expect(left).not.toBe('');
  const back = { taken: [], held: [], says: 'Put.' };
  await leftTaken(async () => ({ ...back, isKept: false }), tab);
  expect(left).not.toBe('');
  expect(await leftTaken(async () => ({ ...back, isKept: true }), tab)).toEqual({ says: 'Put.' });
  expect(left).toBe('');
});

test('no link is opened whose message was never asked here, and of the others two dozen', async () => {
  const { host } = page();
  let opens = 0;
  const open = async () => {
    opens += 1;
    return { says: 'It is damaged.' };
  };
  const strange = 'https://here.example/#/case/tow-fit/asked-zzz.1/AbC';
  const none = await takenBack([strange], host, open);
  expect(opens).toBe(0);
  expect(none.says).toContain('not on this device');
  const many = Array.from({ length: 30 }, (_, at) => `${linkTo(text)}${at}`);
  const back = await takenBack(many, host, open);
  expect(opens).toBe(24);
  expect(back.held).toEqual(many.slice(24));
});

test('a message that is still being read is waited for', async () => {
  const readings = new Map<string, ReadMessage>();
  const { host, put } = page(asked, readings);
  const isRead = async (id: string): Promise<void> => {
    readings.set(id, reading);
  };
  const open = came('tow-fit', { 'trailer.gvwr': '5000 lb' });
  await takenBack([linkTo(text)], { ...host, isRead }, open);
  expect(put).toHaveLength(1);
});
