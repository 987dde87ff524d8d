import type { ReadMessage } from '@tarebook/record';
import { expect, test } from 'vitest';
import { recordsOf } from '../state/questions';
import { type Entry, grouped, isInRound, laidOut } from './order';

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
    ...{ id, parts: [], urgent: urgent || null, urgentBecause: [], firstReply: null, sameAs },
    personal: [],
  };
  return { asked: { ...asked, id, urgent }, read };
});

test('what is urgent stands first, the gravest at the top; repeats stand with what they repeat', () => {
  const ids = grouped(entries).map((group) => group.map(({ asked }) => asked.id));
  expect(ids).toEqual([['d'], ['b'], ['a', 'c', 'e'], ['f']]);
});

test('what a person took apart stands by itself, with those that repeat it', () => {
  const all = entries.map((each) =>
    each.asked.id === 'c' ? { ...each, asked: { ...each.asked, apart: true } } : each,
  );
  const ids = grouped(all).map((group) => group.map(({ asked }) => asked.id));
  expect(ids).toEqual([['d'], ['b'], ['a'], ['c', 'e'], ['f']]);
});

const done = (...ids: readonly string[]): readonly Entry[] =>
  entries.map((each) =>
    ids.includes(each.asked.id)
      ? { ...each, asked: { ...each.asked, done: 10 + ids.indexOf(each.asked.id) } }
      : each,
  );
const idsOf = (groups: readonly (readonly Entry[])[]) =>
  groups.map((group) => group.map(({ asked }) => asked.id));

test('a repeat of what is done stands by itself, with other repeats, and never under it', () => {
  const { shown, done: past, open, urgent } = laidOut(done('a'), undefined);
  expect(idsOf(shown)).toEqual([['d'], ['b'], ['c', 'e'], ['f']]);
  expect(past.map(({ asked }) => asked.id)).toEqual(['a']);
  expect([open, urgent]).toEqual([4, 2]);
});

test('what is urgent and done counts no more, and lifts none of its repeats', () => {
  const all = done('d').map((each) =>
    each.asked.id === 'f' && each.read ? { ...each, read: { ...each.read, sameAs: 'd' } } : each,
  );
  const { shown, urgent } = laidOut(all, undefined);
  expect(idsOf(shown)).toEqual([['b'], ['a', 'c', 'e'], ['f']]);
  expect(urgent).toBe(1);
});

test('of several that ask the same the urgent one is at the head, and they count once', () => {
  const all = entries.map((each) =>
    each.asked.id === 'c' ? { ...each, asked: { ...each.asked, urgent: 'gas' } } : each,
  );
  const { shown, open, urgent } = laidOut(all, undefined);
  expect(idsOf(shown)).toEqual([['c', 'a', 'e'], ['d'], ['b'], ['f']]);
  expect([open, urgent]).toEqual([4, 3]);
});

test('what was laid aside last keeps its place until the next one is', () => {
  const first = laidOut(done('b'), 'b');
  expect(idsOf(first.shown)).toEqual([['d'], ['b'], ['a', 'c', 'e'], ['f']]);
  expect(first.done).toEqual([]);
  expect([first.open, first.urgent]).toEqual([3, 1]);
  const next = laidOut(done('b', 'a'), 'a');
  expect(idsOf(next.shown)).toEqual([['d'], ['a'], ['c', 'e'], ['f']]);
  expect(next.done.map(({ asked }) => asked.id)).toEqual(['b']);
});

test('the same bunch pasted twice makes the same records, and two alike in one stay two', () => {
  const same = { channel: 'Phone', asker: '', askedOn: '', text: 'open on July 4?' };
  const once = recordsOf([same, { ...same, text: 'x' }, same], 1).map(({ id }) => id);
  expect(new Set(once).size).toBe(3);
  expect(recordsOf([same, { ...same, text: 'x' }, same], 2).map(({ id }) => id)).toEqual(once);
});

test('a message is in the round once all that it asks is', () => {
  const [entry] = entries;
  if (!entry?.read) throw new Error('There is no entry.');
  const ask = { topic: null, because: [], facts: {}, words: {}, ask: [], answeredBy: null };
  const parts = ['One?', 'Two?'].map((text) => ({ ...ask, text }));
  const two = { ...entry, read: { ...entry.read, parts } };
  const item = (question: string) => ({
    ...{ message: 'a', question, channel: '', name: '', asks: '', answer: '', topic: 'note' },
    ...{ isWarning: false, at: -1, saved: {} },
  });
  expect(isInRound([two], { items: [item('One?')] })).toBe(false);
  expect(isInRound([two], { items: [item('One?'), item('Two?')] })).toBe(true);
  // A message that asks nothing is in none.
  expect(isInRound([entry], { items: [] })).toBe(false);
});
