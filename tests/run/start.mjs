// `npm start`: from nothing installed to the notebook in a browser.

import { freePort, serve } from './serve.mjs';
import { build, giveUp, install, run } from './shared.mjs';

const port = await freePort();
await install();
console.log('Building …');
const failure = await build();
if (failure !== '') giveUp(failure);

const { code } = await run('node', ['packages/cli/dist/tarebook.js', 'check', 'cases'], {
  show: true,
});
if (code !== 0) console.error('Some cases do not hold; the notebook shows them as they are.');

await serve(port);
console.log(`The notebook is at http://localhost:${port}/`);
