import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { judgeCaseNow } from './judge';
import { readNote } from './note/read-any';
import { readCase } from './read-any';
import { readRig } from './rig/read-any';

const front = '---\ntitle: Made up\ntopic: tow-fit\n---\n\n';
const told = (text: string) =>
  readCase(front + text).troubles.map(({ line, column, says }) => `${line}:${column} ${says}`);
const table = (...rows: string[]) => `${[rows[0], '| --- | --- |', ...rows.slice(1)].join('\n')}\n`;
const rating = '| `hitch.ballRating` Ball | 1,500 lb |';

describe('a table that was meant to be read is never passed over', () => {
  test.each([
    ['Facts', '“Fact”'],
    ['FACTS:', '“Fact”'],
    ['**Facts**', '“Fact”'],
    ['Fcat', '“Fact”'],
    ['Expects', '“Expect”'],
    ['Expected', '“Expect”'],
    ['Expcted', '“Expect”'],
    ['Exepct', '“Expect”'],
  ])('headed %s it is told what was meant', (heading, meant) => {
    const found = told(table(`| ${heading} | Value |`, '| a | b |'));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^6:3 A table headed “/);
    expect(found[0]).toContain(`Did you mean ${meant}?`);
  });

  test.each([
    ['the id of a fact', rating, '8:3 `hitch.ballRating`'],
    ['one a letter short', '| `hitch.balRating` | 1,500 lb |', '8:3 `hitch.balRating`'],
    ['one as plain words', '| hitch.ballRating | 1,500 lb |', '8:3 `hitch.ballRating`'],
    ['one in another column', '| Ball | `hitch.ballRating` |', '8:10 `hitch.ballRating`'],
    ['an old id', '| `trailer.cargo` | 5 lb |', '8:3 `trailer.cargo`'],
    ['a verdict', '| `verdict` | fits |', '8:3 `verdict`'],
    ['a limit', '| `limit.ball` | ok |', '8:3 `limit.ball`'],
    ['a result', '| `trailer.loaded` | 5 lb |', '8:3 `trailer.loaded`'],
  ])('under any heading, with %s in it', (_, row, begins) => {
    const found = told(table('| Item | Value |', row));
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(`${begins} stands in a table that is not read`);
    expect(found[0]).toContain('“Fact”');
  });

  test('with the label of a fact beside a value', () => {
    expect(told(table('| Item | Value |', '| Ball rating | 1,500 lb |'))).toHaveLength(1);
  });

  test.each([
    ['| load.cargo | Weight |', '6:3 A table headed “load.cargo” is not read'],
    ['| Load.Carg | Weight |', '6:3 A table headed “Load.Carg” is not read'],
    ['| Row | `load.cargo` |', '6:9 `load.cargo` stands in a table that is not read'],
  ])('with a list for its heading, %s', (heading, begins) => {
    const found = told(table(heading, '| Box | 50 lb |'));
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(begins);
  });

  test.each([
    ['no line below its headings', `| Fact | Value |\n${rating}\n`],
    ['a line with a dash too few', `| Fact | Value |\n| --- |\n${rating}\n`],
    ['bars nowhere but between, and no label', '`hitch.ballRating` | 1,500 lb\n'],
    ['a heading in bold', `**Facts:** | Value\n${rating}\n`],
    ['bars nowhere but between', `Fact | Value\n${rating}\n`],
    ['an empty line within', `| Fact | Value |\n| --- | --- |\n\n${rating}\n`],
    ['blanks before it', `    | Fact | Value |\n    | --- | --- |\n    ${rating}\n`],
    ['marks of HTML', '<table><tr><td>hitch.ballRating</td><td>1,500 lb</td></tr></table>\n'],
  ])('that is none for Markdown, with %s', (_, text) => {
    const found = told(text);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/is no table as it is read here/);
  });

  test('in a quotation, a list, a guess and a rig, too', () => {
    const stray = table('| Facts | Value |', rating);
    expect(told(stray.replaceAll(/^/gm, '> '))).toHaveLength(1);
    expect(told(`- so\n\n${stray.replaceAll(/^/gm, '  ')}`)).toHaveLength(1);
    const guess = `:::predict{result="trailer.loaded" within="20 lb"}\nHow heavy?\n\n${stray}\n:::\n`;
    expect(told(guess)).toHaveLength(1);
    const rig = readRig(
      `---\ntitle: Made up\ntopic: rig\nat: [leaving]\n---\n\n## leaving\n\n${stray}`,
    );
    expect(rig.troubles).toHaveLength(1);
    const expected = table('| Item | Value |', '| `tow-fit@leaving/verdict` | fits |');
    expect(readRig(rig.text.replace(stray, expected)).troubles).toHaveLength(1);
  });

  test('in a note, which has no facts', () => {
    const note = (body: string) =>
      readNote(
        `---\ntitle: Made up\ntopic: note\nabout: house\ngood-until: 2027-03-31\n---\n\n> So?\n\nYes.\n\n${body}`,
      ).troubles;
    expect(note('')).toEqual([]);
    expect(note(table('| Facts | Value |', '| Ball | 5 lb |'))).toHaveLength(1);
    expect(note(table('| Expected | Value |', '| `verdict` | holds |'))).toHaveLength(1);
    expect(note(table('| Day | Open |', '| Monday | 9 to 5 |'))).toEqual([]);
  });
});

