// `npm run many-machines`: a sweep through a real Redis and several workers, some of them killed, the
// server started anew, a part that cannot be written. Wants redis-server and the built command line;
// no part of `npm test`, since that runs where there is nothing but Node and npm.
import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { bin, root } from './shared.mjs';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-machines-'));
const at = (name) => join(folder, name);
const children = new Set();

/** A process of this run, and what becomes of it. */
function begin(command, args) {
  const child = spawn(command, args, { stdio: ['ignore', 'ignore', 'pipe'] });
  children.add(child);
  let err = '';
  child.stderr.setEncoding('utf8').on('data', (text) => {
    err += text;
  });
  const ended = new Promise((resolve) => {
    child.on('error', (problem) => resolve({ code: 127, err: problem.message }));
    child.on('close', (code) => {
      children.delete(child);
      resolve({ code, err });
    });
  });
  return { child, ended };
}

const freePort = () =>
  new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

async function until(what, holds, seconds = 120) {
  const end = Date.now() + seconds * 1000;
  while (!holds()) {
    if (Date.now() > end) throw new Error(`It never came to this: ${what}.`);
    await pause(50);
  }
}

/** The invented catalogue many times over, each row with a name of its own. */
function yard(file, times) {
  const [head, ...rows] = readFileSync(join(root, 'seeds', file), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const all = Array.from({ length: times }, (_, i) =>
    rows.map((row) => row.replace(',', ` no. ${i},`)),
  );
  writeFileSync(at(file), [head, ...all.flat(), ''].join('\n'));
}

const port = await freePort();
const address = `redis://127.0.0.1:${port}`;
const tarebook = (...args) => begin(process.execPath, [bin('tarebook'), ...args]);
/** Nothing is kept on disk: a server that comes back has forgotten all. */
const redis = () =>
  begin('redis-server', [
    ...['--port', String(port), '--bind', '127.0.0.1', '--save', '', '--appendonly', 'no'],
    ...['--dir', folder],
  ]);
const worker = () => tarebook('worker', '--queue', address);
const sweep = (out, ...more) =>
  tarebook(
    ...['sweep', '--vehicles', at('vehicles.csv'), '--trailers', at('trailers.csv')],
    ...['--as-of', '2026-11-01', '--out', at(out), ...more],
  );
const joined = (out) => {
  try {
    return JSON.parse(readFileSync(at(`${out}.parts/joined.json`), 'utf8')).parts;
  } catch {
    return 0;
  }
};
const sameBytes = (a, b) => readFileSync(at(a)).equals(readFileSync(at(b)));

let [passed, failed] = [0, 0];
function told(what, holds, says = '') {
  if (holds) passed += 1;
  else failed += 1;
  console.log(`${holds ? 'holds' : 'DOES NOT HOLD'}: ${what}${holds ? '' : `\n  ${says}`}`);
}

try {
  yard('vehicles.csv', 60);
  yard('trailers.csv', 20);
  let server = redis();
  await pause(500);
  if (server.child.exitCode !== null || !server.child.pid) {
    throw new Error('There is no redis-server here; on Debian `apt-get install redis-server`.');
  }

  const alone = await sweep('alone.csv').ended;
  told('one machine alone', alone.code === 0, alone.err);

  const many = sweep('many.csv', '--queue', address);
  const first = [worker(), worker(), worker()];
  await until('a part is there', () => joined('many.csv') > 0);
  first[0].child.kill('SIGKILL');
  first[1].child.kill('SIGKILL');
  server.child.kill('SIGKILL');
  await server.ended;
  await pause(500);
  server = redis();
  const later = worker();
  const { code, err } = await many.ended;
  told('two of three workers killed and the server started anew', code === 0, err);
  told('the same bytes as from one machine', code === 0 && sameBytes('many.csv', 'alone.csv'));
  told('nothing is left beside it', !existsSync(at('many.csv.parts')));

  // A folder where a part is to be: no machine can write it, however often it is tried.
  for (const each of [first[2], later]) each.child.kill('SIGINT');
  await Promise.all([first[2].ended, later.ended]);
  const hindered = sweep('hindered.csv', '--queue', address);
  await until(
    'parts are handed out',
    () =>
      existsSync(at('hindered.csv.parts')) &&
      readdirSync(at('hindered.csv.parts')).includes('000002.in.json'),
  );
  const stone = at('hindered.csv.parts/000002.csv');
  mkdirSync(join(stone, 'stone'), { recursive: true });
  const last = worker();
  const report = await hindered.ended;
  told('a part that fails three times ends in a report', report.code === 2, report.err);
  told(
    'which names it',
    /part 2, .* given up after 3 tries; .*--resume/.test(report.err),
    report.err,
  );
  rmSync(stone, { recursive: true });
  const resumed = await sweep('hindered.csv', '--queue', address, '--resume').ended;
  told('mended, it goes on', resumed.code === 0, resumed.err);
  told('to the same bytes', resumed.code === 0 && sameBytes('hindered.csv', 'alone.csv'));
  last.child.kill('SIGINT');
  told('a worker ends when it is told to', (await last.ended).code === 0);
  server.child.kill('SIGTERM');
  await server.ended;
  const nobody = await sweep('nobody.csv', '--queue', address).ended;
  told(
    'no server is told in one line',
    nobody.code === 2 && /no Redis/.test(nobody.err),
    nobody.err,
  );
} catch (problem) {
  told(problem.message, false);
} finally {
  for (const child of children) child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
