// `node tests/mutants/parameters.mjs [--topic ID] [--cases]`, after a build: which parameters could be a tenth more
// without any check noticing. Each is tried on the filed cases of every topic that has it, and where these
// come out as they are expected all the same, on those topics' own tests and those against outside sources; with `--cases` on the cases alone.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { compareWithExpect, readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { answerTraced, defineTopic } from '@tarebook/rules/engine';
import { together } from './together.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const { values } = parseArgs({
  options: { topic: { type: 'string' }, cases: { type: 'boolean', default: false } },
});

/** The topic with one parameter a tenth more, on every day. */
function raised(topic, id) {
  const parameter = topic.parameters[id];
  const more = parameter.values.map((entry) => ({ ...entry, value: entry.value * 1.1 }));
  return defineTopic({
    ...topic,
    parameters: { ...topic.parameters, [id]: { ...parameter, values: more } },
  });
}

const docsOf = (id) => {
  const folder = join(root, 'cases', id);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith('.md'))
    .map((name) => readCase(readFileSync(join(folder, name), 'utf8')))
    .filter(({ troubles }) => troubles.length === 0);
};

const answered = (topic, doc) => answerTraced(topic, { facts: doc.facts, asOf: doc.front.asOf });

/** The cases that were reckoned with each parameter, as their traces tell. */
function readers(topic, docs) {
  const found = new Map();
  for (const doc of docs) {
    for (const [id, step] of Object.entries(answered(topic, doc).trace.steps)) {
      if (step.kind === 'parameter') found.set(id, [...(found.get(id) ?? []), doc]);
    }
  }
  return found;
}

function casesNotice(topic, id, docs) {
  const changed = raised(topic, id);
  return docs.some((doc) => {
    try {
      return compareWithExpect(doc, answered(changed, doc)).length > 0;
    } catch {
      return true;
    }
  });
}

/** Every rule set is made with the parameter that the process is told of a tenth more. */
const tenth = {
  name: 'a-tenth-more',
  setup(build) {
    build.onLoad({ filter: /engine\/define\/looked-at\.ts$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      const plain = '(made: T): T {\n  return lookedAtBy(made, nothingLeft);\n}';
      if (text.split(plain).length !== 2) throw new Error('ruleSet is no longer as it was.');
      const raise = `(made: T): T {
  const id = process.env.TAREBOOK_RAISED ?? '';
  const it = made.parameters[id];
  if (!it) return lookedAtBy(made, nothingLeft);
  const values = it.values.map((entry) => ({ ...entry, value: entry.value * 1.1 }));
  const more = { ...made, parameters: { ...made.parameters, [id]: { ...it, values } } };
  return lookedAtBy(more, nothingLeft);
}`;
      return { contents: text.replace(plain, raise), loader: 'ts' };
    });
  },
};

const testsIn = (folder, id) =>
  readdirSync(join(root, 'tests', folder))
    .filter((name) => name.startsWith(id) && name.endsWith('.test.ts'))
    .map((name) => `tests/${folder}/${name}`);

function passes(file, parameter) {
  const { status } = spawnSync(process.execPath, [file], {
    cwd: root,
    stdio: 'ignore',
    timeout: 120_000,
    env: { ...process.env, TAREBOOK_RAISED: parameter },
  });
  return status === 0;
}

/** Seconds that a topic's tests may take for each parameter; else those against outside sources must do. */
const patience = 8;

/** A topic's tests as one file that a plain Node runs, if they hold as things are. */
async function quickTests(topic) {
  const published = testsIn('published', topic);
  for (const [name, tests] of [
    [`tenth-${topic}`, [...published, ...testsIn('properties', topic)]],
    [`tenth-published-${topic}`, published],
  ]) {
    if (tests.length === 0) continue;
    const file = await together(name, tests, [tenth]);
    const begun = performance.now();
    const holds = passes(file, '');
    if (holds && (performance.now() - begun) / 1000 < patience) return file;
  }
  return undefined;
}

const meant = Object.values(topics).filter(
  ({ id }) => values.topic === undefined || id === values.topic,
);
/** Of each parameter the topics that have it, and those in which a case is reckoned with it. */
const having = new Map();
const reckonedIn = new Map();
const noticed = new Set();
for (const topic of meant) {
  const read = readers(topic, docsOf(topic.id));
  for (const id of Object.keys(topic.parameters)) {
    having.set(id, [...(having.get(id) ?? []), topic.id]);
    const docs = read.get(id);
    if (!docs) continue;
    reckonedIn.set(id, [...(reckonedIn.get(id) ?? []), topic.id]);
    if (!noticed.has(id) && casesNotice(topic, id, docs)) noticed.add(id);
  }
  console.log(`${topic.id}: its cases are read`);
}
console.log(`${noticed.size} of ${having.size} parameters are noticed by cases`);
for (const { id: topic } of values.cases ? [] : meant) {
  const left = [...having].filter(([id, all]) => all.includes(topic) && !noticed.has(id));
  if (left.length === 0) continue;
  const file = await quickTests(topic);
  if (file === undefined) {
    console.log(`${topic}: it has no tests of its own that hold without any change`);
    continue;
  }
  for (const [id] of left) if (!passes(file, id)) noticed.add(id);
  const still = left.filter(([id]) => !noticed.has(id));
  console.log(`${topic}: ${left.length - still.length} of ${left.length} noticed by its tests`);
}
const unnoticed = [...having].filter(([id]) => !noticed.has(id));
for (const [id, all] of unnoticed) {
  const cases = reckonedIn.has(id) ? '' : ' (no case is reckoned with it)';
  console.log(`  ${id}: ${all.join(', ')}${cases}`);
}
console.log(`${noticed.size} of ${having.size} noticed`);
