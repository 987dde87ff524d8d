// `node tests/mutants/run.mjs [--count N] [--seed S] [--part I/N]`: a sample of small changes of engine
// and tow fit, one at a time, each against the tests that should notice. It changes the sources while it
// runs, so it wants a clone of its own; what it changed it puts back, also when it is stopped.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { changed, mutants } from './mutants.mjs';
import { together } from './together.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const source = 'packages/rules/src';
const mutated = [`${source}/engine`, `${source}/trade/rig`, `${source}/topics/tow-fit`];

/** Seconds of processor: a change that makes it run for ever is noticed, a busy machine notices nothing. */
const limit = 150;

/** The quick ones first: most changes are noticed there, and the rest need not run. */
const suites = [
  {
    name: 'first',
    places: ['tests/differential/plain-tow-fit.test.ts', 'tests/cases/worked.test.ts'],
  },
  { name: 'own', places: [`${source}/engine`, `${source}/trade`, `${source}/topics/tow-fit`] },
  {
    name: 'around',
    places: [
      'tests/published/tow-fit-statics.test.ts',
      'tests/published/tow-fit-units.test.ts',
      'tests/published/tow-fit-formulas.test.ts',
      'tests/cases/dangers.test.ts',
      'tests/cases/told-and-said.test.ts',
      'tests/cases/acts.test.ts',
    ],
  },
];

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '100' },
    seed: { type: 'string', default: '1' },
    part: { type: 'string', default: '1/1' },
  },
});
const [part, parts] = values.part.split('/').map(Number);

const files = mutated
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter(({ name }) => name.endsWith('.ts') && !/\.(test|fixture|d)\.ts$/.test(name))
      .map(({ parentPath, name }) => join(parentPath, name)),
  )
  .toSorted();
const all = files.flatMap((file) => {
  const text = readFileSync(file, 'utf8');
  return mutants(text).map((change) => ({ file, text, change }));
});

/** Which of them, the same for a seed on every machine. */
function sample(count, seed) {
  const generator = xoroshiro128plus(seed);
  const left = [...all];
  return Array.from({ length: Math.min(count, left.length) }, () => {
    const [taken] = left.splice(uniformInt(generator, 0, left.length - 1), 1);
    return taken;
  });
}

/** What no test of the suite noticed is nothing; else the first that failed, or that there was no end. */
async function noticed({ name, places }) {
  let file;
  try {
    file = await together(name, places);
  } catch {
    return 'it cannot be built';
  }
  const { status, signal, stdout } = spawnSync(
    'sh',
    ['-c', `ulimit -t ${limit}; exec "$0" "$1"`, process.execPath, file],
    { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] },
  );
  if (signal !== null) return 'it finds no end';
  return status === 0 ? undefined : (stdout.trim().split('\n').at(-1) ?? 'it fails');
}

let atWork;
const putBack = () => atWork && writeFileSync(atWork.file, atWork.text);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(130));
process.on('exit', putBack);

/** Of how many in a hundred some test would notice, with nineteen in twenty (Wilson). */
function between(noticed, tried) {
  const z = 1.96;
  const share = noticed / tried;
  const middle = share + (z * z) / (2 * tried);
  const half = z * Math.sqrt((share * (1 - share)) / tried + (z * z) / (4 * tried * tried));
  return [middle - half, middle + half].map((each) =>
    Math.round((100 * each) / (1 + (z * z) / tried)),
  );
}

for (const suite of suites) {
  const failure = await noticed(suite);
  if (failure !== undefined) throw new Error(`Without any change this fails already: ${failure}`);
}
const mine = sample(Number(values.count), Number(values.seed)).filter(
  (_, i) => i % parts === part - 1,
);
console.log(`${all.length} changes can be made; ${mine.length} are tried.`);
let killed = 0;
for (const [i, mutant] of mine.entries()) {
  const { file, text, change } = mutant;
  atWork = mutant;
  writeFileSync(file, changed(text, change));
  let how;
  for (const suite of suites) {
    how = await noticed(suite);
    if (how !== undefined) break;
  }
  putBack();
  atWork = undefined;
  if (how !== undefined) killed += 1;
  const place = `${relative(root, file)}:${change.line}`;
  const told = `${change.was.replace(/\s+/g, ' ').slice(0, 90)} → ${change.to.slice(0, 90)}`;
  console.log(
    `${i + 1} ${how === undefined ? 'NOT NOTICED' : 'noticed'}  ${place}  ${told}  ${how ?? ''}`,
  );
}
const [least, most] = between(killed, mine.length);
console.log(`${killed} of ${mine.length} noticed: ${least} to ${most} of a hundred`);
