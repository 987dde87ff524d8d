import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainEntries } from './front-plain';
import { yamlEntries } from './front-yaml';
import { isPlain } from './plain';
import { readCaseFrom } from './read';
import { readCase } from './read-any';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

const often = (usual: readonly string[], odd: readonly string[]) =>
  fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(...usual) },
    { weight: 1, arbitrary: fc.constantFrom(...odd) },
  );
const key = often(
  ['title', 'topic', 'asked', 'as-of', 'level', 'null', 'true', 'x', 'note'],
  ['- a', '"k"', 'k#', '', 'A', '?', '<<', '9'],
);
const colon = often([': ', ':  '], [':', ' : ', ':\t', '']);
const word = often(
  [
    'A',
    'b c',
    '12',
    '0x1F',
    '2026-11-01',
    'null',
    'yes',
    '5.5',
    '“So?”',
    'ü½',
    ' ',
    ',',
    '—',
  ].concat(['a:b', 'b#', '?', '!', '&a', '[x]', '{', '%', "it's", '"', '|', '>', '@', '-', '\\']),
  [': ', ':', ' #', '#', '  ', '\t', '~', '- ', '...', '---', '\r', '\n', '\n ', '\n\n'].concat([
    '\u00a0',
    '\u2028',
    '\u0085',
    '\u200b',
    '\ufeff',
    '\ud800',
    '\u0000',
    '😀',
  ]),
);
const line = fc
  .tuple(key, colon, fc.array(word, { minLength: 1, maxLength: 4 }))
  .map(([name, between, words]) => `${name}${between}${words.join('')}`);
const front = fc
  .tuple(fc.array(line, { maxLength: 3 }), fc.constantFrom('\n', '\r\n'))
  .map(([lines, end]) => lines.join(end));

test('a front matter that is read as plain lines says to YAML the very same, places and all', () => {
  let plain = 0;
  fc.assert(
    fc.property(front, (source) => {
      const found = plainEntries(source);
      if (found === undefined) return;
      plain += 1;
      expect(found).toEqual(yamlEntries(source));
    }),
    { seed, numRuns: 10_000 },
  );
  expect(plain).toBeGreaterThan(1_000);
});

const root = new URL('../../../cases/', import.meta.url);
const cases = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.md'))
  .map((name) => readFileSync(new URL(name, root), 'utf8'));

test('nearly every worked case is read without YAML, and says to YAML the very same', () => {
  const fronts = cases.map((text) => /^---\n(.*?)\n---\n/s.exec(text)?.[1] ?? '');
  const plain = fronts.filter((source) => plainEntries(source) !== undefined);
  expect(plain.length).toBeGreaterThan(0.8 * fronts.length);
  for (const source of plain) expect(plainEntries(source)).toEqual(yamlEntries(source));
});

test('a case is told apart by its front matter alone, whatever machine wrote it', () => {
  const text = '---\ntitle: A case\ntopic: tow-fit\n---\n\nKnown: “nothing”.\n';
  for (const form of [text, `\ufeff${text}`, text.replaceAll('\n', '\r\n')]) {
    expect(isPlain(form)).toBe(true);
    expect(isPlain(form.replace('A case', '"A case"'))).toBe(false);
  }
  expect(isPlain('No front matter.')).toBe(true);
  expect(isPlain('---\ntitle: never closed\n')).toBe(false);
});

test('a case that needs YAML is refused, never judged, where nothing reads YAML', () => {
  for (const text of cases) {
    const { topic } = readCase(text);
    const shelf = { ids: topic ? [topic.id] : [], topics: topic ? { [topic.id]: topic } : {} };
    const read = readCaseFrom(shelf, text);
    if (isPlain(text)) expect(read.facts).toEqual(topic ? readCase(text).facts : {});
    else expect(read.troubles).not.toEqual([]);
  }
});

test.each([
  ['', '1:1', 'The document is empty'],
  [' \n\n', '1:1', 'The document is empty'],
  ['Is it so?', '1:1', 'does not begin with front matter'],
  ['---\n- a\n- b\n---\n', '2:1', 'is not a list of keys and values'],
  ['---\ntitle: He said: it fits\ntopic: tow-fit\n---\n', '2:8', 'put it in quotes'],
])('%j is refused at %s, in one sentence', (text, place, says) => {
  const told = readCase(text).troubles.map((t) => `${t.line}:${t.column} ${t.says}`);
  expect(told[0]).toMatch(new RegExp(`^${place} .*${says}`));
});

describe('what a person keeps of who asked', () => {
  const doc = (lines: string) =>
    readCase(`---\ntitle: x\ntopic: tow-fit\n${lines}\n---\n\nA question.\n`);

  test('is read', () => {
    const { front, troubles } = doc(
      'asker: Ines from the lake\ncredit: first-name\nasked-on: 2026-10-03\nstatus: waiting',
    );
    expect(troubles).toEqual([]);
    expect(front).toMatchObject({
      asker: 'Ines from the lake',
      credit: 'first-name',
      askedOn: '2026-10-03',
      status: 'waiting',
    });
  });

  test.each([
    ['credit: perhaps', '4:9: `credit` is “perhaps”; write yes, no, first-name.'],
    [
      'status: opened',
      '4:9: `status` is “opened”; write open, waiting, answered. Did you mean `open`?',
    ],
    ['asked-on: October', '4:11: `asked-on` is “October”; write a day such as 2026-11-01.'],
  ])('%s is refused with its place', (line, message) => {
    const told = doc(line).troubles.map((t) => `${t.line}:${t.column}: ${t.says}`);
    expect(told).toEqual([message]);
  });

  test('an asking that the topic does not have is refused', () => {
    const [first, ...more] = doc('asking: how-many-horses').troubles;
    expect(more).toEqual([]);
    expect(first).toMatchObject({ line: 4, column: 9 });
    expect(first?.says).toContain('`asking` is “how-many-horses”; write ');
  });
});
