// The built packages as a stranger gets them: packed, unpacked elsewhere, loaded by plain Node.
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { run } from '../run/shared.mjs';
import { leadForm } from './lead-form.mjs';
import { asked, document, programs, right } from './programs.mjs';

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
  const away = mkdtempSync(join(tmpdir(), 'tarebook-packed-'));
  try {
    const failures = [];
    let passed = 0;
    const note = (holds, says) => {
      if (holds) passed += 1;
      else failures.push(says);
    };
    for (const [folder, name] of Object.entries(ours)) {
      const manifest = await unpack(root, away, folder, name);
      note(
        !manifest.scripts,
        `${name} has scripts: ${Object.keys(manifest.scripts ?? {}).join(', ')}`,
      );
      note(!JSON.stringify(manifest).includes('"source":'), `${name} points at its sources.`);
      const wrong = wrongFiles(join(away, 'node_modules', name));
      note(wrong === '', `${name}: ${wrong}`);
      for (const needed of Object.keys(manifest.dependencies ?? {})) borrow(root, away, needed);
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
    borrow(root, away, 'json-rules-engine');
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
    rmSync(away, { recursive: true, force: true });
  }
}

/** '' where a package has its papers, nothing that only stands here, and no path of this machine. */
function wrongFiles(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
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

async function unpack(root, away, folder, name) {
  const args = ['pack', '--json', '--pack-destination', away, '-w', `packages/${folder}`];
  const packed = await run('npm', args, { cwd: root });
  if (packed.code !== 0) throw new Error(`${name} cannot be packed:\n${packed.err}`);
  const [{ filename }] = Object.values(JSON.parse(packed.out));
  const target = join(away, 'node_modules', name);
  mkdirSync(target, { recursive: true });
  const unpacked = await run('tar', [
    '-xzf',
    join(away, filename),
    '-C',
    target,
    '--strip-components=1',
  ]);
  if (unpacked.code !== 0) throw new Error(`${name} cannot be unpacked:\n${unpacked.err}`);
  return JSON.parse(readFileSync(join(target, 'package.json'), 'utf8'));
}

/** What a published package depends on, from what is installed here; ours come from their packs. */
function borrow(root, away, name) {
  if (Object.values(ours).includes(name)) return;
  const to = join(away, 'node_modules', name);
  mkdirSync(dirname(to), { recursive: true });
  try {
    symlinkSync(join(root, 'node_modules', name), to, 'dir');
  } catch (problem) {
    if (problem.code !== 'EEXIST') throw problem;
  }
}
