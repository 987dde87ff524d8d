// One small rig, asked in every way of loading that the packages offer. The numbers are worked out
// by hand: tongue 430 lb × 1.10 = 473 lb, which leaves 27 lb of 500 lb. The trailer fits if,
// as nobody told of brakes or of the load; by rules 1.0.0 it fitted with care, so that it changes.
export const asked = {
  asOf: '2026-11-01',
  facts: {
    'vehicle.maxTrailerWeight': '5,000 lb',
    'vehicle.maxTongueCarried': '500 lb',
    'vehicle.placardPayload': '1,260 lb',
    'trailer.dryWeight': '3,900 lb',
    'trailer.gvwr': '5,000 lb',
    'trailer.dryTongueWeight': '430 lb',
  },
};

const rows = Object.entries(asked.facts).map(([fact, value]) => `| \`${fact}\` | ${value} |\n`);

export const document = `---
title: An invented rig
topic: tow-fit
as-of: ${asked.asOf}
---

| Fact | Value |
| --- | --- |
${rows.join('')}`;

const judge =
  "answer(towFit, JSON.parse(require('node:fs').readFileSync('asked.json', 'utf8'))).then((a) => console.log(JSON.stringify(a)));";
const requiring =
  "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);";

/** What is shown → [file, program]. Those named “answer, …” must all print the same. */
export const programs = {
  'answer, ES module': [
    'index.mjs',
    `import { answer, towFit } from '@tarebook/rules'; ${requiring} ${judge}`,
  ],
  'answer, CommonJS': [
    'index.cjs',
    `const { answer, towFit } = require('@tarebook/rules'); ${judge}`,
  ],
  'answer, ES modules of engine and topic': [
    'parts.mjs',
    `import { answer } from '@tarebook/rules/engine'; import { towFit } from '@tarebook/rules/tow-fit'; ${requiring} ${judge}`,
  ],
  'answer, CommonJS of engine and topic': [
    'parts.cjs',
    `const { answer } = require('@tarebook/rules/engine'); const { towFit } = require('@tarebook/rules/tow-fit'); ${judge}`,
  ],
  'answer, case document': [
    'casebook.mjs',
    `import { readFileSync } from 'node:fs'; import { judgeCase, readCase } from '@tarebook/casebook'; console.log(JSON.stringify(await judgeCase(readCase(readFileSync('case.md', 'utf8')))));`,
  ],
  'command line': [
    'cli.mjs',
    `import { execFileSync } from 'node:child_process'; process.stdout.write(execFileSync(process.execPath, ['node_modules/tarebook/bin/tarebook.js', 'judge', 'case.md', '--json']));`,
  ],
  'saved answer run again': [
    'again.mjs',
    `import { execFileSync } from 'node:child_process'; import { writeFileSync } from 'node:fs'; const run = (...args) => execFileSync(process.execPath, ['node_modules/tarebook/bin/tarebook.js', ...args]); writeFileSync('saved.json', run('judge', 'case.md', '--json')); process.stdout.write(run('judge', 'saved.json', '--json'));`,
  ],
  'what changed since a kept version': [
    'since.mjs',
    `import { execFileSync } from 'node:child_process'; process.stdout.write(execFileSync(process.execPath, ['node_modules/tarebook/bin/tarebook.js', 'rules', 'tow-fit', '--diff', '1.0.0', 'case.md', '--json']));`,
  ],
  'kept rule set asked': [
    'kept.cjs',
    `const { answerNow, topicFromPublished } = require('@tarebook/rules'); const topic = topicFromPublished(require('@tarebook/rules/published/tow-fit/1.0.0.json')); console.log(JSON.stringify(answerNow(topic, JSON.parse(require('node:fs').readFileSync('asked.json', 'utf8')))));`,
  ],
  'quantity, ES module': [
    'quantity.mjs',
    `import { readQuantity } from '@tarebook/rules/quantity'; console.log(JSON.stringify(readQuantity('5 ft')));`,
  ],
  'quantity, CommonJS': [
    'quantity.cjs',
    `console.log(JSON.stringify(require('@tarebook/rules/quantity').readQuantity('5 ft')));`,
  ],
  'rule set as JSON': [
    'set.cjs',
    `console.log(JSON.stringify(require('@tarebook/rules/tow-fit.json')));`,
  ],
  'json-rules-engine not needed': [
    'without.cjs',
    `try { require.resolve('json-rules-engine'); console.log('"found"'); } catch { console.log('"absent"'); }`,
  ],
};

/** '' when a program printed what it must, else what is wrong. */
export function right(what, out) {
  const found = JSON.parse(out);
  if (what.startsWith('answer,') || what === 'command line') {
    const { lo, hi } = found.values['tongue.loaded'];
    const tongue = found.limits.find(({ id }) => id === 'tongue');
    const holds =
      found.outcome === 'fits-if' &&
      found.binding === 'tongue' &&
      lo === 473 &&
      hi === 473 &&
      tongue.state === 'ok' &&
      tongue.headroom.lo === 27;
    return holds ? '' : out.slice(0, 2000);
  }
  if (what === 'saved answer run again') {
    const holds = found.replayed && found.same && found.outcome === 'fits-if';
    return holds && found.untouched.length === 0 ? '' : out.slice(0, 2000);
  }
  if (what === 'what changed since a kept version') {
    const [only, ...others] = found.cases;
    const holds = found.was === '1.0.0' && only.changed === true && others.length === 0;
    return holds ? '' : out.slice(0, 2000);
  }
  if (what === 'kept rule set asked') {
    const { lo, hi } = found.values['tongue.loaded'];
    return found.rules === '1.0.0' && lo === 473 && hi === 473 ? '' : out.slice(0, 2000);
  }
  if (what.startsWith('quantity')) return found.from === 5 && found.to === 5 ? '' : out;
  if (what === 'rule set as JSON') {
    const limits = found.conditions.filter(({ name }) => name.startsWith('limit.'));
    return found.id === 'tow-fit' && limits.length >= 18 ? '' : `${limits.length} limits`;
  }
  return found === 'absent' ? '' : out;
}
