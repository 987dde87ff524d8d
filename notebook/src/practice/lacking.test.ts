import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { walkedCase } from '../class/record';
import { exercises } from '../state/practice';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { lackingIn } from './lacking';

const topics = ['tow-fit', 'cold-weather', 'theft-deterrence'];
const folder = new URL('../../../cases/', import.meta.url);

beforeAll(() => Promise.all([openReader(), ...topics.map(openTopic)]));

test.each(topics)('%s: an exercise lacks exactly where a class could not walk it', (topic) => {
  for (const file of readdirSync(new URL(`${topic}/`, folder)).slice(0, 6)) {
    const text = readFileSync(new URL(`${topic}/${file}`, folder), 'utf8');
    const lacking = lackingIn(text);
    for (const exercise of exercises)
      expect([file, exercise, lacking[exercise] === undefined]).toEqual([
        file,
        exercise,
        walkedCase({ text, exercise }) !== undefined,
      ]);
  }
});

test('of a case whose verdict stays open it is said that asking settles nothing; of one that cannot be read, that', () => {
  const text = readFileSync(new URL('tow-fit/payload-not-known.md', folder), 'utf8');
  expect(lackingIn(text).ask).toMatch(/stays open/);
  const broken = text.replace(
    '| --- | --- | --- |\n',
    '| --- | --- | --- |\n| `vehicle.gvwrr` | 7,000 lb | |\n',
  );
  expect(Object.keys(lackingIn(broken))).toEqual([...exercises]);
  expect(lackingIn(broken).say).toMatch(/mend/);
});
