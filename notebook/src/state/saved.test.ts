import { readdirSync, readFileSync } from 'node:fs';
import { judgeCaseNow, judged, readCase } from '@tarebook/casebook';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openCase } from './opened';
import { asJson, asMarkdown } from './saved';

const seed = Number(process.env.TAREBOOK_SEED ?? 20261101);
const folder = new URL('../../../cases/tow-fit/', import.meta.url);
const texts = readdirSync(folder).map((file) => readFileSync(new URL(file, folder), 'utf8'));
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

const told = (file: string, content: Uint8Array): string => {
  const opened = openCase(file, content);
  return 'says' in opened ? opened.says : '';
};

test('Markdown leaves and comes back byte for byte, with or without a byte order mark', () => {
  for (const text of texts) {
    for (const each of [text, `\ufeff${text}`, text.replaceAll('\n', '\r\n')]) {
      const saved = asMarkdown('a case', each);
      expect(saved.name).toBe('a-case.md');
      expect(openCase(saved.name, bytes(saved.text))).toEqual({
        topic: 'tow-fit',
        name: 'a-case',
        text: each,
      });
    }
  }
});

test('JSON is the answer as the command line writes it, and opens again as the same case', () => {
  for (const text of texts) {
    const doc = readCase(text);
    const answer = judgeCaseNow(doc);
    const saved = asJson('a', doc, answer);
    const { document, ...rest } = JSON.parse(saved.text);
    expect(document).toBe(text);
    expect(rest).toEqual(JSON.parse(JSON.stringify(judged(answer, doc))));
    expect(openCase(saved.name, bytes(saved.text))).toEqual({ topic: 'tow-fit', name: 'a', text });
  }
});

test('an answer saved without its case opens with the same facts, and answers the same', () => {
  for (const text of texts) {
    const doc = readCase(text);
    const answer = judgeCaseNow(doc);
    const opened = openCase('from-elsewhere.json', bytes(JSON.stringify(judged(answer, doc))));
    if ('says' in opened) throw new Error(opened.says);
    const again = readCase(opened.text);
    expect(again.troubles).toEqual([]);
    expect({ ...again.facts }).toEqual({ ...doc.facts });
    expect(judgeCaseNow(again).sentence).toBe(answer.sentence);
  }
});

test('a file that is no case is told in one sentence that names it', () => {
  const refused: readonly (readonly [string, Uint8Array, string])[] = [
    ['empty.md', new Uint8Array(), 'empty.md is empty'],
    ['photo.md', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0x00]), 'photo.md is no text'],
    ['nul.md', bytes('---\0'), 'nul.md is no text'],
    ['large.md', new Uint8Array(1_048_577), 'large.md is larger than 1 MB'],
    ['cut.json', bytes('{"topic": '), 'cut.json begins like JSON'],
    ['bare.json', bytes('{"topic": "tow-fit"}'), 'bare.json is JSON without a case'],
    ['list.json', bytes('[1, 2]'), 'list.json is JSON without a case'],
    ['null.json', bytes('[null]'), 'null.json is JSON without a case'],
    [
      'all.json',
      bytes('{"kind": "tarebook-everything", "version": 1}'),
      'all.json holds everything',
    ],
    ['note.md', bytes('Buy milk.'), 'note.md, line 1: The document does not begin'],
    ['far.md', bytes('---\ntitle: x\ntopic: gliders\n---\n'), 'far.md, line 3:'],
  ];
  for (const [file, content, says] of refused) {
    expect(told(file, content)).toContain(says);
    expect(told(file, content)).toMatch(/\.$/);
  }
});

test('a case with a mistake in it is opened, for the page to show it beside its field', () => {
  const text = texts[0]?.replace(/\d,?\d* lb/, 'five hundred') ?? '';
  expect(readCase(text).troubles.length).toBeGreaterThan(0);
  expect(openCase('x.md', bytes(text))).toEqual({ topic: 'tow-fit', name: 'x', text });
});

test('no bytes at all make opening fail otherwise than by a sentence', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (content) => {
      const opened = openCase('x.md', content);
      expect('says' in opened ? opened.says.length : opened.text.length).toBeGreaterThan(0);
    }),
    { seed },
  );
});

test('the name of a file is one that every file system takes', () => {
  expect(asMarkdown('shared: a/b\\c 1', '').name).toBe('shared-a-b-c-1.md');
  expect(asMarkdown('..', '').name).toBe('case.md');
  expect(asMarkdown('é'.repeat(200), '').name.length).toBeLessThan(90);
});

test('facts called what every object has are told by their line, and change nothing', () => {
  const json = `{"topic":"tow-fit","asked":{"facts":{"__proto__":"5 lb","constructor":"5 lb","trailer.gvwr":"5,000 lb"}}}`;
  const opened = openCase('strange.json', bytes(json));
  if ('says' in opened) throw new Error(opened.says);
  const says = readCase(opened.text).troubles.map((each) => each.says);
  expect(says.some((each) => each.includes('__proto__'))).toBe(true);
  expect(says.some((each) => each.includes('constructor'))).toBe(true);
  expect(told('strange.json', bytes('{"topic":"__proto__","asked":{"facts":{}}}'))).toContain(
    'strange.json',
  );
  expect(Object.keys(Object.prototype)).toEqual([]);
});
