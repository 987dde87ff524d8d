import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from './run.fixture';

const cwd = fileURLToPath(new URL('../../../', import.meta.url));
const tables = [
  ...['vehicles', 'trailers', 'loads', 'offers', 'options', 'floor-plans'],
  ...['accessories', 'accessory-fits', 'rates'],
].map((name) => `${name}.csv`);

/** Of the questions here, only which ones reads it. */
const asked = `---
topic: tow-fit
---

| Fact | Value |
| --- | --- |
| \`vehicle.maxTrailerWeight\` | 3,500 lb |
`;

let folder: string;

/** The invented catalogue as another house would have it: every column of every table under a name of its own. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'own-columns-'));
  const said = tables.flatMap((file) => {
    const [note, head = '', ...rows] = readFileSync(join(cwd, 'seeds', file), 'utf8').split('\n');
    const ours = head.trim().split(',');
    const theirs = ours.map((_, i) => `Spalte ${i + 1}`);
    writeFileSync(join(folder, file), [note, theirs.join(','), ...rows].join('\n'));
    return ours.map((each, i) => `${file},${theirs[i]},${each}`);
  });
  writeFileSync(join(folder, 'columns.csv'), ['file,theirs,ours', ...said, ''].join('\n'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const told = (words: readonly string[], from: string) =>
  run([...words, '--catalogue', from], { cwd, input: asked });

test.each([
  ['what is offered on a line', ['offers', 'Heated tanks', 'Osier']],
  ['what changed by year', ['offers', '--json']],
  ['an accessory on a trailer', ['accessories', 'Receiver on the frame behind', 'Osier 22 Bunks']],
  ['all accessories', ['accessories', '--json']],
  ['which ones', ['which', '-', '--json']],
])('columns matched once are read in every table: %s', async (_, words) => {
  const [ours, theirs] = [await told(words, 'seeds'), await told(words, folder)];
  expect(theirs.err).toBe(ours.err);
  expect(theirs.out).toBe(ours.out);
  expect(theirs.status).toBe(0);
});
