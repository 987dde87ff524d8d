// `npm run look`: every page of the built notebook as pictures in .look/, for a person to look at:
// three widths, light and dark, the whole length of the page.
import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from './browser.mjs';
import { serve } from './serve.mjs';
import { build, giveUp, install, root } from './shared.mjs';

const widths = [360, 820, 1440];
const schemes = ['light', 'dark'];
const casesShown = 3;

await install();
if (!existsSync(join(root, 'notebook/dist/index.html'))) {
  const failure = await build();
  if (failure !== '') giveUp(failure);
}
const { path, why } = await findBrowser();
if (!path) giveUp(why);

const worked = readdirSync(join(root, 'cases/tow-fit'))
  .filter((file) => file.endsWith('.md'))
  .slice(0, casesShown)
  .map((file) => `case/tow-fit/${file.slice(0, -'.md'.length)}`);
const pages = ['cases', ...worked, 'class', 'questions', 'yard', 'rules', 'rules/tow-fit'];

const folder = join(root, '.look');
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder);

const server = await serve(0);
const { port } = server.httpServer.address();
const { chromium } = await import('@playwright/test');
const browser = await chromium.launch({ executablePath: path, args: ['--no-sandbox'] });
for (const colorScheme of schemes) {
  for (const width of widths) {
    const viewport = { width, height: 900 };
    const context = await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.on('pageerror', (problem) => console.log(`${page.url()}: ${problem.message}`));
    for (const address of pages) {
      await page.goto(`http://127.0.0.1:${port}/#/${address}`);
      await page.waitForLoadState('networkidle');
      await page.evaluate(() => document.fonts.ready);
      const file = `${address.replaceAll('/', '-')}-${width}-${colorScheme}.png`;
      await page.screenshot({ path: join(folder, file), fullPage: true });
    }
    await context.close();
  }
}
await browser.close();
await new Promise((resolve) => server.httpServer.close(resolve));
console.log(`${pages.length * widths.length * schemes.length} pictures are in .look/`);
