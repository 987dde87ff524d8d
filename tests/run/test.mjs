// `npm test`: everything, one step after another; a step that fails does not stop the next.
import { findBrowser } from './browser.mjs';
import { build, install } from './shared.mjs';
import { finish, step } from './step.mjs';
import * as steps from './steps.mjs';

await install();
await step('browser at hand', async () => {
  const { path, why } = await findBrowser();
  if (path) process.env.TAREBOOK_CHROMIUM = path;
  return path ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, says: why };
});
await step('build', async () => {
  const says = await build();
  return says === '' ? { passed: 1, failed: 0 } : { passed: 0, failed: 1, says };
});
await step('types', steps.types);
await step('lint', steps.lint);
await step('dependency directions', steps.directions);
await step('unused exports', steps.unused);
await step('packages as published', steps.published);
await steps.vitest();
await step('built packages loaded', steps.loaded);
await step('size in a browser by bundler', steps.sized);
await step('worked cases', steps.cases);
await step('browser', steps.browser);
finish();
