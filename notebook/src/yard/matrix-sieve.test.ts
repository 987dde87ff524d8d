import { levels } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { countsOf, lineOf, seenThrough, wholeYard } from './matrix-sieve';

const named = (name: string, cells: Record<string, string> = {}) => ({ name, cells });
const vehicles = [
  named('Dunnock', { group: 'gasoline' }),
  named('Corrie', { group: 'hybrid' }),
  named('Haulm', { group: 'diesel' }),
];
const trailers = [
  named('Sallow 13', { length: '14.5', price: '$18,900', sleeps: '2', axles: '1', lot: 'here' }),
  named('Osier 19', { length: '20.75 ft', price: '31,500', sleeps: '5', axles: '2', lot: 'sold' }),
  named('Teal', { line: 'osier' }),
];
const [ok, stop] = [levels.indexOf('ok'), levels.indexOf('stop')];
// Rows one after another: nothing fits the first vehicle, one trailer fits the second.
const found = Uint8Array.from([stop, stop, stop, ok, stop, stop, ok, ok, stop]);

test('without a wish everything is seen', () => {
  expect(seenThrough(wholeYard, vehicles, trailers, found)).toEqual({
    rows: [0, 1, 2],
    columns: [0, 1, 2],
  });
});

test('by group, by line, by length; a length that nobody tells is not short enough', () => {
  const seen = (wish: object) => seenThrough({ ...wholeYard, ...wish }, vehicles, trailers, found);
  expect(seen({ group: 'hybrid' }).rows).toEqual([1]);
  expect(seen({ line: 'Sallow' }).columns).toEqual([0]);
  expect(trailers.map(lineOf)).toEqual(['Sallow', 'Osier', 'osier']);
  expect(seen({ longest: 20 }).columns).toEqual([0]);
  expect(seen({ longest: 21 }).columns).toEqual([0, 1]);
  expect(seen({ dearest: 20_000 }).columns).toEqual([0]);
  expect(seen({ dearest: 40_000 }).columns).toEqual([0, 1]);
  expect(seen({ sleeps: 4 }).columns).toEqual([1]);
  expect(seen({ axles: '1' }).columns).toEqual([0]);
  expect(seen({ lot: 'sold', sleeps: 2 }).columns).toEqual([1]);
});

test('what has only verdicts that are left out is not there, and the counts are of what is', () => {
  const sieve = { ...wholeYard, without: new Set([stop]) };
  const seen = seenThrough(sieve, vehicles, trailers, found);
  expect(seen).toEqual({ rows: [1, 2], columns: [0, 1] });
  expect(countsOf(seen, 3, found)[ok]).toBe(3);
  expect(countsOf(seen, 3, found)[stop]).toBe(1);
});

test('a pair that is not judged yet is not left out', () => {
  const sieve = { ...wholeYard, without: new Set([stop]) };
  const open = new Uint8Array(9).fill(255);
  expect(seenThrough(sieve, vehicles, trailers, open).rows).toHaveLength(3);
});
