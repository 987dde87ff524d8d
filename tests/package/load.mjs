// The built packages as a stranger gets them: packed, unpacked elsewhere, loaded by plain Node.
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { run } from '../run/shared.mjs';

const published = { rules: '@tarebook/rules', casebook: '@tarebook/casebook', cli: 'tarebook' };

const facts = `{
  'vehicle.maxTrailerWeight': '5,000 lb', 'vehicle.maxTongueCarried': '500 lb',
  'vehicle.placardPayload': '1,260 lb', 'trailer.dryWeight': '3,900 lb',
  'trailer.gvwr': '5,000 lb', 'trailer.dryTongueWeight': '430 lb',
}`;

const judged = `
  answer(towFit, { facts: ${facts}, asOf: '2026-11-01' }).then((found) => {
    if (found.outcome !== 'fits-with-care' || found.values['tongue.loaded'].lo !== 473) throw new Error(JSON.stringify(found.sentence));
    console.log('right');
  });`;

const programs = {
  'rules as ES module': ['a.mjs', `import { answer, towFit } from '@tarebook/rules'; ${judged}`],
  'rules as CommonJS': [
    'a.cjs',
    `const { answer, towFit } = require('@tarebook/rules'); ${judged}`,
  ],
  'engine and topic as ES modules': [
    'b.mjs',
    `import { answer } from '@tarebook/rules/engine'; import { towFit } from '@tarebook/rules/tow-fit'; ${judged}`,
  ],
  'engine and topic as CommonJS': [
    'b.cjs',
    `const { answer } = require('@tarebook/rules/engine'); const { towFit } = require('@tarebook/rules/tow-fit'); ${judged}`,
  ],
  'quantity, both ways': [
    'c.mjs',
    `import { readQuantity } from '@tarebook/rules/quantity'; import { createRequire } from 'node:module'; const q = createRequire(import.meta.url)('@tarebook/rules/quantity'); if (readQuantity('5 ft').from === 5 && q.readQuantity('5 ft').from === 5) console.log('right');`,
  ],
  'rule set as JSON': [
    'd.cjs',
    `const t = require('@tarebook/rules/tow-fit.json'); if (t.id === 'tow-fit' && t.conditions.length > 18) console.log('right');`,
  ],
  'casebook as ES module': [
    'e.mjs',
    `import { readCase } from '@tarebook/casebook'; if (readCase('---\\ntopic: tow-fit\\n---\\n').troubles.length === 0) console.log('right');`,
  ],
  'command line': [
    'f.mjs',
    `import { execFileSync } from 'node:child_process'; const out = execFileSync(process.execPath, ['node_modules/tarebook/dist/tarebook.js', 'rules', '--json'], { encoding: 'utf8' }); if (JSON.parse(out)[0].topic === 'tow-fit') console.log('right');`,
  ],
};

const hooks = ['preinstall', 'install', 'postinstall', 'prepare', 'prepublish'];

/** Resolves with how many of the checks passed and failed, and what the failing ones said. */
export async function load(root) {
  const away = mkdtempSync(join(tmpdir(), 'tarebook-packed-'));
  const modules = join(away, 'node_modules');
  mkdirSync(join(modules, '@tarebook'), { recursive: true });
  const failures = [];
  let passed = 0;
  const note = (right, says) => {
    if (right) passed += 1;
    else failures.push(says);
  };
  for (const [folder, name] of Object.entries(published)) {
    const { out, code, err } = await run(
      'npm',
      ['pack', '--json', '--pack-destination', away, '-w', `packages/${folder}`],
      { cwd: root },
    );
    if (code !== 0) throw new Error(`${name} cannot be packed: ${err}`);
    const [{ filename }] = Object.values(JSON.parse(out));
    const target = join(modules, name);
    mkdirSync(target, { recursive: true });
    await run('tar', ['-xzf', join(away, filename), '-C', target, '--strip-components=1']);
    const manifest = JSON.parse(readFileSync(join(target, 'package.json'), 'utf8'));
    const hooked = hooks.filter((hook) => manifest.scripts?.[hook]);
    note(hooked.length === 0, `${name} has install scripts: ${hooked.join(', ')}`);
    for (const dependency of Object.keys(manifest.dependencies ?? {})) {
      if (!Object.values(published).includes(dependency)) await borrow(root, modules, dependency);
    }
  }
  for (const [what, [file, text]] of Object.entries(programs)) {
    writeFileSync(join(away, file), text);
    const { out, err } = await run('node', [file], { cwd: away });
    note(out.trim() === 'right', `${what}: ${out}${err}`);
  }
  rmSync(away, { recursive: true, force: true });
  return { passed, failed: failures.length, says: failures.join('\n') };
}

/** What a published package depends on, from what is installed here, with all that it depends on. */
async function borrow(root, modules, name) {
  const from = join(root, 'node_modules', name);
  const to = join(modules, name);
  try {
    mkdirSync(dirname(to), { recursive: true });
    symlinkSync(from, to, 'dir');
  } catch (problem) {
    if (problem.code !== 'EEXIST') cpSync(from, to, { recursive: true });
  }
}
