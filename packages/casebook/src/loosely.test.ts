import { expect, test } from 'vitest';
import { setFact } from './edit';
import { compareWithExpect } from './expect';
import { judgeCaseNow } from './judge';
import { readCase } from './read-any';

const text = `---
title: Said over the phone
topic: tow-fit
as-of: 2026-11-01
---

| Fact | Value | Read from |
| --- | --- | --- |
| \`vehicle.maxTrailerWeight\` | at least 5,000# | told |
| \`trailer.dryWeight\` | ~3,900–~4,000 lbs. | told |
| \`trailer.dryTongueWeight\` | about 440 lb | told |

| \`trailer.cargo\` | Weight |
| --- | --- |
| Bicycles | ~90 lb |

| Expect | Value |
| --- | --- |
| \`limit.trailer-weight\` | ok |
| \`trailer.loaded\` | about 4,040 lb |
`;

test('what people say on the phone is read as they mean it, and stays as they wrote it', () => {
  const doc = readCase(text);
  expect(doc.troubles).toEqual([]);
  expect(doc.facts).toMatchObject({
    'vehicle.maxTrailerWeight': 'at least 5,000#',
    'trailer.dryWeight': '~3,900–~4,000 lbs.',
  });
  const answer = judgeCaseNow(doc);
  // 3,900 and 4,000 less and more five percent of 4,000 lb, with 90 less and more 4.5 lb.
  expect(answer.values['trailer.loaded']).toMatchObject({ lo: 3785.5, hi: 4294.5 });
  expect(compareWithExpect(doc, answer).map(({ name }) => name)).toEqual(['trailer.loaded']);
  expect(setFact(doc, 'trailer.dryTongueWeight', '430 lb')).toBe(
    text.replace('about 440 lb', '430 lb'),
  );
});
