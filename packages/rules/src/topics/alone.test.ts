import { readdirSync } from 'node:fs';
import { beforeEach, expect, test, vi } from 'vitest';
import type { Topic } from '../engine/define/shapes';

const folders = readdirSync(new URL('.', import.meta.url), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const isTopic = (value: unknown, id: string): value is Topic =>
  typeof value === 'object' && value !== null && 'id' in value && value.id === id;

beforeEach(() => vi.resetModules());

test.each(folders)('%s brings all that it reckons with, whatever else is loaded', async (id) => {
  const { answerNow } = await import('../engine/answer/answer');
  const own: Readonly<Record<string, unknown>> = await import(`./${id}/index.ts`);
  const topic = Object.values(own).find((each) => isTopic(each, id));
  if (!isTopic(topic, id)) throw new Error(`${id} exports no topic.`);
  const { values, trace } = answerNow(topic, { facts: {}, asOf: '2026-11-01' });
  expect(Object.keys(values).length).toBeGreaterThan(0);
  expect(Object.keys(trace.steps).length).toBeGreaterThan(0);
});

test('a topic without the code it wants says what is missing', async () => {
  const { answerNow } = await import('../engine/answer/answer');
  const { optionsFit } = await import('./options-fit/index');
  const data = JSON.parse(JSON.stringify(optionsFit));
  vi.resetModules();
  const fresh = await import('../engine/answer/answer');
  expect(answerNow(data, { facts: {} }).outcome).not.toBe('');
  expect(() => fresh.answerNow(data, { facts: {} })).toThrow(/topicFromPublished/);
});
