// The yard page at work: a slider's move over 500 × 500 pairs, and which of 60 trailers fit a vehicle of
// 60, from the event to the frame in which the answer stands. Alone, after a build:
// `node tests/bench/yard.mjs [which | slider] [SLOWER …]`, times slower than this machine (1 and 4).
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';
import { findBrowser } from '../run/browser.mjs';
import { flags } from '../run/flags.mjs';
import { serve } from '../run/serve.mjs';
import { root } from '../run/shared.mjs';

const port = Number(process.env.PORT ?? 4641);
const moves = 16;

/** A number of the same size, some tenths off, by rows. */
const near = (cell, row) =>
  /^\d{3,}$/.test(cell)
    ? `${Math.round((Number(cell) * (0.8 + ((row * 37) % 41) / 100)) / 5) * 5}`
    : cell;

/** The invented catalogue over and over, every row with figures and a name of its own. */
function grown(file, count) {
  const [head, ...rows] = readFileSync(join(root, 'seeds', file), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const all = Array.from({ length: count }, (_, at) => {
    const [name, ...cells] = rows[at % rows.length].split(',');
    return [
      `${name} ${at}`,
      ...(at < rows.length ? cells : cells.map((cell) => near(cell, at))),
    ].join();
  });
  return [head, ...all, ''].join('\n');
}

async function withCatalogue(page, count) {
  await page.goto(`http://127.0.0.1:${port}/#/yard`);
  await page.getByRole('heading', { name: 'The catalogue' }).click();
  for (const file of ['vehicles.csv', 'trailers.csv']) {
    const buffer = Buffer.from(grown(file, count));
    await page
      .getByLabel(/Open a(nother)? file/)
      .setInputFiles({ name: file, mimeType: 'text/csv', buffer });
    await page.getByRole('button', { name: /^Keep th/ }).click();
    await page.getByText(new RegExp(`Your ${file.slice(0, -4)}`)).waitFor();
  }
}

const spread = (times) => {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share) =>
    Math.round(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]);
  return { least: at(0), median: at(0.5), p95: at(0.95), most: at(1) };
};

const slowed = async (page, rate) => {
  const client = await page.context().newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate });
};

/**
 * What was seen from the event on, and of it what workers reckoned. A browser slows its page down and
 * not the workers beside it, so where all of a machine is slower that much more is added.
 */
const told = (name, whole, reckoned, rate) => ({
  [name]: spread(whole),
  'of it reckoned beside the page': spread(reckoned),
  ...(rate > 1 && {
    'with workers as slow': spread(whole.map((each, at) => each + reckoned[at] * (rate - 1))),
  }),
});

/**
 * Milliseconds that each worker's thread has been on a processor, where the system tells it (Linux): on a
 * busy machine a thread waits for its turn, and the clock goes on meanwhile. Empty where it tells nothing.
 */
async function workersTime(page) {
  const client = await page.context().browser().newBrowserCDPSession();
  const { processInfo } = await client.send('SystemInfo.getProcessInfo');
  await client.detach();
  const found = new Map();
  for (const { id, type } of processInfo) {
    if (type !== 'renderer') continue;
    try {
      for (const task of readdirSync(`/proc/${id}/task`)) {
        const of = (file) => readFileSync(`/proc/${id}/task/${task}/${file}`, 'utf8');
        if (!of('comm').startsWith('DedicatedWorker')) continue;
        found.set(task, Number(of('schedstat').split(' ')[0]) / 1e6);
      }
    } catch {
      // The process or thread is gone, or the system keeps no such account.
    }
  }
  return found;
}

const sinceThen = (before, now) =>
  [...now].map(([task, time]) => time - (before.get(task) ?? 0)).toSorted((a, b) => b - a);

/** Until no worker does anything any more: what is made ready while nobody waits is ready then. */
async function untilAtRest(page) {
  for (let before = await workersTime(page), i = 0; i < 120; i += 1) {
    await page.waitForTimeout(1000);
    const now = await workersTime(page);
    if ((sinceThen(before, now)[0] ?? 0) < 20) return;
    before = now;
  }
}

