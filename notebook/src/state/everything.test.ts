import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freeName, merged, NotOurs, readEverything } from './everything';
import { isKept, type Kept } from './kept';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_125) };
const word = fc.constantFrom('a', 'b', 'a-2', 'b-2');
const kept: fc.Arbitrary<Kept> = fc.record({
  topic: fc.constantFrom('tow-fit', 'tires'),
  name: word,
  text: fc.constantFrom('one', 'two', 'three', 'four'),
  at: fc.nat(),
});
const keyOf = ({ topic, name }: Kept): string => `${topic}/${name}`;
const shelf = fc.uniqueArray(kept, { selector: keyOf, maxLength: 6 });

test('taking in a file writes over nothing, loses no text, and doing it twice adds nothing', () => {
  fc.assert(
    fc.property(shelf, shelf, (cases, incoming) => {
      const opened = {
        cases: incoming,
        classes: [],
        lessons: [],
        house: [],
        catalogue: [],
        replies: [],
        questions: [],
        practice: [],
        unread: [],
      };
      const { cases: added, names } = merged({ cases, classes: [] }, opened);
      const keys = [...cases, ...added].map(keyOf);
      expect(new Set(keys).size).toBe(keys.length);
      for (const { topic, text } of incoming) {
        expect([...cases, ...added].some((c) => c.topic === topic && c.text === text)).toBe(true);
      }
      for (const each of incoming) {
        const name = names.get(keyOf(each));
        const here = [...cases, ...added].find((c) => c.topic === each.topic && c.name === name);
        expect(here?.text).toBe(each.text);
      }
      const again = merged({ cases: [...cases, ...added], classes: [] }, opened);
      expect(again.cases).toEqual([]);
    }),
    { ...seed, numRuns: 500 },
  );
});

test('a file that was not saved here is refused in one sentence, a damaged entry by its place', () => {
  const ours = { kind: 'tarebook-everything', version: 1 };
  for (const text of [
    '',
    '[]',
    'null',
    '{"kind":"x","version":1}',
    JSON.stringify({ ...ours, version: 2 }),
  ]) {
    expect(() => readEverything(text)).toThrow(NotOurs);
  }
  // A lesson is told where it belongs, in no word of its file.
  expect(() => readEverything('{"kind":"tarebook-lesson","version":1}')).toThrow(
    /^This file is a lesson; open it on the page Class/,
  );
  const whole = { topic: 'tires', name: 'n', text: 'x', at: 1 };
  const read = readEverything(JSON.stringify({ ...ours, cases: [whole, { topic: 't' }] }));
  expect(read.cases).toEqual([whole]);
  expect(read.unread).toEqual(['cases[1]']);
  const file = { file: 'trailers.csv', text: 'name\nHeron\n', from: 'list.csv', at: 1 };
  const own = readEverything(JSON.stringify({ ...ours, catalogue: [file, { file: 'x' }] }));
  expect([own.catalogue, own.unread]).toEqual([[file], ['catalogue[1]']]);
});

test('a record with a field missing or of another kind is not whole', () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      if (isKept(value)) expect(typeof value.text).toBe('string');
    }),
    seed,
  );
  expect(isKept({ topic: 't', name: 'n', text: 5, at: 1 })).toBe(false);
});

test('a name that is taken gets the next number', () => {
  expect(freeName('a', new Set())).toBe('a');
  expect(freeName('a', new Set(['a', 'a-2']))).toBe('a-3');
});

test('unknown topics, and names that every object has, are told and left in the file; nothing else changes', () => {
  const case_ = (topic: string, name: string) => JSON.stringify({ topic, name, text: 'x', at: 1 });
  const house =
    '{"topic":"tow-fit","name":"H","parameters":{"__proto__":{"value":1,"unit":"%","reason":"r"}}}';
  const lesson = '{"id":"a","constructor":{"prototype":{"polluted":true}}}';
  const cases = [
    case_('tow-fit', 'mine'),
    case_('tow-fit', '__proto__'),
    case_('tow-fit', 'constructor'),
    case_('__proto__', 'a'),
    case_('toString', 'a'),
    case_('of-a-newer-page', 'a'),
    '{"topic":"tow-fit","name":"n","text":"x","at":1,"__proto__":{"polluted":true}}',
  ];
  const read = readEverything(
    `{"kind":"tarebook-everything","version":1,"cases":[${cases}],"house":[${house}],"lessons":[${lesson}]}`,
  );
  expect(read.cases.map(({ name }) => name)).toEqual(['mine']);
  expect(read.unread).toEqual([
    ...[1, 2, 3, 4, 5, 6].map((at) => `cases[${at}]`),
    'lessons[0]',
    'house[0]',
  ]);
  expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
});

test('what is far larger than anything saved here is not even parsed', () => {
  const begun = process.cpuUsage();
  expect(() => readEverything(`[${'['.repeat(21_000_000)}`)).toThrow('larger than 20 MB');
  expect(process.cpuUsage(begun).user).toBeLessThan(500_000);
});
