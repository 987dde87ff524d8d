// What each step of `npm test` runs. All resolve with { passed, failed, says }.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join, relative } from 'node:path';
import { load } from '../package/load.mjs';
import { bin, packages, root, run } from './shared.mjs';
import { tell, together } from './step.mjs';

const command = (name, ...args) => run(bin(name), args);

export const types = async () => together([await command('tsc', '--noEmit')]);

export const lint = async () =>
  together([
    await command('biome', 'check', '--config-path=.biome.json', '--error-on-warnings', '.'),
  ]);

export const directions = async () =>
  together([
    await command('depcruise', '--config', '.dependency-cruiser.cjs', 'packages', 'notebook/src'),
  ]);

export const unused = async () => together([await command('knip', '--config', '.knip.json')]);

/** What has types, and by which ways of loading these must be right. */
const typed = { rules: 'node16', casebook: 'esm-only', record: 'esm-only', sweep: 'esm-only' };

/** The packages as they are packed by what others will make of them: files, entries, types in each way of loading. */
export const published = () =>
  withScratch(async (scratch) => {
    const results = [];
    for (const folder of packages) {
      const args = ['pack', '--json', '--pack-destination', scratch, '-w', folder];
      const packed = await run('npm', args);
      results.push(packed);
      if (packed.code !== 0) continue;
      const [{ filename }] = Object.values(JSON.parse(packed.out));
      const file = join(scratch, filename);
      results.push(await command('publint', 'run', '--strict', file));
      const profile = typed[basename(folder)];
      if (profile) results.push(await command('attw', file, '--profile', profile));
    }
    return together(results);
  });

const groups = [
  ['unit', /^(packages\/[^/]+|notebook)\/src\//],
  ['published sources', /^tests\/published\//],
  ['properties', /^tests\/properties\//],
  ['second derivation', /^tests\/differential\//],
  ['case documents', /^tests\/cases\//],
  ['other', /^/],
];

const readJson = (file) => JSON.parse(readFileSync(file, 'utf8'));

/** With a fresh folder for what a tool writes; the folder goes when the work is done. */
async function withScratch(work) {
  const scratch = mkdtempSync(join(tmpdir(), 'tarebook-'));
  try {
    return await work(scratch);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** One run of vitest, told as one line a group; a group none of whose files ran has failed. */
export async function vitest() {
  await withScratch(async (scratch) => {
    const file = join(scratch, 'vitest.json');
    const { code, out, err } = await command(
      'vitest',
      'run',
      ...['--config', 'tests/vitest.config.ts', '--reporter=json', `--outputFile=${file}`],
    );
    if (!existsSync(file)) return tell('vitest', { passed: 0, failed: 1, says: `${out}${err}` }, 0);
    const { testResults } = readJson(file);
    const left = new Set(testResults);
    let failing = 0;
    for (const [name, paths] of groups) {
      const files = [...left].filter((each) => paths.test(relative(root, each.name)));
      for (const each of files) left.delete(each);
      if (name === 'other' && files.length === 0) continue;
      const told = files.map(ofFile);
      const failed = told.reduce((sum, each) => sum + each.failed, 0);
      failing += failed;
      const seconds = files.reduce((sum, each) => sum + (each.endTime - each.startTime) / 1000, 0);
      const passed = told.reduce((sum, each) => sum + each.passed, 0);
      tell(name, { passed, failed, says: told.map((each) => each.says).join('') }, seconds);
    }
    // Such as an error thrown outside every test.
    if (code !== 0 && failing === 0) {
      tell('vitest', { passed: 0, failed: 1, says: `${out}${err}` }, 0);
    }
  });
}

/** A test that was skipped has not passed; a file that could not be loaded is one failure. */
function ofFile({ name, status, message, assertionResults }) {
  const where = relative(root, name);
  if (assertionResults.length === 0) {
    return { passed: 0, failed: 1, says: `${where}: ${message || status}\n` };
  }
  const failing = assertionResults.filter((each) => each.status !== 'passed');
  const says = failing.map(
    (each) =>
      `${where}: ${each.fullName}: ${each.status}\n${(each.failureMessages ?? []).join('\n')}\n`,
  );
  return {
    passed: assertionResults.length - failing.length,
    failed: failing.length,
    says: says.join(''),
  };
}

export const loaded = () => load(root);

/** The bundlers are there only once everything is installed. */
export const sized = async () => (await import('../package/sizes.mjs')).sizes(root);

/** Every worked case by the built command line, by the command that npm links. */
export async function cases() {
  const args = ['check', 'cases', '--json'];
  const { code, out, err } = await command('tarebook', ...args);
  if (code !== 0 && code !== 1) return { passed: 0, failed: 1, says: err };
  const checked = JSON.parse(out);
  const differing = checked.filter(({ holds }) => !holds);
  const says = differing.map(
    ({ file, differences }) =>
      `${file}\n${differences.map((d) => `  ${d.name}: expected ${d.expected}, found ${d.found}\n`).join('')}`,
  );
  const passed = checked.length - differing.length;
  if ((code === 0) === (differing.length === 0)) {
    return { passed, failed: differing.length, says: says.join('') };
  }
  says.push(`The exit code is ${code} though ${differing.length} cases differ.`);
  return { passed, failed: differing.length + 1, says: says.join('\n') };
}

const browserTests = 'tests/browser';

/** A port that nothing listens on, so that two runs on one machine do not meet. */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, 'localhost', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** What went wrong in the tests of a file, also where it passed when tried again, and nothing of what passed. */
function ofSuite({ specs = [], suites = [] }) {
  const wrong = specs.flatMap(({ file, line, title, tests }) =>
    tests
      .filter(({ status }) => status !== 'expected')
      .map(({ projectName, status, results }) => {
        const problems = results.flatMap(({ errors, duration }) =>
          errors.map(({ message }) => `after ${(duration / 1000).toFixed(0)} s: ${message}`),
        );
        return `[${projectName}] ${file}:${line} ${title}: ${status}\n${problems.join('\n')}`;
      }),
  );
  return [...wrong, ...suites.flatMap(ofSuite)];
}

export async function browser() {
  if (!process.env.TAREBOOK_CHROMIUM) {
    return { passed: 0, failed: 1, says: 'Not run, as there is no browser.' };
  }
  if (!existsSync(join(root, browserTests)) || readdirSync(join(root, browserTests)).length === 0) {
    return { passed: 0, failed: 1, says: `There is nothing in ${browserTests}.` };
  }
  return withScratch(async (scratch) => {
    const file = join(scratch, 'browser.json');
    const args = ['test', '-c', `${browserTests}/playwright.config.ts`, '--reporter=json'];
    const { code, out, err } = await run(bin('playwright'), args, {
      env: {
        PLAYWRIGHT_JSON_OUTPUT_NAME: file,
        TAREBOOK_TEST_PORT: String(await freePort()),
        NO_COLOR: '1',
      },
    });
    if (!existsSync(file)) return { passed: 0, failed: 1, says: `${out}${err}` };
    const { stats, suites, errors } = readJson(file);
    const failed = stats.unexpected + stats.skipped;
    const says = [...suites.flatMap(ofSuite), ...errors.map(({ message }) => message)].join('\n');
    if (failed === 0 && stats.flaky > 0) console.log(says);
    return {
      passed: stats.expected + stats.flaky,
      failed: code === 0 ? failed : Math.max(1, failed),
      says: says || `${out}${err}`,
    };
  });
}
