import { readFileSync } from 'node:fs';
import { readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { documentOf } from '../../build/shipped';
import { noteRead, openReader, readDocument } from './reading';
import { openTopic } from './topics';

const file = new URL('../../../cases/tow-fit/crossover-and-single-axle.md', import.meta.url)
  .pathname;

test('a case that came with the page is read without a reader, as a reader reads it', async () => {
  await openTopic('tow-fit');
  const { text, document } = documentOf(file);
  expect(text).toBe(readFileSync(file, 'utf8'));
  expect(document).toBeDefined();
  if (document) noteRead(text, document);
  const { topic, blocks, ...shipped } = readDocument(text);
  const { topic: known, blocks: read, ...whole } = readCase(text);
  expect(shipped).toEqual(JSON.parse(JSON.stringify(whole)));
  expect(topic?.id).toBe(known?.id);
  const withoutPlaces = (key: string, value: unknown) => (key === 'position' ? undefined : value);
  expect(blocks).toEqual(JSON.parse(JSON.stringify(read, withoutPlaces)));
});

test('a text that did not come with the page needs the reader, and is read once it is there', async () => {
  await openTopic('tow-fit');
  const text = '---\ntitle: Mine\ntopic: tow-fit\n---\n\nWhat then?\n';
  await openReader();
  expect(readDocument(text)).toEqual(readCase(text));
});
