import { fileURLToPath } from 'node:url';
import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { changesOf } from '../run/beside.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folders = ['rules', 'casebook', 'record', 'sweep', 'cli'];

test.each(folders)(
  'the changelog of %s begins with its version and day, and is its own',
  (name) => {
    const text = changesOf(root, `packages/${name}`);
    expect(text).toMatch(/^# Changelog of \S+\n\n## \d+\.\d+\.\d+ \(\d{4}-\d{2}-\d{2}\)\n/);
    expect(text).not.toContain('Unreleased');
    expect(text).not.toContain('###');
    expect(text.length).toBeLessThan(4_000);
  },
);

test('the rules tell the version that each rule set has by its data', () => {
  const text = changesOf(root, 'packages/rules');
  for (const { id, version } of Object.values(topics))
    expect(text).toContain(`- ${id} ${version}\n`);
  expect(text.match(/^- [a-z-]+ \d+\.\d+\.\d+$/gm)).toHaveLength(Object.keys(topics).length);
});
