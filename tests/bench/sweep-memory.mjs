// What the command line takes for more and more pairs: seconds, and the most memory a process ever had.
// Alone, after a build: `node tests/bench/sweep-memory.mjs [MOST] [THREADS]`, from 10⁴ to MOST pairs
// (10,000,000) against 1,000 trailers.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createWriteStream, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bin, root } from '../run/shared.mjs';

const most = Number(process.argv[2] ?? 10_000_000);
const threads = process.argv[3] ?? '1';
const folder = mkdtempSync(join(tmpdir(), 'tarebook-bench-'));

/** The invented catalogue over and over, each row with a name of its own. */
async function yard(file, count) {
  const [head, ...rows] = readFileSync(join(root, 'seeds', file), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const into = createWriteStream(join(folder, file));
  into.write(`${head}\n`);
  for (let i = 0; i < count; i += 1) {
    if (!into.write(`${rows[i % rows.length].replace(',', ` no. ${i},`)}\n`)) {
      await once(into, 'drain');
    }
  }
  into.end();
  await once(into, 'finish');
}

const preload = `import { isMainThread } from 'node:worker_threads'; import { writeFileSync } from 'node:fs';
  if (isMainThread) process.on('exit', () => writeFileSync(process.env.PEAK_INTO, String(process.resourceUsage().maxRSS)));`;

async function swept() {
  const [out, peak] = [[], join(folder, 'peak')];
  const child = spawn(
    process.execPath,
    [
      ...[bin('tarebook'), 'sweep', '--vehicles', join(folder, 'vehicles.csv')],
      ...['--trailers', join(folder, 'trailers.csv'), '--as-of', '2026-11-01'],
      ...['--threads', threads, '--json'],
    ],
    {
      env: {
        ...process.env,
        NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(preload)}`,
        PEAK_INTO: peak,
      },
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  child.stdout.on('data', (piece) => out.push(piece));
  const [code] = await once(child, 'close');
  if (code !== 0) throw new Error(`The sweep ended with ${code}.`);
  const { pairs, seconds } = JSON.parse(Buffer.concat(out).toString());
  return { pairs, seconds, 'MiB at the most': Math.round(Number(readFileSync(peak)) / 1024) };
}

try {
  const table = [];
  for (let pairs = 10_000; pairs <= most; pairs *= 10) {
    const trailers = Math.min(1000, pairs / 10);
    await yard('vehicles.csv', pairs / trailers);
    await yard('trailers.csv', trailers);
    table.push(await swept());
    console.log(table.at(-1));
  }
  console.table(table);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
