// `npm start`: from nothing installed to the notebook in a browser; with `-- --topics FILE` topics of
// one's own are in it too.
import { parseArgs } from 'node:util';
import { ownTopicsOf } from './own-topics.mjs';
import { freePort, serve } from './serve.mjs';
import { build, giveUp, install, packages, run } from './shared.mjs';

const { values } = parseArgs({ options: { topics: { type: 'string' } } });
const port = await freePort();
await install();
console.log('Building …');
const failure = await build(packages);
if (failure !== '') giveUp(failure);
if (values.topics !== undefined) process.env.TAREBOOK_OWN_TOPICS = await ownTopicsOf(values.topics);
const failed = await build(['notebook']);
if (failed !== '') giveUp(failed);

const { code } = await run('node', ['packages/cli/dist/tarebook.js', 'check', 'cases'], {
  show: true,
});
if (code !== 0) console.error('Some cases do not hold; the notebook shows them as they are.');

await serve(port);
console.log(`The notebook is at http://localhost:${port}/`);