/** One move of the slider: milliseconds from the event to the painted picture, and of it reckoned. */
const moved = (page, value) =>
  page.evaluate(async (to) => {
    const input = document.querySelectorAll('yard-matrix input[type=range]')[1];
    const told = document.querySelector('yard-matrix [data-took]');
    const done = new Promise((resolve) => {
      const seen = new MutationObserver(() => {
        if (told.dataset.took === '') return;
        seen.disconnect();
        requestAnimationFrame(() => setTimeout(resolve));
      });
      seen.observe(told, { attributes: true, attributeFilter: ['data-took'] });
    });
    input.value = to;
    const begun = performance.now();
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await done;
    return [performance.now() - begun, Number(told.dataset.took)];
  }, String(value));

/** Milliseconds from the event to the painted picture. */
async function slider(browser, rate) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await withCatalogue(page, 500);
  await page.getByRole('heading', { name: 'Every pair' }).click();
  await page.getByText('All 250000 pairs are judged.').waitFor({ timeout: 240_000 });
  await untilAtRest(page);
  await slowed(page, rate);
  const [whole, reckoned, busiest, together] = [[], [], [], []];
  for (let i = 0; i < moves; i += 1) {
    const before = await workersTime(page);
    const [time, took] = await moved(page, 100 + ((i * 350) % 1400));
    const times = sinceThen(before, await workersTime(page));
    whole.push(time);
    reckoned.push(took);
    busiest.push(times[0] ?? Number.NaN);
    together.push(times.reduce((a, b) => a + b, 0));
    await page.waitForTimeout(300);
  }
  await page.close();
  return {
    ...told('event to picture', whole, reckoned, rate),
    'processor time of the busiest worker': spread(busiest),
    'of all workers together': spread(together),
  };
}

/** Milliseconds from the last key to the sentence. */
async function which(browser, rate) {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  await withCatalogue(page, 60);
  await page.getByLabel('What they drive').selectOption({ index: 20 });
  await page.locator('.yard div.say').waitFor();
  await page.getByRole('button', { name: 'a weekend' }).click();
  await page.waitForTimeout(3000);
  await slowed(page, rate);
  const names = await page
    .getByLabel('What they drive')
    .locator('option')
    .evaluateAll((all) => all.map((each) => each.value));
  const [whole, reckoned, busiest] = [[], [], []];
  for (let i = 0; i < moves; i += 1) {
    const before = await workersTime(page);
    const [time, took] = await page.evaluate(
      async (name) => {
        const select = document.querySelector('.yard-told select');
        const say = () => document.querySelector('.yard div.say');
        select.value = name;
        const begun = performance.now();
        select.dispatchEvent(new Event('change', { bubbles: true }));
        await new Promise((resolve) => {
          const look = () => {
            const now = say();
            if (
              now &&
              !now.classList.contains('stale') &&
              document.querySelector('.yard-told select').value === name &&
              performance.now() - begun > 30
            )
              resolve();
            else requestAnimationFrame(look);
          };
          requestAnimationFrame(look);
        });
        return [performance.now() - begun, Number(say().dataset.took)];
      },
      names[1 + ((i * 7) % 58)],
    );
    busiest.push(sinceThen(before, await workersTime(page))[0] ?? Number.NaN);
    whole.push(time);
    reckoned.push(took);
    await page.waitForTimeout(1200);
  }
  await page.close();
  return {
    ...told('change to sentence', whole, reckoned, rate),
    'processor time of the worker': spread(busiest),
  };
}

/** Needs the built notebook. What is measured is told as it comes. */
export async function measureYard(rates, tell, only) {
  const { path, why } = await findBrowser();
  if (!path) return why;
  const server = await serve(port);
  const browser = await chromium.launch({
    executablePath: path,
    args: flags,
  });
  try {
    for (const rate of rates) {
      if (only !== 'slider') tell(`60 × 60, which at ${rate}×, ms`, await which(browser, rate));
      if (only === 'which') continue;
      tell(`500 × 500, a slider’s move at ${rate}×, ms`, await slider(browser, rate));
    }
  } finally {
    await browser.close();
    await server.close();
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [given = '', ...more] = process.argv.slice(2);
  const only = ['which', 'slider'].includes(given) ? given : undefined;
  const rates = (only || given === '' ? more : [given, ...more]).map(Number);
  const refused = await measureYard(
    rates.length > 0 ? rates : [1, 4],
    (what, found) => {
      console.log(what);
      console.table(found);
    },
    only,
  );
  if (refused) console.error(refused);
}