test('a ball too small for the trailer is not lost with the heading of its table', () => {
  const text = (heading: string) =>
    `${front}${table(
      '| Fact | Value |',
      '| `vehicle.maxTrailerWeight` | 9,000 lb |',
      '| `trailer.dryWeight` | 2,900 lb |',
      '| `trailer.gvwr` | 3,500 lb |',
    )}\n${table(`| ${heading} | Value |`, rating)}`;
  expect(judgeCaseNow(readCase(text('Fact'))).outcome).toBe('does-not-fit');
  expect(() => judgeCaseNow(readCase(text('Facts')))).toThrow('Did you mean “Fact”');
});

test('a table for a reader is left alone', () => {
  for (const text of [
    table('| Part | Where its rating stands |', '| Ball | stamped on its top |'),
    table('| Fault | What to do |', '| no lights | look at the plug |'),
    table('| Feet | Pounds |', '| 3 | 45 |'),
    table('| Fast | Slow |', '| 65 mph | 55 mph |'),
    table('| Cargo | Where it rides |', '| Tools | in front |'),
    table('| Result | So much |', '| Loaded | `= trailer.loaded` |'),
    table('| File | Holds |', '| `rates.csv` | the rate book |'),
    table('| Factor | Why it counts |', '| Wind | it pushes |'),
    table('| Factors | Value |', '| Wind | much |'),
    table('| Factory colors | Since |', '| Slate | 2024 |'),
    table('| Expected life | Years |', '| Tires | 5 |'),
    table('| Expectation | Value |', '| Quiet | high |'),
    'A bar | stands | in this line.\n',
    'Factory tow package | 5,000 lb, can I tow with it?\n',
    'Expecting rain | what now?\n',
    'Facts are | as they are.\n',
    'Fact \\| Value\n',
    '`rates.csv` is the rate book. So | so.\n',
    '`trailer.gvwr` \\| 5,000 lb\n',
    '| One cell \\| and no other\n| another \\| such\n',
    '```\n| Fact | Value |\n| --- | --- |\n```\n',
  ])
    expect(told(text)).toEqual([]);
});

test('no worked case is told off for its tables', () => {
  const root = new URL('../../../cases/', import.meta.url);
  const names = readdirSync(root, { recursive: true, encoding: 'utf8' });
  const filed = names.filter((name) => name.endsWith('.md') && !name.startsWith('refused'));
  const tables = filed.flatMap((name) => {
    const text = readFileSync(new URL(name, root), 'utf8');
    const read = /^topic: rig$/m.test(text) ? readRig(text) : readCase(text);
    return read.troubles
      .filter(({ says }) => /\btable\b/.test(says))
      .map(({ says }) => `${name}: ${says}`);
  });
  expect(filed.length).toBeGreaterThan(400);
  expect(tables).toEqual([]);
});
