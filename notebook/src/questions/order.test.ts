import type { ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import { recordsOf } from '../state/questions';
import { type Entry, grouped } from './order';

const told = [
  ['a', '', null],
  ['b', 'frost', null],
  ['c', '', 'a'],
  ['d', 'gas', null],
  ['e', '', 'c'],
  ['f', '', null],
] as const;

const entries = told.map(([id, urgent, sameAs]): Entry => {
  const [asked] = recordsOf([{ channel: '', asker: '', askedOn: '', text: id }], 1);
  if (!asked) throw new Error('There is no record.');
  const read: ReadMessage = {
    ...{ id, parts: [], urgent: urgent || null, firstReply: null, sameAs, personal: [] },
  };
  return { asked: { ...asked, id, urgent }, read };
});

test('what is urgent stands first, the gravest at the top; repeats stand with what they repeat', () => {
  const ids = grouped(entries).map((group) => group.map(({ asked }) => asked.id));
  expect(ids).toEqual([['d'], ['b'], ['a', 'c', 'e'], ['f']]);
});

test('the same bunch pasted twice makes the same records, and two alike in one stay two', () => {
  const same = { channel: 'Phone', asker: '', askedOn: '', text: 'open on July 4?' };
  const once = recordsOf([same, { ...same, text: 'x' }, same], 1).map(({ id }) => id);
  expect(new Set(once).size).toBe(3);
  expect(recordsOf([same, { ...same, text: 'x' }, same], 2).map(({ id }) => id)).toEqual(once);
});
