// The built packages as a stranger gets them: packed, installed by npm in an empty folder, loaded by plain Node.
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { run } from '../run/shared.mjs';
import { leadForm } from './lead-form.mjs';
import { asked, document, programs, right } from './programs.mjs';
import { registryOf } from './registry.mjs';
import { strictTypes } from './strict.mjs';

const ours = {
  rules: '@tarebook/rules',
  casebook: '@tarebook/casebook',
  record: '@tarebook/record',
  sweep: '@tarebook/sweep',
  cli: 'tarebook',
};
const papers = ['README.md', 'LICENSE', 'CHANGELOG.md'];
/** What would tell of the machine it was packed on. */
const machinePath = /(?:^|["'`\s(])(?:\/(?:home|root|tmp|work|Users)\/|[A-Z]:\\\\)/m;

/** Resolves with how many of the checks passed and failed, and what the failing ones said. */
export async function load(root) {
  const scratch = mkdtempSync(join(tmpdir(), 'tarebook-packed-'));
  const [away, packs, cache] = ['away', 'packs', 'cache'].map((name) => join(scratch, name));
  for (const folder of [away, packs, cache]) mkdirSync(folder);
  const registry = await registryOf(root, packs);
  const install = (...what) =>
    run(
      'npm',
      [
        ...['install', ...what, '--registry', registry.address, '--cache', cache],
        // DuckDB and what brings a queue are hundreds of megabytes; nothing here asks for them.
        ...['--omit', 'optional', '--no-audit', '--no-fund', '--update-notifier', 'false'],
      ],
      { cwd: away, seconds: 300 },
    );
  try {
    const failures = [];
    let passed = 0;
    const note = (holds, says) => {
      if (holds) passed += 1;
      else failures.push(says);
    };
    const packed = [];
    for (const folder of Object.keys(ours)) packed.push(await pack(root, packs, folder));
    writeFileSync(join(away, 'package.json'), '{ "private": true }\n');
    const { code, out, err } = await install(...packed);
    note(code === 0, `npm install of the packs: ${out}${err}`);
    for (const name of Object.values(ours)) {
      const folder = join(away, 'node_modules', name);
      const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
      note(
        !manifest.scripts,
        `${name} has scripts: ${Object.keys(manifest.scripts ?? {}).join(', ')}`,
      );
      note(!JSON.stringify(manifest).includes('"source":'), `${name} points at its sources.`);
      const wrong = wrongFiles(folder);
      note(wrong === '', `${name}: ${wrong}`);
    }
    writeFileSync(join(away, 'asked.json'), JSON.stringify(asked));
    writeFileSync(join(away, 'case.md'), document);
    const answers = new Map();
    for (const [what, [file, text]] of Object.entries(programs)) {
      writeFileSync(join(away, file), text);
      const { code, out, err } = await run('node', [file], { cwd: away, seconds: 60 });
      const wrong = code === 0 ? right(what, out) : `exit code ${code}\n${out}`;
      note(wrong === '', `${what}: ${wrong}\n${err}`);
      if (what.startsWith('answer,')) answers.set(what, out);
    }
    // What the READMEs say to put beside the packages.
    const beside = await install('json-rules-engine', '@types/node');
    note(beside.code === 0, `npm install of what READMEs name: ${beside.out}${beside.err}`);
    await strictTypes(root, away, Object.values(ours), note);
    for (const name of Object.values(ours)) {
      const says = await readmeRuns(away, name);
      note(says === '', `${name}/README.md: ${says}`);
    }
    await examplesRun(root, away, note);
    const form = await leadForm(away).catch((problem) => problem.message);
    note(form === '', `tests/examples/lead-form.html: ${form}`);
    const [first, ...others] = answers.values();
    note(
      others.length > 0 && others.every((each) => each === first),
      `Ways of loading answer differently:\n${[...answers].map((each) => each.join(': ')).join('\n')}`,
    );
    return { passed, failed: failures.length, says: failures.join('\n') };
  } finally {
    registry.close();
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** '' where a package has its papers, nothing that only stands here, and no path of this machine. */
function wrongFiles(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    // What npm put below it is not of the package.
    .filter((file) => !relative(folder, file).startsWith('node_modules'));
  const lacking = papers.filter((paper) => !files.includes(join(folder, paper)));
  const strange = files.filter((file) => /\.test\.|\.fixture\.|(?<!\.d)\.c?ts$/.test(file));
  const telling = files.filter((file) => machinePath.test(readFileSync(file, 'utf8')));
  const told = [
    ...lacking.map((paper) => `it lacks ${paper}`),
    ...strange.map((file) => `${relative(folder, file)} is a source`),
    ...telling.map((file) => `${relative(folder, file)} names a path of this machine`),
  ];
  return told.join(', ');
}

/** Runs the programs of a package's README; '' where each prints what stands under “prints”. */
async function readmeRuns(away, name) {
  const text = readFileSync(join(away, 'node_modules', name, 'README.md'), 'utf8');
  const blocks = [...text.matchAll(/```js\n([\s\S]*?)```(?:\n\nprints\n\n```\n([\s\S]*?)```)?/g)];
  for (const [i, [, program, wanted]] of blocks.entries()) {
    const file = `readme-${name.replace(/\W+/g, '-')}-${i}.mjs`;
    writeFileSync(join(away, file), program);
    const { code, out, err } = await run('node', [file], { cwd: away, seconds: 60 });
    if (code !== 0) return `its example ${i + 1} fails: ${err}`;
    if (wanted !== undefined && out !== wanted) return `its example ${i + 1} prints\n${out}`;
  }
  return '';
}

/** Small programs of the kind dealer tools are; each prints what stands beside it. */
async function examplesRun(root, away, note) {
  const folder = join(root, 'tests/examples');
  for (const file of readdirSync(folder)) copyFileSync(join(folder, file), join(away, file));
  for (const text of readdirSync(folder).filter((file) => file.endsWith('.txt'))) {
    const file = text.replace('.txt', '.mjs');
    const { code, out, err } = await run('node', [file], { cwd: away, seconds: 60 });
    const wanted = readFileSync(join(folder, text), 'utf8');
    note(code === 0 && out === wanted, `tests/examples/${file} prints\n${out}${err}`);
  }
  const command = 'node_modules/tarebook/bin/tarebook.js';
  const args = [command, 'check', 'firewood.md', '--topics', 'firewood.mjs'];
  const { code, out, err } = await run('node', args, { cwd: away, seconds: 60 });
  note(code === 0 && out.includes('1 hold'), `a topic of one's own: ${out}${err}`);
}

/** Packs a package and resolves with where. */
async function pack(root, packs, folder) {
  const args = ['pack', '--json', '--pack-destination', packs, '-w', `packages/${folder}`];
  const { code, out, err } = await run('npm', args, { cwd: root });
  if (code !== 0) throw new Error(`packages/${folder} cannot be packed:\n${err}`);
  const [{ filename }] = Object.values(JSON.parse(out));
  return join(packs, filename);
}
