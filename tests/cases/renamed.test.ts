import { readFileSync } from 'node:fs';
import { topics } from '@tarebook/rules';
import { presentId } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';

test('every old id stands in the table of those who work on it, with its present one', () => {
  const text = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
  const [, table = ''] = text.split('## Old ids');
  const missing = Object.values(topics).flatMap((topic) =>
    Object.keys(topic.renamed ?? {}).flatMap((old) => {
      const row = `| ${topic.id} | \`${old}\` | \`${presentId(topic, old)}\``;
      return table.includes(row) ? [] : [row];
    }),
  );
  expect(missing).toEqual([]);
});
