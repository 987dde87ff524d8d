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

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const source = 'packages/rules/src';
const mutated = [`${source}/engine`, `${source}/trade/rig`, `${source}/topics/tow-fit`];

/** The quick ones first: most changes are noticed there, and the rest, some minutes long, need not run. */
const suites = [
  [`${source}/engine`, 'tests/cases/worked.test.ts', 'tests/differential/plain-tow-fit.test.ts'],
  ['tests/published', 'tests/cases', 'tests/differential', source],
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

/** Whether some test of the suite fails. */
function noticed(suite) {
  const args = ['run', '--config', 'tests/vitest.config.ts', '--bail', '1'];
  const { status } = spawnSync(join(root, 'node_modules/.bin/vitest'), [...args, ...suite], {
    cwd: root,
    stdio: 'ignore',
    timeout: 600_000,
  });
  return status !== 0;
}

let atWork;
const putBack = () => atWork && writeFileSync(atWork.file, atWork.text);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(130));
process.on('exit', putBack);

for (const suite of suites) {
  if (noticed(suite)) throw new Error(`Without any change these fail already: ${suite.join(' ')}`);
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
  const how = suites.findIndex(noticed);
  putBack();
  if (how >= 0) killed += 1;
  const place = `${relative(root, file)}:${change.line}`;
  const told = `${change.was.replace(/\s+/g, ' ').slice(0, 90)} → ${change.to.slice(0, 90)}`;
  console.log(`${i + 1} ${how >= 0 ? `noticed ${how + 1}` : 'NOT NOTICED'}  ${place}  ${told}`);
}
console.log(`${killed} of ${mine.length} noticed`);
