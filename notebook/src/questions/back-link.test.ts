import { afterEach, expect, test, vi } from 'vitest';
import type { Kept } from '../state/kept';
import { type Asked, recordsOf } from '../state/questions';
import type { Answered } from './answer-shapes';
import { caseOfQuestion, isOwnAlone, withLink } from './back-link';

const store = new Map<string, Kept>();
const shelf = {
  keptCase: async (topic: string, name: string) => store.get(`${topic}/${name}`),
  keep: async (kept: Kept) => {
    store.set(`${kept.topic}/${kept.name}`, kept);
  },
};

const text = 'Can I tow it?';
const part = {
  ...{ text, topic: 'tow-fit', because: [], facts: {}, words: {}, ask: [] },
  answeredBy: null,
};
const record = (): Asked => {
  const [made] = recordsOf([{ channel: '', asker: '', askedOn: '', text }], 1);
  if (!made) throw new Error('A message makes a record.');
  return made;
};
const asked = record();
const only = () => [...store.values()].map((each) => each.text);

afterEach(() => {
  store.clear();
  vi.unstubAllGlobals();
});

test('a case that nobody changed opens with what came back since', async () => {
  const first = await caseOfQuestion('payload unknown', asked, part, shelf);
  const now = { ...asked, cases: { [text]: first.made ?? '' } };
  const again = await caseOfQuestion('payload 1260 lb', now, part, shelf);
  expect(again).toMatchObject({ address: first.address, isStale: false });
  expect(only()).toEqual(['payload 1260 lb']);
});

test('one that somebody changed stays as it was left, and is called stale once answers differ', async () => {
  const { made = '', address } = await caseOfQuestion('payload unknown', asked, part, shelf);
  const now = { ...asked, cases: { [text]: made } };
  for (const [key, each] of store) store.set(key, { ...each, text: 'payload 900 lb, by hand' });
  expect(await caseOfQuestion('payload unknown', now, part, shelf)).toEqual({
    address,
    isStale: false,
  });
  expect(await caseOfQuestion('payload 1260 lb', now, part, shelf)).toEqual({
    address,
    isStale: true,
  });
  expect(only()).toEqual(['payload 900 lb, by hand']);
});

const answered: Answered = {
  ...{
    form: 'askBack',
    fits: 'askBack',
    text: 'What does the label say?',
    cautions: [],
    isWarning: false,
  },
  ...{ saved: { topic: 'tow-fit' }, doc: '# A case', asks: [] },
};

test('a link goes along only from a page that others can open', async () => {
  vi.stubGlobal('location', { href: 'https://rules.example/#/questions' });
  expect((await withLink(answered, asked, part)).text).toContain(
    'https://rules.example/#/case/tow-fit/asked-',
  );
  for (const at of [
    'http://localhost:4173/',
    'http://127.0.0.1/',
    'http://[::1]:80/',
    'file:///a',
  ]) {
    expect(isOwnAlone(at)).toBe(true);
    vi.stubGlobal('location', { href: `${at}#/questions` });
    expect(await withLink(answered, asked, part)).toBe(answered);
  }
});

test('where nothing can be packed the answer stands without its link', async () => {
  vi.stubGlobal('location', { href: 'https://rules.example/#/questions' });
  vi.stubGlobal('CompressionStream', undefined);
  expect(await withLink(answered, asked, part)).toBe(answered);
});
