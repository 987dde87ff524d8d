import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type Ran, run } from './run.fixture';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A colored word, a title of the window, a bell, and text turned to run from the right. */
const hostile = '\u001b[31mred\u001b]0;owned\u0007 \u202eevil\u2066 \u009b2Jgone\u200f\u061c';

const turning = ['\u061c', '\u200e', '\u200f', '\u202e', '\u2066', '\u2028', '\u2029'];

function drives(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  if (character === '\n') return false;
  return code < 0x20 || (code >= 0x7f && code < 0xa0) || turning.includes(character);
}

const caseText = (title: string, more: string, cargo: string): string => `---
title: ${title}
topic: tow-fit
as-of: 2026-06-15
---

| Fact | Value | Read from |
| --- | --- | --- |
| \`vehicle.maxTrailerWeight\` ${more} | 5,000 lb | ${more} |
| \`trailer.dryWeight\` | 6,000 lb | ${more} |

| \`trailer.cargo\` | Weight |
| --- | --- |
| ${cargo} | 50 lb |

| Expect | Value |
| --- | --- |
| \`verdict\` | fits |
`;

const written = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

function expectTame({ out, err }: Ran): void {
  expect([...out, ...err].filter(drives)).toEqual([]);
}

const inTitle = written(
  'title.md',
  caseText(`Made ${hostile.replaceAll('\u0007', '')}`, 'x', 'Tent'),
);
const quoted = written('quoted.md', caseText(JSON.stringify(hostile), hostile, hostile));
const folded = written(
  'folded.md',
  caseText('"One\\n\\nFITS\\nIt fits."', 'a&#10;FITS', 'b&#xA;c'),
);
const inValue = written('value.md', caseText('x', 'x', 'x').replace('6,000 lb', `6 ${hostile} lb`));
const inId = written('id.md', caseText('x', 'x', 'x').replace('trailer.dry', `trailer.${hostile}`));
const inTopic = written(
  'topic.md',
  caseText('x', 'x', 'x').replace('tow-fit', JSON.stringify(hostile)),
);
mkdirSync(join(folder, hostile));
const inName = written(join(hostile, 'new\nline.md'), caseText('x', 'x', 'x'));
const saved = written('saved.json', JSON.stringify({ topic: hostile, rules: hostile, asked: {} }));

describe('nothing in a document or a name drives the terminal', () => {
  test.each([
    ['a title', ['judge', inTitle]],
    ['a quoted title, words, a source and a row', ['judge', quoted]],
    ['the same as JSON', ['judge', quoted, '--json']],
    ['a line’s end from a reference', ['judge', folded]],
    ['a value', ['judge', inValue]],
    ['an id', ['judge', inId]],
    ['a topic', ['judge', inTopic]],
    ['a file’s name', ['judge', inName]],
    ['a file’s name, checked', ['check', folder]],
    ['a file’s name, checked as JSON', ['check', folder, '--json']],
    ['a file that is not there', ['judge', `${hostile}\nx`]],
    ['a saved answer', ['judge', saved]],
    ['a command', [hostile]],
    ['a topic to read', ['rules', hostile]],
    ['a flag', ['judge', `--${hostile}`]],
    ['a day', ['judge', inTitle, '--as-of', hostile]],
  ])('%s', async (_, args) => {
    const ran = await run(args);
    expect(ran.out + ran.err).not.toBe('');
    expectTame(ran);
  });

  test('JSON says in full what a terminal is not shown', async () => {
    const { out } = await run(['check', inName, '--json']);
    expect(JSON.parse(out)[0].file).toBe(inName);
  });

  test('no line is put in by a title, a source or the name of a row', async () => {
    const { out } = await run(['judge', folded]);
    expect(out).toMatch(/^DOES NOT FIT\n/);
    expect(out).not.toMatch(/^FITS/m);
    expect(out).not.toMatch(/^c/m);
  });
});
