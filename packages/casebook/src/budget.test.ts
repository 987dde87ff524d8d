import { describe, expect, test } from 'vitest';
import { type Budgeted, budget, budgeted, excessOf } from './budget';
import { readCase } from './read-any';
import { overBudget } from './read-with';

const front = '---\ntitle: Made up\ntopic: tow-fit\n---\n\n';

/** Processor time in milliseconds, which another program on the machine does not add to. */
function processor(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The least of three, as what is collected meanwhile is not the document's. */
function leastProcessor(work: () => void, enough: number): number {
  let least = processor(work);
  for (let i = 0; i < 2 && least > enough; i += 1) least = Math.min(least, processor(work));
  return least;
}

/** A document with so many of one thing, and no more of any other than it must have. */
const fill: Readonly<Partial<Record<Budgeted, (count: number) => string>>> = {
  lines: (count) => 'a\n'.repeat(count - 6),
  lineCharacters: (count) => 'a'.repeat(count),
  tableRows: (count) => `| a |\n| - |\n${'| b |\n'.repeat(count - 2)}`,
  bars: (count) => '|'.repeat(count),
  nesting: (count) => `${'> '.repeat(count)}a\n`,
  markers: (count) => '- a\n'.repeat(count),
  indent: (count) => `${' '.repeat(count)}a\n`,
  directives: (count) => ':::a\n'.repeat(count),
  brackets: (count) => '['.repeat(count),
  emphases: (count) => '*a'.repeat(count),
  ticks: (count) => '`'.repeat(count),
  angles: (count) => '<'.repeat(count),
  addresses: (count) => '@'.repeat(count),
  colons: (count) => ':'.repeat(count - 2),
};
describe('a document may have so many of each, and not one more', () => {
  test.each(Object.entries(fill))('%s', (of, filled) => {
    const most = Object.entries(budget).find(([each]) => each === of)?.[1] ?? 0;
    const what = Object.entries(budgeted).find(([each]) => each === of)?.[1];
    expect(excessOf(front + filled(most))).toBeUndefined();
    expect(excessOf(front + filled(most + 1))).toMatchObject({ of, most });
    const { troubles, blocks } = readCase(front + filled(most + 1));
    expect(troubles).toHaveLength(1);
    expect(blocks).toEqual([]);
    expect(troubles[0]?.says).toContain(`more than ${most.toLocaleString('en-US')}`);
    expect(troubles[0]?.says).toContain(what);
  });

  test('characters, keys and lines of the front matter', () => {
    const long = 'a word '.repeat(9_000);
    expect(overBudget(long)).toMatchObject({ line: 1, column: 1 });
    const keys = (count: number) => `---\n${'a: b\n'.repeat(count)}---\n`;
    expect(excessOf(keys(budget.frontOpenings))).toBeUndefined();
    expect(excessOf(keys(budget.frontOpenings + 1))).toMatchObject({ of: 'frontLines' });
    const lists = (count: number) => `---\na${': '.repeat(count)}\n---\n`;
    expect(excessOf(lists(budget.frontOpenings))).toBeUndefined();
    expect(excessOf(lists(budget.frontOpenings + 1))).toMatchObject({ of: 'frontOpenings' });
  });

  test('the place is the line where it became too many', () => {
    expect(overBudget(`${front}a\n\n${'> '.repeat(40)}deep`)).toMatchObject({ line: 8, column: 1 });
  });
});

const facts = '| Fact | Value | Read from |\n| --- | --- | --- |\n';
const hostile: readonly (readonly [string, string])[] = [
  ['a line of 10 MB', 'a'.repeat(10_000_000)],
  ['10 MB of brackets', '['.repeat(10_000_000)],
  ['10 MB of line ends', '\n'.repeat(10_000_000)],
  ['a table of 100,000 rows', facts + '| `trailer.dryWeight` | 5 lb | x |\n'.repeat(100_000)],
  [
    'a list of 14,000 rows',
    `| \`load.cargo\` | Weight |\n| - | - |\n${'| a | 1 lb |\n'.repeat(14_000)}`,
  ],
  ['60,000 links that are never closed', '[a]('.repeat(60_000)],
  ['50,000 links of 60,000 characters', '[a]('.repeat(14_000)],
  ['5,000 directives, one inside the other', ':::a\n'.repeat(5_000)],
  ['5,000 directives in a line', ':::a'.repeat(5_000)],
  ['quotations 100,000 deep', '>'.repeat(100_000)],
  ['lists 5,000 deep', '- '.repeat(5_000)],
  [
    'lists 300 deep by blanks',
    Array.from({ length: 300 }, (_, i) => `${' '.repeat(2 * i)}- a\n`).join(''),
  ],
  ['headings by underline', 'a\n-\n'.repeat(20_000)],
  ['stars', '*a **b _c '.repeat(5_000)],
  ['footnotes', '[^a]: b\n\n'.repeat(5_000)],
];

describe('what is refused costs next to nothing', () => {
  test.each(hostile)('%s', (_, body) => {
    const text = front + body;
    const read = () => expect(readCase(text).troubles).toHaveLength(1);
    expect(leastProcessor(read, 50)).toBeLessThan(250);
    expect(readCase(text).text).toBe(text);
  });

  test('YAML names that unfold into one another, however many', () => {
    const text = `---\n${Array.from({ length: 9_000 }, (_, i) => `a${i}: &a${i} [*a${i - 1}, *a${i - 1}]`).join('\n')}\n---\n`;
    expect(leastProcessor(() => readCase(text), 50)).toBeLessThan(250);
    expect(readCase(text).troubles).toHaveLength(1);
  });
});

const pieces: readonly string[] = [
  ...['[a](', '[', ']', '[a]', '![a](', '[a](b) ', '[a][', '[^a] ', '[^a]: b\n\n', '[a]: b "c"\n'],
  ...['*a ', '**a', 'a**b*', '_a_', '~~a ', '`a', '`a``', ':::a\n', ':::a\n> b\n', ':a[b]{c=d} '],
  ...[
    '| a | b |\n',
    '| a | b |\n| - | - |\n',
    '| a ',
    '<a ',
    '<!-- ',
    '<a>\n',
    'www.a.b ',
    'a@b.c ',
  ],
  ...['&amp;', '\\', '> ', '> a\n', '- ', '- a\n', '- a\n\n', '- - - a\n', '1. a\n', '# a\n'],
  ...[
    'a\n-\n',
    '    a\n',
    '```\n',
    '- ```\n',
    'a\n\n',
    'a\n',
    'a\\\n',
    'a  \n',
    '---\n',
    '- [ ] a\n',
  ],
  ...['`= verdict` ', '`= x` ', ':::predict{result="a"}\nb\n:::\n', ':', '\u2028', '\r', '[a]\n\n'],
  ...[
    '| `trailer.dryWeight` | 5 lb | x |\n',
    '| `trailer.dry` | 5 lb | x |\n',
    '| x | 5 lb | x |\n',
  ],
];

/** As many times as the budgets allow. */
function fullest(piece: string, around: (body: string) => string): string {
  let [least, most] = [0, Math.ceil(budget.characters / piece.length) + 1];
  while (most - least > 1) {
    const middle = Math.floor((least + most) / 2);
    if (excessOf(around(piece.repeat(middle)))) most = middle;
    else least = middle;
  }
  return around(piece.repeat(least));
}

const surroundings: readonly (readonly [string, (body: string) => string])[] = [
  ['alone', (body) => front + body],
  ['in a table of facts', (body) => front + facts + body],
  ['in a quotation', (body) => front + body.replace(/^/gm, '> ')],
  ['in a guess', (body) => `${front}:::predict\n${body}`],
  ['in the front matter', (body) => `---\ntitle: x\ntopic: tow-fit\nz: ${body}\n---\n\na\n`],
];

test.each(surroundings)(
  'the fullest that the budgets let through takes less than half a second, %s',
  (_, around) => {
    for (const piece of pieces) {
      const text = fullest(piece, around);
      const taken = leastProcessor(() => readCase(text), 250);
      expect(taken, JSON.stringify(piece)).toBeLessThan(500);
    }
  },
);
