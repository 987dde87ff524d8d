import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { acceptFound } from './accept';
import { addRow, removeFact, removeRow, setCell, setFact, setValues } from './edit';
import { readCase } from './read-any';

const folder = new URL('../../../cases/tow-fit/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const);

/** The same document as other machines write it. */
const forms: readonly (readonly [string, (text: string) => string])[] = [
  ['as it is', (text) => text],
  ['with CRLF', (text) => text.replace(/\n/g, '\r\n')],
  ['with a byte order mark', (text) => `\ufeff${text}`],
  ['with both', (text) => `\ufeff${text.replace(/\n/g, '\r\n')}`],
  ['without its last line end', (text) => text.trimEnd()],
];

/** What stands in `after` where `before` had something else: both less what they share. */
function difference(before: string, after: string): { from: string; to: string } {
  let start = 0;
  while (start < before.length && before[start] === after[start]) start += 1;
  let end = 0;
  const most = Math.min(before.length, after.length) - start;
  while (end < most && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  return {
    from: before.slice(start, before.length - end),
    to: after.slice(start, after.length - end),
  };
}

const simpleFacts = (text: string) =>
  readCase(text).blocks.flatMap((block) => (block.kind === 'facts' ? block.rows : []));

/** In another form than their own, a few of them tell as much as all. */
const few = files.filter((_, i) => i % 6 === 0);
const every = <T>(all: readonly T[], step: number) => all.filter((_, i) => i % step === 0);

describe.each(forms)('a case %s', (_, form) => {
  test('set to what a fact already says, is the same byte by byte', () => {
    for (const [name, plain] of few) {
      const text = form(plain);
      const doc = readCase(text);
      expect(doc.text, name).toBe(text);
      for (const { id, value } of simpleFacts(text)) expect(setFact(doc, id, value)).toBe(text);
    }
  });

  test('keeps every other byte when one fact is set, and reads it back', () => {
    for (const [name, plain] of few) {
      const text = form(plain);
      const doc = readCase(text);
      for (const { id, value } of every(simpleFacts(text), 3)) {
        const after = setFact(doc, id, '«7,654.25»');
        const { from, to } = difference(text, after);
        expect(value, `${name}, ${id}`).toContain(from);
        expect('«7,654.25»').toContain(to);
        expect(simpleFacts(after).find((row) => row.id === id)?.value).toBe('«7,654.25»');
        // Set back, it is what it was.
        expect(setFact(readCase(after), id, value)).toBe(text);
      }
    }
  });

  test('keeps every other byte when one cell of a list is set', () => {
    let tried = 0;
    for (const [, plain] of few) {
      const text = form(plain);
      const doc = readCase(text);
      for (const block of doc.blocks) {
        if (block.kind !== 'list') continue;
        block.rows.forEach((row, i) => {
          const before = row.cells.weight?.text ?? '';
          const after = setCell(doc, block.fact, i, 'weight', '1,234 lb');
          const changed = difference(text, after);
          expect(before).toContain(changed.from);
          expect('1,234 lb').toContain(changed.to);
          expect(setCell(readCase(after), block.fact, i, 'weight', before)).toBe(text);
          tried += 1;
        });
      }
    }
    expect(tried).toBeGreaterThan(10);
  });

  test('a fact that was not there gets one row, and taking it out leaves what was before', () => {
    for (const [name, plain] of few) {
      const text = form(plain);
      const doc = readCase(text);
      const id = 'vehicle.maxFrontalArea';
      if (simpleFacts(text).some((row) => row.id === id)) continue;
      const after = setFact(doc, id, '60 ft²');
      expect(readCase(after).facts[id], name).toBe('60 ft²');
      expect(readCase(after).troubles).toEqual([]);
      const before = removeFact(readCase(after), id);
      if (doc.blocks.some(({ kind }) => kind === 'facts')) expect(before, name).toBe(text);
      // Where there was no table, an empty one is left to write in.
      else expect(readCase(before), name).toMatchObject({ facts: doc.facts, troubles: [] });
    }
  });

  test('a row added to a list and taken out again leaves what was before', () => {
    for (const [, plain] of few) {
      const text = form(plain);
      const doc = readCase(text);
      const list = doc.blocks.find((block) => block.kind === 'list');
      if (list?.kind !== 'list') continue;
      const after = addRow(doc, list.fact, 'A crate', { weight: '12 lb' });
      const again = readCase(after);
      expect(again.facts[list.fact]).toHaveLength(list.rows.length + 1);
      expect(removeRow(again, list.fact, list.rows.length)).toBe(text);
    }
  });

  test('new lines end as the lines of the document do', () => {
    for (const [, plain] of few) {
      const text = form(plain);
      const after = setFact(readCase(text), 'vehicle.maxFrontalArea', '60 ft²');
      const bare = after.replace(/\r\n/g, '').includes('\n');
      expect(bare).toBe(text.replace(/\r\n/g, '').includes('\n'));
    }
  });
});

describe('what is typed cannot break out of its cell', () => {
  const [, text = ''] = files[0] ?? [];
  const doc = readCase(text);
  const [first] = simpleFacts(text);
  const id = first?.id ?? '';

  test.each([
    ['a bar', '5 | 6'],
    ['a line end', '5 lb\n| `vehicle.gvwr` | 1 lb |'],
    ['a line end of another machine', '5 lb\r\n# Heading'],
    ['an escaped bar', '5 \\| 6'],
    ['code', '`= verdict`'],
    ['a link', '[x](javascript:alert(1))'],
    ['HTML', '<img src=x onerror=alert(1)>'],
    ['a directive', ':::predict{result="verdict"}'],
    ['marks that run from the right', '\u202e5 lb\u202c'],
  ])('%s', (_, value) => {
    const after = setFact(doc, id, value);
    expect(after.split('\n')).toHaveLength(text.split('\n').length);
    expect(simpleFacts(after).map((row) => row.id)).toEqual(simpleFacts(text).map((row) => row.id));
    expect(readCase(after).expectations).toHaveLength(doc.expectations.length);
    const others = (all: ReturnType<typeof simpleFacts>) => all.filter((row) => row.id !== id);
    const values = (all: ReturnType<typeof simpleFacts>) => others(all).map((row) => row.value);
    expect(values(simpleFacts(after))).toEqual(values(simpleFacts(text)));
  });

  test('an emptied fact can be filled again', () => {
    const empty = setFact(doc, id, '');
    expect(simpleFacts(empty)[0]).toMatchObject({ id, value: '' });
    expect(simpleFacts(setFact(readCase(empty), id, '5 lb'))[0]).toMatchObject({ value: '5 lb' });
  });
});

test('what is not there is left alone', () => {
  const [, text = ''] = files[0] ?? [];
  const doc = readCase(text);
  expect(removeFact(doc, 'no.such')).toBe(text);
  expect(setCell(doc, 'load.occupants', 99, 'weight', '5 lb')).toBe(text);
  expect(setCell(doc, 'no.such', 0, 'weight', '5 lb')).toBe(text);
  expect(removeRow(doc, 'load.occupants', 99)).toBe(text);
  expect(acceptFound(doc, { 'no.such': '5 lb' })).toBe(text);
});

test('accepting what came out changes the value of that line of Expect, and nothing else', () => {
  for (const [, text] of files) {
    const doc = readCase(text);
    const after = acceptFound(doc, { verdict: 'cannot say' });
    const before = doc.expectations.find(({ name }) => name === 'verdict')?.text ?? '';
    expect(before).toContain(difference(text, after).from);
    expect(acceptFound(readCase(after), { verdict: before })).toBe(text);
  }
});

test('many values are set at once, each as if it were set alone', () => {
  for (const [, text] of files) {
    const doc = readCase(text);
    const facts = Object.keys(doc.facts).filter((id) => typeof doc.facts[id] === 'string');
    const changes = facts.slice(0, 4).map((fact, i) => ({ fact, value: `${i + 1}5 lb` }));
    const cell = { fact: 'load.occupants', row: 0, column: 'weight', value: '1,001 lb' };
    const one = changes.reduce(
      (before, { fact, value }) => readCase(setFact(before, fact, value)),
      readCase(setCell(doc, cell.fact, cell.row, cell.column, cell.value)),
    );
    expect(setValues(doc, [...changes, cell])).toBe(one.text);
  }
  const [, text = ''] = files[0] ?? [];
  expect(setValues(readCase(text), [{ fact: 'no.such', value: '5 lb' }])).toBe(text);
});
