import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, fact, openCase, test, verdict } from './page';

test.use({ serviceWorkers: 'allow' });

const crossover = 'crossover-and-single-axle';
const built = new URL('../../notebook/dist', import.meta.url).pathname;

const ready = (page: Page) => expect(page.getByText('Works without a network.')).toBeVisible();

test('after one visit the page opens, judges and keeps without a network', async ({
  page,
  context,
}) => {
  await openCase(page, crossover);
  await ready(page);
  await context.setOffline(true);
  await page.reload();
  await expect(verdict(page)).toHaveText('Fits with care');
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.goto('/#/cases');
  await page.locator('.topics summary').first().click();
  await expect(page.locator('.cases a').first()).toBeVisible();
  await page.goto('/#/rules/tow-fit');
  await page.locator('.formula').first().scrollIntoViewIfNeeded();
  await expect(page.locator('.math math').first()).toBeVisible();
  await page.goto('/#/class');
  await expect(page.getByRole('checkbox').first()).toBeVisible();
  await page.goto('/#/case/tow-fit/payload-not-known');
  await expect(verdict(page)).toHaveText('Cannot say');
  await page.goto(`/#/case/tow-fit/${crossover}`);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,100');
});

test('without a network, what people asked is taken in, read, answered and kept', async ({
  page,
  context,
}) => {
  await page.goto('/#/questions');
  await ready(page);
  await context.setOffline(true);
  await page.reload();
  const table = page.getByLabel('Or take in a table of messages (CSV)');
  const text =
    'channel,text\nfilm,What tire pressure should I run?\nphone,I smell gas by the stove\n';
  await table.setInputFiles({ name: 'a.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await expect(page.getByText('2 messages were taken in.')).toBeVisible();
  const [urgent, tires] = [page.locator('asked-entry').first(), page.locator('asked-entry').last()];
  await expect(urgent).toContainText('Urgent: gas.');
  await expect(tires.getByLabel('Answer: In short')).toHaveValue(/\w+/);
  await page.goto('/#/questions/seen');
  await expect(page.getByRole('region', { name: 'Asked most, by month' })).toContainText('Tires');
  await page.goto('/#/questions');
  await page.reload();
  await expect(page.locator('asked-entry')).toHaveCount(2);
});

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** A folder served on a port of its own, so that its files can change under a page. */
async function served(folder: string): Promise<{ server: Server; address: string }> {
  const server = createServer(async (request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    try {
      const file = join(folder, path === '/' ? 'index.html' : path);
      const body = await readFile(file);
      response.writeHead(200, {
        'content-type': types[extname(file)] ?? 'text/plain',
        'cache-control': 'no-cache',
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  const at = server.address();
  if (typeof at !== 'object' || at === null) throw new Error('No port was given.');
  return { server, address: `http://localhost:${at.port}/` };
}

test('a newer page waits, says so, and takes over when asked, with nothing typed lost', async ({
  browser,
}) => {
  const folder = await mkdtemp(join(tmpdir(), 'tarebook-'));
  await cp(process.env.TAREBOOK_BUILT ?? built, folder, { recursive: true });
  const { server, address } = await served(folder);
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    await page.goto(`${address}#/case/tow-fit/${crossover}`);
    await ready(page);
    // The next release: another index.html, so another list of files in the worker.
    const index = join(folder, 'index.html');
    await writeFile(index, (await readFile(index, 'utf8')).replace('<html', '<html data-next'));
    const worker = join(folder, 'sw.js');
    const list = (await readFile(worker, 'utf8')).replace(
      /(url:\s*"index\.html",\s*revision:\s*")[^"]+/,
      '$1of-the-next-release',
    );
    expect(list).toContain('of-the-next-release');
    await writeFile(worker, list);
    await page.reload();
    await expect(page.getByText('A newer page is ready')).toBeVisible();
    expect(await page.locator('html').getAttribute('data-next')).toBeNull();
    await fact(page, 'vehicle.placardPayload').fill('1,099 lb');
    await page.getByRole('button', { name: 'Use it now' }).click();
    await expect(page.locator('html[data-next]')).toHaveCount(1);
    await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,099');
    await ready(page);
  } finally {
    await context.close();
    server.close();
    await rm(folder, { recursive: true, force: true });
  }
});

test('each page has a title and a description of its own, and the manifest and robots.txt are there', async ({
  page,
  request,
}) => {
  const seen = new Set<string>();
  for (const [address, title] of [
    ['#/cases', 'Cases · Tarebook'],
    ['#/class', 'Class · Tarebook'],
    ['#/rules', 'Rules · Tarebook'],
    ['#/rules/tow-fit', 'Tow fit · Tarebook'],
    ['#/case/tow-fit/payload-not-known', 'The label nobody has read · Tarebook'],
  ] as const) {
    await page.goto(`/${address}`);
    await expect(page).toHaveTitle(title);
    seen.add((await page.locator('meta[name="description"]').getAttribute('content')) ?? '');
  }
  expect(seen.size).toBe(5);
  const manifest = await (await request.get('/manifest.webmanifest')).json();
  expect(manifest).toMatchObject({ name: 'Tarebook', start_url: './' });
  expect(await (await request.get('/robots.txt')).text()).toContain('User-agent');
});

test('the first case loads no script of Class, Rules, mathematics or keeping offline', async ({
  page,
}) => {
  const scripts: string[] = [];
  page.on('request', (request) => {
    if (request.resourceType() === 'script') scripts.push(new URL(request.url()).pathname);
  });
  await openCase(page, crossover);
  await expect(verdict(page)).toHaveText('Fits with care');
  // What no case needs may have come by now on a slow machine, yet never beside what a case needs.
  const early = await page.evaluate(() => {
    const [whole] = performance.getEntriesByType('navigation');
    const stands = whole instanceof PerformanceNavigationTiming ? whole.loadEventEnd : 0;
    const all = performance.getEntriesByType('resource');
    return all.filter(({ startTime }) => startTime < stands + 450).map(({ name }) => name);
  });
  expect(early.length).toBeGreaterThan(2);
  expect(early.join(' ')).not.toMatch(/class-page|rules-page|page-foot|temml|workbox|sw\.js/);
  expect(scripts.join(' ')).not.toMatch(/class-page|rules-page|temml/);
});
