// `node tests/mutants/parameters.mjs [--topic ID]`, after a build: which parameters could be a tenth more
// without any check noticing. Each is tried on the filed cases of its topic, and where these come out as
// they are expected all the same, on the topic's own tests and those against outside sources.
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
const { values } = parseArgs({ options: { topic: { type: 'string' } } });

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

const testsOf = (id) => [
  ...['published', 'properties'].flatMap((folder) =>
    readdirSync(join(root, 'tests', folder))
      .filter((name) => name.startsWith(id) && name.endsWith('.test.ts'))
      .map((name) => `tests/${folder}/${name}`),
  ),
];

function passes(file, parameter) {
  const { status } = spawnSync(process.execPath, [file], {
    cwd: root,
    stdio: 'ignore',
    timeout: 120_000,
    env: { ...process.env, TAREBOOK_RAISED: parameter },
  });
  return status === 0;
}

let unnoticed = 0;
let tried = 0;
for (const topic of Object.values(topics)) {
  if (values.topic !== undefined && topic.id !== values.topic) continue;
  const read = readers(topic, docsOf(topic.id));
  const ids = Object.keys(topic.parameters);
  const left = ids.filter((id) => !casesNotice(topic, id, read.get(id) ?? []));
  let still = left;
  const tests = testsOf(topic.id);
  if (left.length > 0 && tests.length > 0) {
    const file = await together(`tenth-${topic.id}`, tests, [tenth]);
    if (passes(file, '')) still = left.filter((id) => passes(file, id));
    else console.log(`${topic.id}: its tests fail without any change`);
  }
  tried += ids.length;
  unnoticed += still.length;
  console.log(
    `${topic.id}: ${ids.length} parameters, ${ids.length - left.length} noticed by cases, ${left.length - still.length} by tests, ${still.length} by none`,
  );
  for (const id of still)
    console.log(`  ${id}${read.has(id) ? '' : ' (no case is reckoned with it)'}`);
}
console.log(`${tried - unnoticed} of ${tried} noticed`);
