// `npm test`: everything, one step after another; a step that fails does not stop the next.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bin, build, install, root, run } from './shared.mjs';

const counts = { passed: 0, failed: 0 };
const scratch = mkdtempSync(join(tmpdir(), 'tarebook-'));

/** One line for a step, its failures in full; a step that ran nothing has failed. */
async function step(name, work) {
  const began = Date.now();
  let result;
  try {
    result = await work();
  } catch (problem) {
    result = { passed: 0, failed: 1, says: problem.stack ?? String(problem) };
  }
  if (result.passed + result.failed === 0) {
    result = { passed: 0, failed: 1, says: `${name} ran no test.\n${result.says ?? ''}` };
  }
  counts.passed += result.passed;
  counts.failed += result.failed;
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  console.log(`${name}: ${result.passed} passed, ${result.failed} failed, ${seconds} s`);
  if (result.failed > 0) console.log(result.says ?? '');
}

const one = ({ code, out, err }) =>
  code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, says: `${out}${err}` };

const readJson = (file) => JSON.parse(readFileSync(file, 'utf8'));

async function units() {
  const file = join(scratch, 'vitest.json');
  const args = [
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
  ];
  const { code, out, err } = await run(bin('vitest'), [...args, `--outputFile.json=${file}`]);
  if (!existsSync(file)) return { passed: 0, failed: 1, says: `${out}${err}` };
  const { numPassedTests: passed, numTotalTests: total } = readJson(file);
  // A test that was skipped has not passed.
  const failed = Math.max(total - passed, code === 0 ? 0 : 1);
  return { passed, failed, says: `${out}${err}` };
}

async function cases() {
  const { code, out, err } = await run('node', [
    'packages/cli/dist/tarebook.js',
    'check',
    'cases',
    '--json',
  ]);
  if (code === 2) return { passed: 0, failed: 1, says: err };
  const checked = JSON.parse(out);
  const differing = checked.filter(({ holds }) => !holds);
  return {
    passed: checked.length - differing.length,
    failed: differing.length,
    says: JSON.stringify(differing, null, 2),
  };
}

await install();
let built = '';
await step('Build', async () => {
  built = await build();
  return built === '' ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, says: built };
});
await step('Types', async () => one(await run(bin('tsc'), ['--noEmit'])));
await step('Lint', async () =>
  one(await run(bin('biome'), ['check', '--config-path=.biome.json', '--error-on-warnings', '.'])),
);
await step('Dependency directions', async () =>
  one(
    await run(bin('depcruise'), [
      '--config',
      '.dependency-cruiser.cjs',
      'packages',
      'notebook/src',
    ]),
  ),
);
await step('Unused code', async () => one(await run(bin('knip'), ['--config', '.knip.json'])));
for (const name of ['rules', 'casebook', 'cli']) {
  await step(`Package ${name}`, async () =>
    one(await run(bin('publint'), ['--strict', `packages/${name}`])),
  );
}
await step('Types as others see them', async () => {
  const args = ['--pack', 'packages/rules', '--profile', 'node16'];
  return one(
    await run(bin('attw'), [...args, '--exclude-entrypoints', 'tow-fit.json', 'package.json']),
  );
});
await step('Unit, property, published and differential tests', units);
await step('Built packages, loaded', async () => {
  const { passed, failed, says } = await import('../package/load.mjs').then((made) =>
    made.load(root),
  );
  return { passed, failed, says };
});
await step('Worked cases', cases);

rmSync(scratch, { recursive: true, force: true });
console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exit(counts.failed === 0 ? 0 : 1);
