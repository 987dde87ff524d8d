// Writes each rule set, and the schemas of what it is told and answers, as plain JSON beside the built code, from the built code.
import { writeFile } from 'node:fs/promises';
import { answerSchema, factsSchema } from './dist/engine.js';
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

await writeAll();
