import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { shownLimit } from './shown-limit';

beforeAll(async () => {
  await Promise.all([openReader(), openTopic('tow-fit'), openTopic('tires')]);
});

const limitOf = (path: string) => {
  const url = new URL(`../../../cases/${path}.md`, import.meta.url);
  const { doc, answer } = judge(readFileSync(url, 'utf8'));
  const limit = answer && shownLimit(doc.topic, answer);
  return limit && [limit.label, limit.state];
};

test('beside an open verdict stands the limit that is open, and none that has room', () => {
  expect(limitOf('tow-fit/an-extension-nobody-read')).toEqual([
    'Tongue weight on the extension',
    'unknown',
  ]);
});

test('beside a stop stands the limit that is passed, and of a case without limits none', () => {
  expect(limitOf('tow-fit/two-too-many')?.[1]).toBe('stop');
  expect(limitOf('tires/minimal-one-fact-made-in-2018')).toBeUndefined();
});
