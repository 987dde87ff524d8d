// From a key to the painted verdict at a quarter of this machine's speed, in the quickest and in the
// heaviest topics, where it can be said and where it must be asked:
//
//     npm run build -w notebook && node tests/bench/edits.mjs [edits] [topic/case …]
//
// Beside the time on the wall, at which the browser is held back to a quarter, stands what the page's
// own thread had of the processor between the key and the paint, times four: other work on the
// machine lengthens only the first. “all drawn” goes on until everything else has followed.
import { chromium } from '@playwright/test';
import { findBrowser } from '../run/browser.mjs';
import { flags } from '../run/flags.mjs';
import { serve } from '../run/serve.mjs';

const port = 4633;
const slow = 4;
const edits = Number(process.argv[2] ?? 100);

const cases =
  process.argv.length > 3
    ? process.argv.slice(3)
    : [
        'tow-fit/crossover-and-single-axle',
        'tow-fit/payload-not-known',
        'house-battery/how-full-is-it',
        'house-battery/label-not-read',
        'off-grid-stay/two-cold-nights',
        'off-grid-stay/nobody-looked-at-the-gauge',
      ];

/** The same entry, a little more each time. */
const moved = (was, i) =>
  was.replace(/\d[\d,]*(\.\d+)?/, (n) =>
    (Number(n.replaceAll(',', '')) + (i % 50) / 10).toFixed(1),
  );

const at = (sorted, share) =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
const ends = (found) => {
  const sorted = found.toSorted((a, b) => a - b);
  return { p50: Number(at(sorted, 0.5).toFixed(1)), p95: Number(at(sorted, 0.95).toFixed(1)) };
};

const entries = '.fact input[data-fact][inputmode]:not([type="radio"])';

/** Types something else and waits until it is painted, and until all else is; milliseconds on the wall. */
const typeAndWait = async ([selector, text]) => {
  const input = document.querySelector(selector);
  const painted = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  input.value = text;
  const begun = performance.now();
  performance.mark('typed');
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await painted();
  performance.mark('painted');
  const took = performance.now() - begun;
  for (let i = 0; i < 4; i += 1) await painted();
  performance.mark('drawn');
  if (/not read/i.test(document.querySelector('.ticket .word').textContent)) {
    throw new Error(`“${text}” was not taken.`);
  }
  return took;
};

/** What the page's thread had of the processor between marks, in milliseconds. */
function onProcessor(events) {
  const marks = events
    .filter(
      ({ name, cat }) => /user_timing/.test(cat) && ['typed', 'painted', 'drawn'].includes(name),
    )
    .toSorted((a, b) => a.ts - b.ts);
  const found = { verdict: [], all: [] };
  let typed;
  for (const { name, tts } of marks) {
    if (name === 'typed') typed = tts;
    else found[name === 'painted' ? 'verdict' : 'all'].push((tts - typed) / 1000);
  }
  return found;
}

async function traced(client, doIt) {
  const events = [];
  const hear = ({ value }) => events.push(...value);
  client.on('Tracing.dataCollected', hear);
  await client.send('Tracing.start', {
    traceConfig: { includedCategories: ['blink.user_timing'], excludedCategories: ['*'] },
  });
  await doIt();
  const complete = new Promise((done) => client.once('Tracing.tracingComplete', done));
  await client.send('Tracing.end');
  await complete;
  client.off('Tracing.dataCollected', hear);
  return events;
}

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
  const typeAll = async (into) => {
    for (let i = 2; i < edits + 2; i += 1) {
      into.push(await page.evaluate(typeAndWait, [entries, moved(was, i)]));
      await page.waitForTimeout(40);
    }
  };
  const events = await traced(client, () => typeAll([]));
  const { verdict, all } = onProcessor(events);
  if (verdict.length !== edits) throw new Error(`${verdict.length} of ${edits} edits were seen.`);
  await client.send('Emulation.setCPUThrottlingRate', { rate: slow });
  const wall = [];
  await typeAll(wall);
  await page.close();
  const times = (found) => ends(found.map((each) => each * slow));
  return {
    case: name,
    [`wall at ${slow}×`]: ends(wall),
    [`processor × ${slow}`]: times(verdict),
    'all drawn': times(all),
  };
}

const { path, why } = await findBrowser();
if (!path) throw new Error(why);
const server = await serve(port);
const browser = await chromium.launch({
  executablePath: path,
  args: flags,
});
try {
  for (const each of cases) console.log(JSON.stringify(await editsOf(browser, each)));
} finally {
  await browser.close();
  await server.close();
}
