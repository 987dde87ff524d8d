// The page as a phone meets it: Lighthouse's four figures, the script of the first case, and the time
// from a key to the painted verdict at a quarter of this machine's speed.
import { chromium } from '@playwright/test';
import lighthouse from 'lighthouse';
import { findBrowser } from '../run/browser.mjs';
import { flags } from '../run/flags.mjs';
import { serve } from '../run/serve.mjs';

const port = 4631;
const debugging = 4632;
const firstCase = `http://127.0.0.1:${port}/#/case/tow-fit/crossover-and-single-axle`;

async function lighthouseOf(url) {
  const { lhr } = await lighthouse(url, { port: debugging, logLevel: 'error', output: 'json' });
  return Object.fromEntries(
    Object.values(lhr.categories).map(({ id, score }) => [id, Math.round((score ?? 0) * 100)]),
  );
}

/** Scripts a first visit to a case loads before it stands, compressed as they travel. */
async function scriptOf(browser) {
  const page = await browser.newPage();
  const { gzipSync } = await import('node:zlib');
  let bytes = 0;
  page.on('response', async (response) => {
    if (response.request().resourceType() !== 'script') return;
    const body = await response.body().catch(() => Buffer.alloc(0));
    bytes += gzipSync(body, { level: 9 }).length;
  });
  await page.goto(firstCase);
  await page.locator('.ticket .word').first().waitFor();
  const before = bytes;
  await page.close();
  return Number((before / 1024).toFixed(1));
}

/** Milliseconds from an input event to the frame after it, the 95th of a hundred edits, at 4× slow. */
async function editToPaint(browser) {
  const page = await browser.newPage();
  await page.goto(firstCase);
  await page.locator('.ticket .word').first().waitFor();
  await page.waitForTimeout(1500);
  const client = await page.context().newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const times = await page.evaluate(async () => {
    const field = document.querySelector('input[data-fact="vehicle.placardPayload"]');
    const found = [];
    for (let i = 0; i < 100; i += 1) {
      field.value = `${1100 + i} lb`;
      const begun = performance.now();
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      found.push(performance.now() - begun);
      await new Promise((done) => setTimeout(done, 40));
    }
    return found.toSorted((a, b) => a - b);
  });
  await page.close();
  return { p50: Math.round(times[49]), p95: Math.round(times[94]) };
}

/** Needs the built notebook. */
export async function measurePage() {
  const { path, why } = await findBrowser();
  if (!path) return why;
  const server = await serve(port);
  const browser = await chromium.launch({
    executablePath: path,
    args: [...flags, `--remote-debugging-port=${debugging}`],
  });
  try {
    return {
      'lighthouse, mobile': await lighthouseOf(firstCase),
      'script of the first case, KiB gzip': await scriptOf(browser),
      'edit to painted verdict at 4×, ms': await editToPaint(browser),
    };
  } finally {
    await browser.close();
    await server.close();
  }
}
