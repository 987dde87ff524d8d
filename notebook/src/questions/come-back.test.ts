import { expect, test } from 'vitest';
import { recordsOf } from '../state/questions';
import { openTopic } from '../state/topics';
import { caseName } from './back-link';
import { askedFor, factsIn, linksIn, markedOff, withoutLink, withReturned } from './come-back';

const [asked] = recordsOf([{ channel: '', asker: '', askedOn: '', text: 'Can I tow it?' }], 1);
if (!asked) throw new Error('A message makes a record.');
const name = caseName(asked, { text: 'Can I tow it?' });
const link = `https://here.example/#/case/tow-fit/${name}/AbC-_9`;

test('a link to a question is found in what was pasted, and nothing else is', () => {
  const text = `Dale, Nov 30\nHere you are: ${link}\n\nAnd https://here.example/#/case/tow-fit/mine-1/AbC`;
  expect(linksIn(text)).toEqual([link]);
  const marked = markedOff(text, [link]);
  expect(marked).not.toContain('asked-');
  expect(withoutLink(marked.split('\n\n')[0] ?? '')).toBe(undefined);
  expect(withoutLink(markedOff(`${link} But what about the tongue?`, [link]))).toBe(
    'But what about the tongue?',
  );
  expect(withoutLink('What pressure?')).toBe('What pressure?');
});

test('a picture of megabytes within a pasted mail does not hold the page', () => {
  const run = 'QUJD'.repeat(50_000);
  const began = performance.now();
  expect(linksIn(`${run}\n${link}`)).toEqual([link]);
  expect(linksIn(`${'#/case/a'.repeat(50_000)} ${link}`)).toEqual([link]);
  // By the square of its length this took many seconds.
  expect(performance.now() - began).toBeLessThan(1000);
});

test('its name tells of which message and question it is, also where it came by a link', () => {
  const questions = () => ['Can I tow it?'];
  for (const each of [name, `shared: ${name} 0123abcd`]) {
    expect(askedFor(each, [asked], questions)).toEqual({ asked, question: 'Can I tow it?' });
  }
  expect(askedFor('mine-5', [asked], questions)).toBe(undefined);
  expect(askedFor(name, [], questions)).toBe(undefined);
  expect(askedFor(name, [asked], () => ['Another one'])).toBe(undefined);
});

test('what comes back opens its question again, and the same once more is nothing new', () => {
  const came = { topic: 'tow-fit', facts: { 'trailer.gvwr': '5000 lb' } };
  const waits = { ...asked, waits: 'the label', done: 9 };
  const now = withReturned(waits, 'Can I tow it?', {}, came);
  expect(now).toMatchObject({
    waits: '',
    done: 0,
    back: { 'Can I tow it?': { 'trailer.gvwr': '5000 lb' } },
  });
  const again = now && withReturned(now, 'Can I tow it?', {}, came);
  expect(again).toBe(undefined);
});

test('what the rules refuse of what came back is named as it was written', async () => {
  const topic = await openTopic('tow-fit');
  if (!topic) throw new Error('The rules are there.');
  const given = { 'trailer.gvwr': '5000 parsecs', 'trailer.dryWeight': '3900 lb' };
  const { facts, unread } = await factsIn('tow-fit', { topic, facts: given, troubles: [] });
  expect(facts).toEqual({ 'trailer.dryWeight': '3900 lb' });
  expect(unread).toEqual([`${topic.facts['trailer.gvwr']?.label} “5000 parsecs”`]);
});
