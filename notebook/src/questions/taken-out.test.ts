import { expect, test } from 'vitest';
import { type Asked, recordsOf } from '../state/questions';
import { goesOut, outSaid, withBack, without } from './taken-out';

const bunch = (came: number, ...texts: readonly string[]): readonly Asked[] =>
  recordsOf(
    texts.map((text) => ({ channel: 'Phone', asker: '', askedOn: '', text })),
    came,
  );
const before = bunch(1, 'What tire pressure should I run?', 'Are you open on Sunday?');
const mistake = bunch(2, 'Bread, milk, eggs', 'Call the plumber', 'What ball height do I need?');
const all = [...before, ...mistake];
const nobody = (): boolean => false;

test('what was taken in last goes out, what was there before stays, and it comes back as it was', () => {
  const { out, stays } = goesOut(all, nobody);
  expect(out).toEqual(mistake);
  expect(stays).toEqual([]);
  expect(without(all, out)).toEqual(before);
  expect(withBack(before, out)).toEqual(all);
  // What was pasted once more meanwhile stands once.
  expect(withBack(all, out)).toEqual(all);
});

test.each<readonly [string, Partial<Asked>]>([
  ['answered', { done: 5 }],
  ['worded', { wordings: { 'own Bread, milk, eggs': 'We do not sell these.' } }],
  ['asked back', { waits: 'an answer' }],
  ['struck out of', { struck: ['hitch.ball: 2 in'] }],
  ['with a figure set right', { mended: { 'Bread, milk, eggs': { 'hitch.ball': '2 in' } } }],
  ['not urgent, as a person said', { lifted: 'gas' }],
  ['with other words now', { text: 'Bread and milk' }],
])('a message that is %s stays when its paste is taken out', (_, worked) => {
  const now = all.map((each) => (each === mistake[0] ? { ...each, ...worked } : each));
  const { out, stays } = goesOut(now, nobody);
  expect(out).toEqual(mistake.slice(1));
  expect(stays.map(({ id }) => id)).toEqual([mistake[0]?.id]);
});

test('what is in the round stays', () => {
  const { out } = goesOut(all, (id) => id === mistake[2]?.id);
  expect(out).toEqual(mistake.slice(0, 2));
});

test('nothing is taken out of nothing, and what is said of it is plain', () => {
  expect(goesOut([], nobody).out).toEqual([]);
  expect(outSaid(20, 0)).toBe(
    '20 messages were taken out. All other messages, and every answer that was given, stay.',
  );
  expect(outSaid(1, 2)).toBe(
    '1 message was taken out. 2 of the same paste stay, since they were worked on; so do all others, and every answer that was given.',
  );
});
