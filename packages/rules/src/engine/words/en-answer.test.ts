import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answerWords } from './en-answer';

const engine = new URL('../', import.meta.url);
/** Where an answer gets what it says from. */
const folders = ['answer', 'catalogue', 'check', 'formula', 'missing', 'trace', 'value'];

test('an answer has words of its own for every code it is made with', () => {
  const codes = folders.flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, engine), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
      .map((file) => readFileSync(new URL(`${folder}/${file}`, engine), 'utf8'))
      .flatMap((text) => [...text.matchAll(/message\(\s*'([a-z-]+)'/g)])
      .map(([, code]) => code ?? ''),
  );
  expect(codes.length).toBeGreaterThan(50);
  expect(codes.filter((code) => !Object.hasOwn(answerWords, code))).toEqual([]);
});
