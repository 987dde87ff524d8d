import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { aloudWords } from './en-aloud';
import { answerWords } from './en-answer';

const engine = new URL('../', import.meta.url);
/** Where an answer gets what it says from, and where its working does. */
const answering = ['answer', 'catalogue', 'check', 'missing', 'value'];
const working = ['formula', 'trace'];

test.each([
  ['an answer', answering, answerWords, 30],
  ['its working', [...answering, ...working], aloudWords, 50],
] as const)(
  '%s has words of its own for every code it is made with',
  (_, folders, words, least) => {
    const codes = folders.flatMap((folder) =>
      readdirSync(new URL(`${folder}/`, engine), { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
        .map((file) => readFileSync(new URL(`${folder}/${file}`, engine), 'utf8'))
        .flatMap((text) => [...text.matchAll(/message\(\s*'([a-z-]+)'/g)])
        .map(([, code]) => code ?? ''),
    );
    expect(codes.length).toBeGreaterThan(least);
    expect(codes.filter((code) => !Object.hasOwn(words, code))).toEqual([]);
  },
);
