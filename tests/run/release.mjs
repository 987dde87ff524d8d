// Keeps versions of rule sets for good: `npm run release-rules` those of every topic that are not
// kept yet, `npm run release-rules -- TOPIC …` those of these topics. Each stands in
// packages/rules/published/TOPIC/VERSION.json, from which it can be run and compared for as long as
// sheets that name it lie in drawers, with its digests, and with answers it gave in tests/kept.
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build, giveUp, install, root } from './shared.mjs';

await install();
const failure = await build(['packages/rules', 'packages/casebook']);
if (failure !== '') giveUp(failure);
const rules = await import('@tarebook/rules');
const engine = await import('@tarebook/rules/engine');
const { readCase } = await import('@tarebook/casebook');

const published = join(root, 'packages/rules/published');
const answersOf = join(root, 'tests/kept');
const digestsFile = join(published, 'digests.json');
const mostAnswers = 5;

const sha = (text) => createHash('sha256').update(text).digest('hex');

/** Of what it says, every byte; of what it reckons with, all that a verdict rests on. */
const digestsOf = (text) => ({
  whole: sha(text),
  reckons: sha(JSON.stringify(engine.reckonedOf(JSON.parse(text)))),
});

async function versionsKept(id) {
  const files = await readdir(join(published, id)).catch(() => []);
  return files
    .map((file) => file.replace(/\.json$/, ''))
    .filter(engine.isVersion)
    .sort(engine.compareVersions);
}

/** Writes the present version of a topic for good; '' or why it cannot be. */
async function keep(topic) {
  const { id, version } = topic;
  const [text, file] = [engine.keptText(topic), join(published, id, `${version}.json`)];
  if (existsSync(file)) {
    if ((await readFile(file, 'utf8')) === text) return '';
    return `${id} ${version} is kept already and says something else; raise the topic’s version first.`;
  }
  const last = (await versionsKept(id)).at(-1);
  if (last !== undefined) {
    const was = engine.topicFromPublished(
      JSON.parse(await readFile(join(published, id, `${last}.json`), 'utf8')),
    );
    const rise = engine.riseFor(engine.compareTopics(was, topic));
    if (engine.compareVersions(last, version) > 0 || !engine.hasRisenEnough(was, topic)) {
      return `${id} ${version} comes after ${last}, which is kept; what changed asks for a new ${rise} number.`;
    }
  }
  await mkdir(join(published, id), { recursive: true });
  await writeFile(file, text);
  console.log(`Kept: ${id} ${version}.`);
  return '';
}

/** What a rule set makes of a case, with every number to its last digit; nothing where it refuses it. */
function answered(topic, { front, facts }) {
  const known = Object.entries(facts).filter(([fact]) => Object.hasOwn(topic.facts, fact));
  const asked = { facts: Object.fromEntries(known), asOf: front.asOf };
  try {
    const { outcome, binding, limits, findings, values } = engine.answerNow(topic, asked);
    return {
      asked,
      outcome,
      binding,
      limits: Object.fromEntries(limits.map(({ id, state }) => [id, state])),
      findings: Object.fromEntries(findings.map(({ id, level }) => [id, level])),
      values: Object.fromEntries(
        Object.entries(values).map(([name, { lo, hi }]) => [name, [lo, hi]]),
      ),
    };
  } catch (problem) {
    if (problem instanceof engine.InputError) return undefined;
    throw problem;
  }
}

/** Cases of a topic, those first with which every outcome is there. */
async function answersFrom(topic) {
  const folder = join(root, 'cases', topic.id);
  const found = [];
  for (const file of (await readdir(folder)).filter((each) => each.endsWith('.md')).sort()) {
    const doc = readCase(await readFile(join(folder, file), 'utf8'));
    const answer = doc.troubles.length === 0 ? answered(topic, doc) : undefined;
    if (answer) found.push(answer);
  }
  const firsts = found.filter(
    ({ outcome }, i) => found.findIndex((each) => each.outcome === outcome) === i,
  );
  return [...new Set([...firsts, ...found])].slice(0, mostAnswers);
}

/** Digests and answers of every kept version that has none. */
async function record(id) {
  const digests = JSON.parse(await readFile(digestsFile, 'utf8').catch(() => '{}'));
  for (const version of await versionsKept(id)) {
    const text = await readFile(join(published, id, `${version}.json`), 'utf8');
    digests[id] = { ...digests[id] };
    digests[id][version] ??= digestsOf(text);
    const file = join(answersOf, id, `${version}.json`);
    if (existsSync(file)) continue;
    await mkdir(join(answersOf, id), { recursive: true });
    const answers = await answersFrom(engine.topicFromPublished(JSON.parse(text)));
    await writeFile(file, `[${answers.map((each) => JSON.stringify(each)).join(',\n')}]\n`);
  }
  await writeFile(digestsFile, `${JSON.stringify(digests, null, 2)}\n`);
}

const given = process.argv.slice(2);
const strange = given.find((id) => !Object.hasOwn(rules.topics, id));
if (strange !== undefined) {
  giveUp(`There is no topic “${strange}”; there are ${Object.keys(rules.topics).join(', ')}.`);
}
const ids = given.length > 0 ? given : Object.keys(rules.topics);
const refused = [];
for (const id of ids) {
  const why = await keep(rules.topics[id]);
  if (why !== '') refused.push(why);
  await record(id);
}
if (refused.length > 0) giveUp(refused.join('\n'));
console.log(`All kept: ${ids.map((id) => `${id} ${rules.topics[id].version}`).join(', ')}.`);
