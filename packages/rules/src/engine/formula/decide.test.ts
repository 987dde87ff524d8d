import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Decision } from '../define/shapes';
import { source } from '../define/small-topic.fixture';
import type { Value } from '../value/values';
import { decide, rowsFor } from './decide';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

const result = (label: string) => ({ label, says: `${label}.` });

const wood: Decision = {
  label: 'Wood',
  hit: 'first',
  on: ['kind', 'braced', 'wet'],
  rows: [
    { when: ['oak', '-', 'no'], gives: 'good' },
    { when: [['pine', 'ash'], 'no', '-'], gives: 'bad' },
    { when: ['-', '-', '-'], gives: 'fair' },
  ],
  results: { good: result('Good'), bad: result('Bad'), fair: result('Fair') },
  source,
};

const options = [
  ['oak', 'pine', 'ash'],
  ['yes', 'no'],
  ['yes', 'no'],
] as const;
const choice = (words: readonly string[], name: string): Value => ({
  kind: 'among',
  options: words,
  on: new Set(words.length > 1 ? [name] : []),
});

test('the topmost row that fits decides, a dash fits anything', () => {
  const of = (...words: string[]) =>
    decide(
      wood,
      words.map((w) => choice([w], w)),
    ).options;
  expect(of('oak', 'no', 'no')).toEqual(['good']);
  expect(of('oak', 'no', 'yes')).toEqual(['fair']);
  expect(of('ash', 'no', 'yes')).toEqual(['bad']);
  expect(of('pine', 'yes', 'no')).toEqual(['fair']);
});

test('over what is not known it comes to just the results that some combination has', () => {
  const among = options.map((all) => fc.subarray([...all], { minLength: 1 }));
  fc.assert(
    fc.property(fc.tuple(...among), (inputs) => {
      const [kinds = [], braces = [], wets = []] = inputs;
      const each = kinds.flatMap((k) =>
        braces.flatMap((b) =>
          wets.flatMap(
            (w) => decide(wood, [choice([k], 'k'), choice([b], 'b'), choice([w], 'w')]).options,
          ),
        ),
      );
      const found = decide(
        wood,
        inputs.map((words, i) => choice(words, `input.${i}`)),
      );
      expect([...found.options].toSorted()).toEqual([...new Set(each)].toSorted());
      if (found.options.length === 1) expect(found.on.size).toBe(0);
    }),
    { numRuns: 300, seed },
  );
});

test('a yes or no that is reckoned serves as an input', () => {
  const truth: Value = { kind: 'truth', yes: true, no: true, on: new Set(['shelf.rating']) };
  const found = decide(wood, [choice(['pine'], 'kind'), truth, choice(['no'], 'wet')]);
  expect([...found.options].toSorted()).toEqual(['bad', 'fair']);
  expect([...found.on]).toEqual(['shelf.rating']);
});

test('a combination that no row takes is told', () => {
  const [first] = wood.rows;
  if (!first) throw new Error('The table is empty.');
  const { rows, none } = rowsFor({ ...wood, rows: [first] }, options);
  expect(rows.size).toBe(1);
  expect(none).toHaveLength(3 * 2 * 2 - 2);
});
