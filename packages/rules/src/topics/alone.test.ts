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
  const { answerTraced } = await import('../engine/answer/traced');
  const own: Readonly<Record<string, unknown>> = await import(`./${id}/index.ts`);
  const topic = Object.values(own).find((each) => isTopic(each, id));
  if (!isTopic(topic, id)) throw new Error(`${id} exports no topic.`);
  const { values, trace } = answerTraced(topic, { facts: {}, asOf: '2026-11-01' });
  expect(Object.keys(values).length).toBeGreaterThan(0);
  expect(Object.keys(trace.steps).length).toBeGreaterThan(0);
});

test('a topic without the code it wants says what is missing', async () => {
  const { answerTraced } = await import('../engine/answer/traced');
  const { optionsFit } = await import('./options-fit/index');
  const { defineTopic } = await import('../engine/check/define');
  const data = defineTopic(JSON.parse(JSON.stringify(optionsFit)));
  vi.resetModules();
  const { defineTopic: defineAnew } = await import('../engine/check/define');
  const fresh = await import('../engine/answer/traced');
  expect(answerTraced(data, { facts: {} }).outcome).not.toBe('');
  expect(() => fresh.answerTraced(defineAnew(data), { facts: {} })).toThrow(/topicFromPublished/);
});
