import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Kind } from './grammar/kind';
import type { KindName } from './grammar/nodes';
import { kinds } from './kinds';
import { parseFormula } from './parse';

test('each kind of formula has one file, named as it is', () => {
  const files = readdirSync(new URL('./kinds/', import.meta.url))
    .filter((file) => !file.endsWith('.test.ts'))
    .map((file) => file.replace(/\.ts$/, ''));
  expect(files.toSorted()).toEqual(Object.keys(kinds).toSorted());
});

test('a kind that lacks something does not compile', () => {
  const { uses: _, ...useless } = kinds.whole;
  // @ts-expect-error it says nothing of uses
  const lacking: Kind<'whole'> = useless;
  const { whole: _whole, ...others } = kinds;
  // @ts-expect-error a kind is left out
  const table: { readonly [K in KindName]: Kind<K> } = others;
  expect([lacking, table]).toHaveLength(2);
});

const written: Readonly<Record<KindName, string>> = {
  number: '2.5',
  word: "'oak'",
  name: 'a.b',
  unlimited: 'unlimited',
  negative: '-a.b',
  arithmetic: 'a.b / c.d',
  compare: 'a.b <= c.d',
  both: 'a.b && c.d',
  either: 'a.b || c.d',
  not: '!a.b',
  choose: 'choose(a.b, 1, 2)',
  min: 'min(a.b, c.d)',
  max: 'max(a.b, c.d)',
  largestKnown: 'largestKnown(a.b, c.d)',
  sum: 'sum(boxes.weight * a.b)',
  count: 'count(boxes)',
  given: 'given(a.b)',
  known: 'known(a.b)',
  may: 'may(a.b > c.d)',
  needs: 'needs(a.b, c.d)',
  lookup: 'lookup(sag, a.b)',
  pick: 'pick(wire, a.b)',
  power: 'power(a.b, 2)',
  whole: 'whole(a.b)',
  between: 'between(a.b, c.d)',
  sunHeight: 'sunHeight(a.b, c.d, 12)',
  over: 'leastOver(day, day.charge)',
  catalogued: 'builds(yard)',
};

test.each(Object.entries(written))('%s is read from %s', (kind, text) => {
  expect(parseFormula(text).kind).toBe(kind);
});
