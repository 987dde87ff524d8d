import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;

/** Of the three marks of a merge left half done, the two that nothing else begins a line with. */
const mark = /^(?:<{7}|>{7}) /m;

test('no file keeps the marks of two versions that were put together', () => {
  const files = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
    .split('\0')
    .filter((path) => /\.(ts|mjs|md|css|html|csv|json|txt)$/.test(path));
  expect(files.length).toBeGreaterThan(500);
  const marked = files.filter((path) => mark.test(readFileSync(join(root, path), 'utf8')));
  expect(marked).toEqual([]);
});
