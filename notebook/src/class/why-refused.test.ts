import { readFileSync } from 'node:fs';
import { setFact } from '@tarebook/casebook';
import { beforeAll, expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';
import { choiceSaid } from './choice-said';
import { whyRefused } from './why-refused';

const folder = new URL('../../../cases/tow-fit/', import.meta.url);
beforeAll(async () => {
  await Promise.all([openReader(), openTopic('tow-fit'), openTopic('house-battery')]);
});

const text = readFileSync(new URL('an-extension-nobody-read.md', folder), 'utf8');

test('what is typed for a fact and cannot be taken is told by the name a person has for it', () => {
  const moved = setFact(readDocument(text), 'hitch.extension', 'none');
  const says = whyRefused(judge(moved).doc);
  expect(says).toContain('“none” is no number');
  expect(says).not.toMatch(/hitch\.|`/);
});

test('a choice is read in words, and a figure stays as it is', () => {
  const { topic } = readDocument(
    readFileSync(new URL('../house-battery/a-hundred-amps-and-no-more.md', folder), 'utf8'),
  );
  expect(choiceSaid(topic?.facts['battery.reading'], 'at-rest')).toBe('at rest');
  expect(choiceSaid(topic?.facts['battery.voltage'], '12-13 V')).toBe('12-13 V');
});
