// `npm start`: from nothing installed to the notebook in a browser; with `-- --topics FILE` topics of
// one's own are in it too.
import { existsSync, rmSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { ownTopicsOf, topicsFile } from './own-topics.mjs';
import { freePort, serve } from './serve.mjs';
import { build, giveUp, install, packages, run } from './shared.mjs';

/** The file of one's own topics, if one was named. */
function topicsNamed() {
  try {
    return parseArgs({ options: { topics: { type: 'string' } } }).values.topics;
  } catch {
    return giveUp('To start with topics of your own, type: npm start -- --topics FILE', 2);
  }
}

const topics = topicsNamed();
if (topics !== undefined && !existsSync(topicsFile(topics))) {
  giveUp(`${topics}: there is no such file.`, 2);
}
const port = await freePort();
await install();
console.log('Building …');
const failure = await build(packages);
if (failure !== '') giveUp(failure);
if (topics !== undefined) process.env.TAREBOOK_OWN_TOPICS = await ownTopicsOf(topics);
const failed = await build(['notebook']);
const written = process.env.TAREBOOK_OWN_TOPICS;
if (topics !== undefined && written) rmSync(written, { force: true });
if (failed !== '') giveUp(failed);

const { code } = await run('node', ['packages/cli/dist/tarebook.js', 'check', 'cases'], {
  show: true,
});
if (code !== 0) console.error('Some cases do not hold; the notebook shows them as they are.');

await serve(port);
console.log(`The notebook is at http://localhost:${port}/`);
