import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { run } from './run.fixture';

const seeds = fileURLToPath(new URL('../../../seeds/', import.meta.url));

/** The seeds again and again, each row with a name of its own. */
function yard(file: string, count: number): string {
  const [head = '', ...rows] = readFileSync(join(seeds, file), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const all = Array.from({ length: count }, (_, i) =>
    rows[i % rows.length]?.replace(/,/, ` no. ${i},`),
  );
  return [head, ...all, ''].join('\n');
}

/** The most memory a sweep of so many vehicles against 1,000 trailers ever had, in MiB. */
async function peak(vehicles: number, threads: number): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'tarebook-memory-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const at = (name: string) => join(folder, name);
  writeFileSync(at('v.csv'), yard('vehicles.csv', vehicles));
  writeFileSync(at('t.csv'), yard('trailers.csv', 1000));
  const preload = `import { isMainThread } from 'node:worker_threads'; import { writeFileSync } from 'node:fs';
    if (isMainThread) process.on('exit', () => writeFileSync(process.env.PEAK_INTO, String(process.resourceUsage().maxRSS)));`;
  const { status, err } = await run(
    [
      ...['sweep', '--vehicles', at('v.csv'), '--trailers', at('t.csv')],
      ...['--as-of', '2026-11-01', '--threads', `${threads}`, '--json'],
    ],
    {
      env: {
        ...process.env,
        NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(preload)}`,
        PEAK_INTO: at('peak'),
      },
    },
  );
  expect(status, err).toBe(0);
  return Number(readFileSync(at('peak'), 'utf8')) / 1024;
}

test('seven times the pairs take no more memory, on one thread', { timeout: 300_000 }, async () => {
  const [some, many] = [await peak(1000, 1), await peak(7000, 1)];
  expect(some).toBeGreaterThan(50);
  expect(many / some).toBeLessThan(1.2);
});

test('on four threads a sweep stays within half a gibibyte', { timeout: 300_000 }, async () => {
  expect(await peak(4000, 4)).toBeLessThan(512);
});
