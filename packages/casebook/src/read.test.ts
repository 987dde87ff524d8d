import { describe, expect, test } from 'vitest';
import { readCase } from './read-any';

const front = '---\ntitle: Made up\ntopic: tow-fit\n---\n\n';
const table = (...rows: string[]) =>
  `${front}| Fact | Value | Read from |\n| --- | --- | --- |\n${rows.join('\n')}\n`;
const says = (text: string) => readCase(text).troubles.map((each) => each.says);

describe('what a hostile document can do is nothing', () => {
  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype'])(
    '%s is no fact, and nothing is changed by it',
    (name) => {
      const doc = readCase(table(`| \`${name}\` | 5 lb | x |`));
      expect(doc.troubles).toHaveLength(1);
      expect(doc.troubles[0]?.says).toContain(name);
      expect(Object.hasOwn(Object.prototype, 'label')).toBe(false);
      expect(Object.getPrototypeOf({})).toBe(Object.prototype);
    },
  );

  test.each(['__proto__', 'constructor'])('%s is no list, topic, result or key either', (name) => {
    expect(says(`${front}| \`${name}\` | Weight |\n| --- | --- |\n| a | 5 lb |\n`)).not.toEqual([]);
    expect(says(`---\ntitle: x\ntopic: ${name}\n---\n`)).not.toEqual([]);
    expect(says(`${front}\`= ${name}\`\n`)).not.toEqual([]);
    expect(says(`${front}| Expect | Value |\n| --- | --- |\n| \`${name}\` | ok |\n`)).not.toEqual(
      [],
    );
    const column = `${front}| \`load.cargo\` | Weight | ${name} |\n| --- | --- | --- |\n| a | 5 lb | 1 |\n`;
    expect(says(column)).not.toEqual([]);
    expect(() => readCase(`---\n${name}: 1\ntopic: tow-fit\ntitle: x\n---\n`)).not.toThrow();
  });

  test('YAML names that unfold into a billion are refused in one sentence', () => {
    const levels = Array.from({ length: 9 }, (_, i) =>
      i === 0
        ? 'a0: &a0 [lol,lol,lol,lol,lol,lol,lol,lol,lol]'
        : `a${i}: &a${i} [${Array(9)
            .fill(`*a${i - 1}`)
            .join(',')}]`,
    );
    const found = says(`---\ntitle: x\ntopic: tow-fit\n${levels.join('\n')}\n---\n`);
    expect(found.length).toBeGreaterThan(0);
    expect(found.join(' ')).toMatch(/alias|name/i);
  });

  test('a NUL is refused with its place', () => {
    const doc = readCase(table('| `trailer.dryWeight` | 5\0 lb | x |'));
    expect(doc.troubles).toHaveLength(1);
    expect(doc.troubles[0]).toMatchObject({ line: 8 });
  });

  test('marks that run from the right do not hide what a value is', () => {
    expect(says(table('| `trailer.dryWeight` | \u202e5 lb | x |'))).toHaveLength(1);
    expect(says(table('| `trailer\u200f.dryWeight` | 5 lb | x |'))).toHaveLength(1);
  });
});

describe('what is wrong is told with its place, in one sentence', () => {
  test.each([
    ['| `vehicle.gvw` | 7,000 lb | x |', 8, 3, /vehicle\.gvw.*vehicle\.gvwr/],
    ['| `vehicle.gvwr` | 7,000 | x |', 8, 20, /no unit/],
    ['| `vehicle.gvwr` | 7,000 gal | x |', 8, 20, /weight/],
    ['| `vehicle.gvwr` | -7 lb | x |', 8, 20, /outside/],
    ['| `vehicle.sevenWay` | maybe | x |', 8, 24, /yes, no, unknown/],
    ['| GVWR | 7,000 lb | x |', 8, 3, /id of a fact/],
    ['| `vehicle.gvwr` |  | x |', 8, 19, /unknown/],
  ])('%s', (row, line, column, message) => {
    const { troubles } = readCase(table(row));
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ line, column });
    expect(troubles[0]?.says).toMatch(message);
  });

  test('what is quoted is cut where nobody would read on', () => {
    const long = '9'.repeat(5000);
    for (const text of [
      table(`| \`vehicle.gvwr\` | ${long} | x |`),
      table(`| \`${long}\` | 5 lb | x |`),
      table(`| ${long} | 5 lb | x |`),
      `${front}\`= ${long}\`\n`,
      `${front}| Expect | Value |\n| --- | --- |\n| \`trailer.loaded\` | ${long} |\n`,
    ]) {
      expect(says(text)).toHaveLength(1);
      expect(says(text)[0]?.length).toBeLessThan(300);
    }
  });

  test('a list longer than anybody loads names how many rows it may have', () => {
    const list = (rows: number) =>
      `${front}| \`load.cargo\` | Weight |\n| --- | --- |\n${'| Box | 1 lb |\n'.repeat(rows)}`;
    expect(says(list(100))).toEqual([]);
    const { troubles } = readCase(list(101));
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ line: 6, column: 3 });
    expect(troubles[0]?.says).toContain('101 rows, and 100 are the most');
  });

  test('a fact told twice names the line where it was told first', () => {
    const twice = table('| `vehicle.gvwr` | 7,000 lb | x |', '| `vehicle.gvwr` | 7,100 lb | y |');
    const { troubles } = readCase(twice);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ line: 9 });
    expect(troubles[0]?.says).toMatch(/8/);
  });
});
