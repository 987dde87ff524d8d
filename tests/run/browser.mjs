// Finds a Chromium, or gets one; prints nothing but what goes wrong.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bin, run } from './shared.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

function installed() {
  const given = process.env.TAREBOOK_CHROMIUM;
  if (given) return existsSync(given) ? given : undefined;
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/bin', '/usr/local/bin'];
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find(existsSync);
}

async function playwrights() {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}

/** The path of a browser; undefined when none is there and none can be got. */
export async function findBrowser() {
  const before = installed() ?? (await playwrights());
  if (before) return before;
  console.log('No Chromium is installed; getting one …');
  await run(bin('playwright'), ['install', 'chromium'], { seconds: 180 });
  const got = await playwrights();
  if (got) return got;
  if (process.getuid?.() === 0) {
    await run('apt-get', ['update'], { seconds: 300 });
    await run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], {
      seconds: 600,
    });
  }
  return installed();
}

export const noBrowser =
  'No Chromium was found and none could be installed; install one, or set TAREBOOK_CHROMIUM to its path.';

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const path = await findBrowser();
  if (!path) {
    console.error(noBrowser);
    process.exit(1);
  }
  const args = ['test', '-c', 'tests/browser/playwright.config.ts', ...process.argv.slice(2)];
  const { code } = await run(bin('playwright'), args, {
    env: { TAREBOOK_CHROMIUM: path },
    show: true,
  });
  process.exit(code);
}
