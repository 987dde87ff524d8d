import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { judgeCase, readCase } from '@tarebook/casebook';
import { describe, expect, test } from 'vitest';
import { markdownBelow, refusedFolder } from './files';

const refused = markdownBelow(refusedFolder);

const linesOf = (name: string): readonly string[] =>
  readFileSync(join(refusedFolder, name), 'utf8')
    .split('\n')
    .filter((line) => line !== '');

const base = (name: string): string => name.replace(/^refused\//, '').replace(/\.md$/, '');

test('there are at least fourteen documents to be refused, each with its message', () => {
  expect(refused.length).toBeGreaterThanOrEqual(14);
  const expected = readdirSync(refusedFolder).filter((name) => name.endsWith('.expected.txt'));
  expect(expected.toSorted()).toEqual(refused.map(({ name }) => `${base(name)}.expected.txt`));
});

describe.each(refused)('$name', ({ name, text }) => {
  const wanted = linesOf(`${base(name)}.expected.txt`);

  test('gets exactly the messages that stand beside it, all at once', () => {
    const found = readCase(text).troubles.map(
      ({ line, column, says }) => `${line}:${column}: ${says}`,
    );
    expect(found).toEqual(wanted);
    expect(wanted.length).toBeGreaterThan(0);
  });

  test('is never judged', async () => {
    await expect(async () => judgeCase(readCase(text))).rejects.toThrow(wanted[0]);
  });

  test('says each thing in a sentence, at a place that exists', () => {
    const lines = text.split('\n');
    for (const message of wanted) {
      const [, line, column, says] = /^(\d+):(\d+): (.+)$/.exec(message) ?? [];
      expect(says).toMatch(/^[A-Z“`].*[.?]$/);
      expect(Number(column)).toBeLessThanOrEqual((lines[Number(line) - 1] ?? '').length + 1);
      expect(Number(line)).toBeLessThanOrEqual(lines.length);
    }
  });
});
