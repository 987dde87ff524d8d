// Writes each rule set as plain JSON beside the built code, from the built code.
import { writeFile } from 'node:fs/promises';
import { publish, topics } from './dist/index.js';

for (const topic of Object.values(topics)) {
  const file = new URL(`./dist/${topic.id}.json`, import.meta.url);
  await writeFile(file, `${JSON.stringify(publish(topic))}\n`);
}
