import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { Nodes } from 'mdast';
import { expect, test } from 'vitest';
import { parse } from './parse';
import { retyped } from './retyped';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

const root = new URL('../../../cases/', import.meta.url);
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.md'))
  .toSorted();
const textOf = (name: string): string => readFileSync(new URL(name, root), 'utf8');

/** Where the cells of a text stand, wherever they stand. */
function cellsOf(node: Nodes): readonly { from: number; to: number }[] {
  const at = node.position;
  if (node.type === 'tableCell' && at) {
    return [{ from: at.start.offset ?? 0, to: at.end.offset ?? 0 }];
  }
  return 'children' in node ? node.children.flatMap((child) => cellsOf(child)) : [];
}

const pieces = [
  '5',
  '1,260 lb',
  ' ',
  'w',
  '.',
  'www',
  '.a.b',
  '–',
  '± 10',
  'é',
  '½',
  '(',
  ')',
  '/',
];
const marks = [
  '*',
  '_',
  '`',
  '|',
  '\\',
  '\n',
  '&amp;',
  '<b>',
  '[x]',
  ':',
  '@',
  'http://a.b',
  '~',
  '\t',
];

const typed = fc
  .array(
    fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...pieces) }, fc.constantFrom(...marks)),
    {
      maxLength: 4,
    },
  )
  .map((all) => all.join(''));

/** How often a reading was had without a parse, so that a test can tell that it tried something. */
let quick = 0;

/** Types into a text again and again, and holds what is had without a parse against a fresh one. */
function typeInto(text: string, edits: readonly (readonly [number, number, number, string])[]) {
  let before = { source: text, children: parse(text) };
  for (const [which, start, length, put] of edits) {
    const cells = before.children.flatMap((child) => cellsOf(child));
    const cell = cells[which % Math.max(1, cells.length)] ?? { from: 0, to: text.length };
    const from = cell.from + (start % (cell.to - cell.from + 1));
    const to = Math.min(before.source.length, from + length);
    const source = before.source.slice(0, from) + put + before.source.slice(to);
    const kept = JSON.stringify(before.children);
    const now = retyped(before, source);
    if (!now) continue;
    quick += 1;
    expect(now).toEqual(parse(source));
    expect(JSON.stringify(before.children)).toBe(kept);
    before = { source, children: now };
  }
}

const edit = fc.tuple(fc.nat(500), fc.nat(60), fc.nat(3), typed);

test('a cell typed in reads as if the whole case were read afresh, in every case', () => {
  quick = 0;
  for (const [index, name] of files.entries()) {
    const text = textOf(name);
    const edits = fc.sample(fc.array(edit, { minLength: 8, maxLength: 8 }), {
      seed: seed + index,
      numRuns: 1,
    });
    typeInto(text, edits.flat());
  }
  expect(quick).toBeGreaterThan(files.length);
});

const cell = fc.constantFrom('a', '5 lb', ' 5 ', '', ' ', '*a*', '`x`', 'a@b.c', '\\|', 'www.a.b');
const row = fc
  .tuple(
    fc.constantFrom('', '|', ' | ', '    |', '> |', '- ', '    '),
    fc.array(cell, { maxLength: 4 }),
    fc.constantFrom('', '|', ' | '),
  )
  .map(([open, cells, close]) => `${open}${cells.join('|')}${close}`);
const table = fc
  .tuple(
    fc.constantFrom(
      '',
      'Before.\n\n',
      '---\ntitle: x\n---\n',
      '> ',
      '<div>\n',
      '[^1]: ',
      ':::predict\n',
    ),
    fc.array(row, { minLength: 1, maxLength: 4 }),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([before, rows, end]) =>
    `${before}${['| a | b |', '| - | - |', ...rows, '', 'After *it*.', ''].join('\n')}`.replaceAll(
      '\n',
      end,
    ),
  );

test('a cell typed in reads as if the table were read afresh, however the table is written', () => {
  quick = 0;
  fc.assert(fc.property(table, fc.array(edit, { minLength: 1, maxLength: 6 }), typeInto), {
    seed,
    numRuns: 1500,
  });
  expect(quick).toBeGreaterThan(100);
});

test.each([
  ['a mark', '| a |\n| - |\n| 5 lb |\n', '| a |\n| - |\n| 5* lb |\n'],
  ['a bar', '| a |\n| - |\n| 5 lb |\n', '| a |\n| - |\n| 5| lb |\n'],
  ['an address', '| a |\n| - |\n| www |\n', '| a |\n| - |\n| www.a.b |\n'],
  ['two cells', '| a | b |\n| - | - |\n| 5 | 6 |\n', '| a | b |\n| - | - |\n| 7 | 8 |\n'],
  ['no bar before', '| a | b |\n| - | - |\n5 | 6 |\n', '| a | b |\n| - | - |\n6 | 6 |\n'],
  ['another line', 'One.\n', 'Two.\n'],
])('%s is left to a fresh reading', (_, before, after) => {
  expect(retyped({ source: before, children: parse(before) }, after)).toBeUndefined();
});
