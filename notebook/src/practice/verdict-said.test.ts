import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { heardIn } from './say-aloud';

/** Whether the verdict of a case is heard in a sentence. */
async function isHeard(topic: 'tires' | 'tow-fit', name: string, sentence: string, outcome = '') {
  await Promise.all([openTopic(topic), openReader()]);
  const path = `../../../cases/${topic}/${name}.md`;
  const { doc, answer } = judge(readFileSync(new URL(path, import.meta.url), 'utf8'));
  if (!answer) throw new Error(`${name} cannot be judged.`);
  const judged = outcome ? { ...answer, outcome } : answer;
  return heardIn(sentence, doc, judged, 'us').find(({ id }) => id === 'verdict')?.said;
}

test('where it will not do, a sentence that says that it will is not heard as the verdict', async () => {
  for (const sentence of [
    'These tires are not bad at all, they will do nicely.',
    'These tires are not bad at all they will do nicely they are not past six years.',
    'They will do, they are not too old. Check cold pressures.',
    'No problem, go ahead.',
    'Nothing wrong with them, you can tow on them.',
    'Don’t worry, they are fine.',
  ]) {
    expect(await isHeard('tires', 'tread-like-new', sentence), sentence).toBe(false);
  }
  for (const sentence of [
    'No, I would not tow on these: the date code says 2017, past six years, and old rubber can come apart.',
    'They will not do. They are over nine years old and six is the limit. Do not tow on them.',
    'They will not do nicely.',
    'I do not think that they will do.',
    'They are too old, replace them.',
    'Sorry, they are done.',
    'Not these: put on others that fit before you tow.',
  ]) {
    expect(await isHeard('tires', 'tread-like-new', sentence), sentence).toBe(true);
  }
});

test('where it will do, a sentence that says that it will not is not heard as the verdict', async () => {
  const ok = (sentence: string) => isHeard('tow-fit', 'payload-not-known', sentence, 'fits');
  for (const sentence of [
    'It will not do.',
    'It will not do nicely.',
    'I would not say that it will do.',
    'I do not think it fits.',
    'I would not tow it, though there is some payload left.',
    'It is too heavy, but within its rating.',
  ]) {
    expect(await ok(sentence), sentence).toBe(false);
  }
  for (const sentence of [
    'It will do.',
    'It fits, and it is not too heavy.',
    'Yes, with 100 lb left.',
    'No problem, it will do nicely. Do not load more than 100 lb beside it.',
  ]) {
    expect(await ok(sentence), sentence).toBe(true);
  }
});

test('where it is open, a yes or a no outright is not heard as the verdict', async () => {
  const open = (sentence: string) => isHeard('tow-fit', 'payload-not-known', sentence);
  expect(await open('It will do nicely, no need to check.')).toBe(false);
  expect(await open('It will not do, you need not ask.')).toBe(false);
  expect(await open('I cannot say whether it fits; ask her for the label.')).toBe(true);
  expect(await open('It fits if the label says so; look there first.')).toBe(true);
});
