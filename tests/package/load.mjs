// The built packages as a stranger gets them: packed, unpacked elsewhere, loaded by plain Node.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { run } from '../run/shared.mjs';
import { asked, document, programs, right } from './programs.mjs';

const ours = {
  rules: '@tarebook/rules',
  casebook: '@tarebook/casebook',
  record: '@tarebook/record',
  sweep: '@tarebook/sweep',
  cli: 'tarebook',
};
const installScripts = ['preinstall', 'install', 'postinstall', 'preprepare', 'prepare'];

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
      const hooked = installScripts.filter((hook) => manifest.scripts?.[hook]);
      note(hooked.length === 0, `${name} runs something when installed: ${hooked.join(', ')}`);
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
    for (const name of Object.values(ours)) {
      const says = await readmeRuns(away, name);
      note(says === '', `${name}/README.md: ${says}`);
    }
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

/** Runs the first program of a package's README; '' where it prints what stands under “prints”. */
async function readmeRuns(away, name) {
  const text = readFileSync(join(away, 'node_modules', name, 'README.md'), 'utf8');
  const [, program] = /```js\n([\s\S]*?)```/.exec(text) ?? [];
  if (program === undefined) return '';
  const file = `readme-${name.replace(/\W+/g, '-')}.mjs`;
  writeFileSync(join(away, file), program);
  const { code, out, err } = await run('node', [file], { cwd: away, seconds: 60 });
  if (code !== 0) return `its example fails: ${err}`;
  const [, wanted] = /\nprints\n\n```\n([\s\S]*?)```/.exec(text) ?? [];
  return wanted === undefined || out === wanted ? '' : `its example prints\n${out}`;
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
