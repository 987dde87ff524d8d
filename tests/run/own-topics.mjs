import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { giveUp, root, run } from './shared.mjs';

const tarebook = 'packages/cli/dist/tarebook.js';

/** What `tarebook rules` says as JSON; ends with its own sentence where it refuses. */
async function rules(...args) {
  const { code, out, err } = await run('node', [tarebook, 'rules', ...args, '--json']);
  if (code !== 0) giveUp(err.trim(), code);
  return JSON.parse(out);
}

/** Where a file is that was named from the folder one stands in. */
export const topicsFile = (file) => resolve(process.env.INIT_CWD ?? process.cwd(), file);

/**
 * Checks the topics in a module or a JSON file and writes them as the page is built with them.
 *
 * @param file as it was typed, from the folder it was typed in
 * @returns the path of the JSON
 */
export async function ownTopicsOf(file) {
  const from = ['--topics', topicsFile(file)];
  const [before, all] = [await rules(), await rules(...from)];
  const known = new Set(before.map(({ topic }) => topic));
  const own = [];
  for (const { topic } of all) if (!known.has(topic)) own.push(await rules(topic, ...from));
  const folder = join(root, 'node_modules', '.cache', 'tarebook');
  mkdirSync(folder, { recursive: true });
  const written = join(folder, `own-topics-${process.pid}.json`);
  writeFileSync(written, JSON.stringify(own));
  console.log(`Beside the topics of the packages: ${own.map(({ title }) => title).join(', ')}.`);
  return written;
}
