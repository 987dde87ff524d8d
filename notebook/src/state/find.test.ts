import { expect, test } from 'vitest';
import { find, type Sought } from './find';

const gas = ['propane', 'griddle', 'quick connect'];
const all: readonly (Sought & { readonly id: string })[] = [
  {
    id: 'griddle',
    title: 'A griddle on the outside outlet',
    words: 'burner hose low',
    called: gas,
  },
  { id: 'cold', title: 'Two nights at 10 °F', words: 'furnace cylinder propane', called: gas },
  {
    id: 'van',
    title: 'Four people and a van',
    words: 'trailer payload batteries',
    called: ['tow'],
  },
  { id: 'day', title: 'How low may a battery go?', words: 'lithium volts', called: ['battery'] },
];
const ids = (query: string): readonly string[] => find(query, all).hits.map(({ id }) => id);

test('a whole question as people type it finds what it is about, nearest first', () => {
  expect(ids('Hi all, can I run my griddle off the quick connect?')[0]).toBe('griddle');
  expect(ids('how low can the batteries go')[0]).toBe('day');
});

test('of one or two words all have to be there; one and many are the same word', () => {
  expect(ids('battery').toSorted()).toEqual(['day', 'van']);
  expect(ids('battery payload')).toEqual(['van']);
});

test('a word that is still being typed finds what begins so; with a space after it, it is a word', () => {
  expect(ids('grid')).toEqual(['griddle']);
  expect(ids('grid ')).toEqual([]);
});

test('what stands nowhere is told', () => {
  expect(find('zeppelin', all)).toEqual({ hits: [], nowhere: ['zeppelin'] });
  expect(find('griddle zeppelin', all).nowhere).toEqual(['zeppelin']);
});
