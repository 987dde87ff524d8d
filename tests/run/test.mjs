// `npm test`: everything; a step that fails does not stop the next.
import { findBrowser } from './browser.mjs';
import { build, install, packages } from './shared.mjs';
import { finish, step } from './step.mjs';
import * as steps from './steps.mjs';

// What is random is drawn from one seed, told here, so that a failure can be had again.
if (process.env.TAREBOOK_SEED === 'month') {
  process.env.TAREBOOK_SEED = new Date().toISOString().slice(0, 7).replace('-', '');
}
console.log(`random rigs by ${process.env.TAREBOOK_SEED ?? 'the seed in each test'}`);

await install();
await step('browser at hand', async () => {
  const { path, why } = await findBrowser();
  if (path) process.env.TAREBOOK_CHROMIUM = path;
  return path ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, says: why };
});

/** A step of building: what it prints is what is wrong. */
const built = async (workspaces) => {
  const says = await build(workspaces);
  return says === '' ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, says };
};

/** One after another, in the order written. */
async function inTurn(...named) {
  for (const [name, work] of named) await step(name, work);
}

// Side by side, as most of them use one core. The page is built from the sources, not the packages.
await Promise.all([
  inTurn(
    ['build', () => built(packages)],
    ['size in a browser by bundler', steps.sized],
    ['worked cases', steps.cases],
  ),
  inTurn(
    ['types', steps.types],
    ['build of the page', () => built(['notebook'])],
    ['lint', steps.lint],
    ['dependency directions', steps.directions],
    ['unused exports', steps.unused],
  ),
]);
await steps.vitest();
// Packing changes the manifests while it lasts, and nothing that runs beside it reads them.
await Promise.all([
  inTurn(['browser', steps.browser]),
  inTurn(['packages as published', steps.published], ['built packages loaded', steps.loaded]),
]);
finish();
