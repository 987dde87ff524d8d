// From a key to the painted verdict at a quarter of this machine's speed, in the quickest and in the
// heaviest topics:
//
//     npm run build -w notebook && node tests/bench/edits.mjs [edits]
//
// Beside the time on the wall, at which the browser is held back to a quarter, stands what the page's
// own thread needs of the processor, times four: other work on the machine lengthens only the first.
import { chromium } from '@playwright/test';
import { findBrowser } from '../run/browser.mjs';
import { serve } from '../run/serve.mjs';

const port = 4633;
const slow = 4;
const edits = Number(process.argv[2] ?? 100);

const cases = [
  'tow-fit/crossover-and-single-axle',
  'house-battery/how-full-is-it',
  'off-grid-stay/two-cold-nights',
];

/** The same entry, a little more each time. */
const moved = (was, i) => was.replace(/\d+(\.\d+)?/, (n) => String(Number(n) + (i % 50) / 10));

const at = (sorted, share) =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
const ends = (found) => {
  const sorted = found.toSorted((a, b) => a - b);
  return { p50: Number(at(sorted, 0.5).toFixed(1)), p95: Number(at(sorted, 0.95).toFixed(1)) };
};

const entries = '.known input[data-fact][inputmode]:not([type="radio"])';

/** Types something else and waits until it is painted; milliseconds on the wall. */
const typeAndWait = async ([selector, text]) => {
  const input = document.querySelector(selector);
  input.value = text;
  const begun = performance.now();
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  return performance.now() - begun;
};

async function editsOf(browser, name) {
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${port}/#/case/${name}`);
  await page.locator('.ticket .word').first().waitFor();
  const entry = page.locator(entries).first();
  await entry.waitFor();
  const was = (await entry.inputValue()) || '100';
  // The page fetches what editing needs once somebody edits.
  await entry.fill(moved(was, 1));
  await page.waitForTimeout(2000);
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  const onProcessor = async () => {
    const { metrics } = await client.send('Performance.getMetrics');
    return metrics.find((each) => each.name === 'TaskDuration').value * 1000;
  };
  const [wall, processor] = [[], []];
  for (const [rate, into] of [
    [1, processor],
    [slow, wall],
  ]) {
    await client.send('Emulation.setCPUThrottlingRate', { rate });
    for (let i = 2; i < edits + 2; i += 1) {
      const before = await onProcessor();
      const took = await page.evaluate(typeAndWait, [entries, moved(was, i)]);
      into.push(rate === 1 ? ((await onProcessor()) - before) * slow : took);
      await page.waitForTimeout(40);
    }
  }
  await page.close();
  return { case: name, 'wall at 4×': ends(wall), 'processor × 4': ends(processor) };
}

const { path, why } = await findBrowser();
if (!path) throw new Error(why);
const server = await serve(port);
const browser = await chromium.launch({
  executablePath: path,
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  for (const each of cases) console.log(JSON.stringify(await editsOf(browser, each)));
} finally {
  await browser.close();
  await server.close();
}
