import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { judgeCase, readCase } from '@tarebook/casebook';
import { describe, expect, test } from 'vitest';
import { markdownBelow, refusedFolder } from './files';

const refused = markdownBelow(refusedFolder);

const base = (name: string): string => name.replace(/^refused\//, '').replace(/\.md$/, '');

/** The messages that a document names itself, in the list `must-say` of its front matter. */
function mustSay(text: string): readonly string[] {
  const list = /^must-say:\n((?: {2}- '.*'\n)+)/m.exec(text)?.[1] ?? '';
  return [...list.matchAll(/^ {2}- '(.*)'$/gm)].map(([, message = '']) =>
    message.replace(/''/g, "'"),
  );
}

/** The messages in the file beside it, where its front matter is what is wrong with it. */
function besideIt(name: string): readonly string[] {
  const file = join(refusedFolder, `${base(name)}.expected.txt`);
  if (!existsSync(file)) return [];
  return readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '');
}

test('there are at least fourteen documents to be refused, and no messages without a document', () => {
  expect(refused.length).toBeGreaterThanOrEqual(14);
  const beside = readdirSync(refusedFolder).filter((name) => name.endsWith('.expected.txt'));
  const names = refused.map(({ name }) => `${base(name)}.expected.txt`);
  expect(names).toEqual(expect.arrayContaining(beside));
});

describe.each(refused)('$name', ({ name, text }) => {
  const [own, beside] = [mustSay(text), besideIt(name)];
  const wanted = [...own, ...beside];

  test('has its messages in one place, itself or a file beside it', () => {
    expect([own.length, beside.length].filter((count) => count > 0)).toHaveLength(1);
  });

  test('gets exactly its messages, in order and all at once', () => {
    const found = readCase(text).troubles.map(
      ({ line, column, says }) => `${line}:${column}: ${says}`,
    );
    expect(found).toEqual(wanted);
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
