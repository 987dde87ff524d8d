// Writes each rule set, and the schemas of what it is told and answers, as plain JSON beside the built code, from the built code.
//
// `--keep TOPIC` writes that of a new version for good, to published/TOPIC/VERSION.json, from which
// it can be run and compared for as long as sheets that name it lie in drawers.
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { answerSchema, compareVersions, factsSchema } from './dist/engine.js';
import { publish, topics } from './dist/index.js';

const here = (path) => new URL(path, import.meta.url);

async function writeAll() {
  for (const topic of Object.values(topics)) {
    const all = {
      [topic.id]: publish(topic),
      [`${topic.id}.facts.schema`]: factsSchema(topic),
      [`${topic.id}.answer.schema`]: answerSchema(topic),
    };
    for (const [name, data] of Object.entries(all)) {
      await writeFile(here(`./dist/${name}.json`), `${JSON.stringify(data)}\n`);
    }
  }
}

/** Writes the present version of a topic for good; '' or why it was not written. */
async function keep(id) {
  const all = Object.keys(topics).join(', ');
  if (id === undefined) return `Name the topic whose version is to be kept; there are ${all}.`;
  const topic = Object.hasOwn(topics, id) ? topics[id] : undefined;
  if (!topic) return `There is no topic “${id}”; there are ${all}.`;
  const folder = here(`./published/${id}/`);
  const text = `${JSON.stringify(publish(topic), null, 2)}\n`;
  const file = new URL(`${topic.version}.json`, folder);
  const named = `${id} ${topic.version}`;
  if (existsSync(file)) {
    if ((await readFile(file, 'utf8')) === text) return '';
    return `${named} is kept already and says something else; raise the topic’s version first.`;
  }
  await mkdir(folder, { recursive: true });
  for (const kept of await readdir(folder)) {
    const version = kept.replace(/\.json$/, '');
    if (compareVersions(version, topic.version) > 0) {
      return `${named} is older than ${version}, which is kept already; raise the topic’s version.`;
    }
  }
  await writeFile(file, text);
  return '';
}

const [flag, id] = process.argv.slice(2);
if (flag === '--keep') {
  const why = await keep(id);
  console.log(why === '' ? `Kept: ${id} ${topics[id].version}.` : why);
  process.exitCode = why === '' ? 0 : 1;
} else await writeAll();
