import { readFileSync } from 'node:fs';
import { askedOf, judgeCaseNow, readCase } from '@tarebook/casebook';
import { matters, remedies, topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { sheet } from '../../packages/cli/src/sheet';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const [, text = ''] = /```markdown\n([\s\S]*?)```/.exec(readme) ?? [];
const [, shown = ''] = /answers:\n\n```\n([\s\S]*?)```/.exec(readme) ?? [];

/** Left out is only what stands between two parts, and what follows a “…”. */
test('the first case of the README is answered as it is shown there', () => {
  const doc = readCase(text);
  expect(doc.troubles).toEqual([]);
  if (!doc.topic) throw new Error('The first case of the README has no topic.');
  const { topic, asked } = askedOf(doc);
  const found = remedies(topic, asked, Object.values(topics));
  const told = sheet(doc.front.title, topic, judgeCaseNow(doc), found, matters(topic, asked));
  const parts = shown
    .replace(/ *…\n$/, '')
    .trim()
    .split('\n\n');
  expect(parts.length).toBeGreaterThan(3);
  for (const line of parts.flatMap((part) => part.split('\n'))) expect(told).toContain(`${line}\n`);
});
