// The lead form of the examples, bundled from the packed packages, in a browser under a strict policy.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { findBrowser } from '../run/browser.mjs';

const policy = [
  ...["default-src 'none'", "script-src 'self'", "connect-src 'none'", "form-action 'none'"],
  ...["base-uri 'none'", "require-trusted-types-for 'script'"],
].join('; ');
const types = { '.html': 'text/html', '.js': 'text/javascript' };

const told = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'vehicle.maxTongueCarried': '500 lb',
  'vehicle.placardPayload': '1,260 lb',
  'trailer.dryWeight': '3,900 lb',
  'trailer.gvwr': '5,000 lb',
  'trailer.dryTongueWeight': '430 lb',
};

/** What is typed over that → what must then be shown. By hand: 430 lb × 1.10 = 473 lb. */
const typed = [
  [{}, 'fits-if', '27 lb left of 500 lb'],
  [{ 'vehicle.maxTongueCarried': '450 lb' }, 'does-not-fit', 'over by 23 lb'],
  [{ 'vehicle.maxTongueCarried': 'unknown' }, 'cannot-say', 'That cannot be said yet.'],
  [{ 'trailer.dryWeight': '3900' }, 'not-read', 'Please write'],
];

function serve(folder) {
  const server = createServer(({ url }, response) => {
    const path = url === '/' ? '/lead-form.html' : url;
    try {
      const body = readFileSync(join(folder, path));
      const type = types[extname(path)] ?? 'text/plain';
      response.writeHead(200, { 'content-type': type, 'content-security-policy': policy });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve) => {
    server.listen(0, 'localhost', () => resolve(server));
  });
}

/** '' where the form judges as it must, with nothing refused by the policy; else what is wrong. */
export async function leadForm(away) {
  const { path: executablePath, why } = process.env.TAREBOOK_CHROMIUM
    ? { path: process.env.TAREBOOK_CHROMIUM }
    : await findBrowser();
  if (!executablePath) return why;
  const { build } = await import('vite');
  const { chromium } = await import('@playwright/test');
  await build({
    ...{ root: away, configFile: false, logLevel: 'silent' },
    build: { outDir: 'form', rollupOptions: { input: join(away, 'lead-form.html') } },
  });
  const server = await serve(join(away, 'form'));
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage();
    const wrong = [];
    page.on('pageerror', ({ message }) => wrong.push(message));
    page.on('console', (said) => said.type() === 'error' && wrong.push(said.text()));
    page.on('request', (request) => {
      if (new URL(request.url()).hostname !== 'localhost') wrong.push(`it asks ${request.url()}`);
    });
    await page.route('**/favicon.ico', (route) => route.fulfill({ body: '' }));
    await page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', (event) =>
        console.error(`refused by the policy: ${event.violatedDirective}`),
      );
    });
    await page.goto(`http://localhost:${server.address().port}/`);
    for (const [over, outcome, says] of typed) {
      for (const [name, value] of Object.entries({ ...told, ...over })) {
        await page.locator(`[name="${name}"]`).fill(value);
      }
      const output = page.locator('output');
      const found = [await output.getAttribute('data-outcome'), await output.textContent()];
      if (found[0] !== outcome || !found[1].includes(says)) {
        wrong.push(`wanted ${outcome}, ${says}; found ${found.join(', ')}`);
      }
      const cautions = await page.locator('#cautions li').count();
      if (outcome !== 'not-read' && cautions < 3) wrong.push(`${outcome}: ${cautions} cautions`);
    }
    return wrong.join('\n');
  } finally {
    await browser.close();
    server.close();
  }
}
