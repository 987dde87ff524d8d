import { readFileSync } from 'node:fs';
import { answerNow, type Topic, topicFromPublished } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { expect, test } from 'vitest';
import { saidOtherwise } from './otherwise';

const facts = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'vehicle.maxTongueCarried': '700 lb',
  'vehicle.placardPayload': '1,300 lb',
  'trailer.dryWeight': '3,900 lb',
  'trailer.gvwr': '5,000 lb',
  'trailer.dryTongueWeight': '430 lb',
};

test('a case that both versions judge alike says nothing', () => {
  expect(saidOtherwise(towFit, towFit, { facts })).toEqual([]);
});

test('the verdict comes first, then what else is said otherwise, each as it was and as it is', () => {
  const file = new URL('../../../packages/rules/published/tow-fit/1.0.0.json', import.meta.url);
  const older: Topic = topicFromPublished(JSON.parse(readFileSync(file, 'utf8')));
  const told = saidOtherwise(older, towFit, { facts });
  const [was, now] = [older, towFit].map((each) => answerNow(each, { facts }).words);
  expect(was).not.toBe(now);
  expect(told[0]).toMatch(/^The verdict was .+, is .+\.$/);
  expect(told[0]?.toLowerCase()).toBe(`the verdict was ${was}, is ${now}.`.toLowerCase());
  for (const line of told) expect(line).toMatch(/^[A-Z].* was .+, is .+\.$/);
});
