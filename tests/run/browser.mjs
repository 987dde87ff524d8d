// Finds a Chromium that runs here, or gets one; says only that it is getting one.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bin, giveUp, install, run } from './shared.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** A browser may be there and lack a library it needs; only one that tells its version will do. */
async function runs(path) {
  return (await run(path, ['--version', '--no-sandbox'], { seconds: 60 })).code === 0;
}

async function firstThatRuns(paths) {
  for (const path of paths) if (existsSync(path) && (await runs(path))) return path;
  return undefined;
}

function onPath() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.flatMap((folder) => names.map((name) => join(folder, name)));
}

async function playwrights() {
  const { chromium } = await import('@playwright/test');
  return chromium.executablePath();
}

async function fromPlaywright() {
  await run(bin('playwright'), ['install', 'chromium'], { seconds: 300 });
  return firstThatRuns([await playwrights()]);
}

async function fromDebian() {
  if (process.getuid?.() !== 0) return undefined;
  await run('apt-get', ['update'], { seconds: 300 });
  const args = ['install', '-y', '--no-install-recommends', 'chromium'];
  await run('apt-get', args, { seconds: 900, env: { DEBIAN_FRONTEND: 'noninteractive' } });
  return firstThatRuns(onPath());
}

/** Resolves with the path of a browser, or with the sentence that says why there is none. */
export async function findBrowser() {
  const given = process.env.TAREBOOK_CHROMIUM;
  if (given) {
    if (await firstThatRuns([given])) return { path: given };
    return { why: `TAREBOOK_CHROMIUM is “${given}”, and no browser runs there.` };
  }
  const there = await firstThatRuns([...onPath(), await playwrights()]);
  if (there) return { path: there };
  console.log('No Chromium runs here; getting one …');
  const got = (await fromPlaywright()) ?? (await fromDebian());
  if (got) return { path: got };
  return {
    why: 'No Chromium was found and none could be installed; install one, or set TAREBOOK_CHROMIUM to its path.',
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await install();
  const { path, why } = await findBrowser();
  if (!path) giveUp(why);
  const args = ['test', '-c', 'tests/browser/playwright.config.ts', ...process.argv.slice(2)];
  const { code } = await run(bin('playwright'), args, {
    env: { TAREBOOK_CHROMIUM: path },
    show: true,
  });
  process.exit(code);
}
