import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type PreviewServer, preview } from 'vite';
import { ownTopicsOf } from '../run/own-topics.mjs';
import { expect, fact, test, verdict } from './page';

const port = Number(process.env.TAREBOOK_TEST_PORT ?? 4199) + 1;
const examples = fileURLToPath(new URL('../examples', import.meta.url));
const page = fileURLToPath(new URL('../../notebook', import.meta.url));

test.use({ baseURL: `http://localhost:${port}/` });

const scratch = mkdtempSync(join(tmpdir(), 'tarebook-own-'));
let server: PreviewServer | undefined;

test.beforeAll(async () => {
  test.setTimeout(300_000);
  process.env.TAREBOOK_OWN_TOPICS = await ownTopicsOf(join(examples, 'firewood.mjs'));
  await build({ root: page, logLevel: 'error', build: { outDir: scratch, emptyOutDir: true } });
  server = await preview({
    ...{ root: page, configFile: false, logLevel: 'error', build: { outDir: scratch } },
    preview: { port, strictPort: true, host: 'localhost' },
  });
});

test.afterAll(async () => {
  await server?.close();
  rmSync(scratch, { recursive: true, force: true });
});

test('a topic of one’s own stands on the page: its rules, a case of it from a file, a blank one', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/rules/firewood');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Firewood');
  await expect(page.locator('[id="formula-wood.weight"] math')).toBeVisible();

  await page.goto('/#/cases');
  await page.getByLabel('Or open one from a file').setInputFiles({
    ...{ name: 'ten-bundles.md', mimeType: 'text/markdown' },
    buffer: readFileSync(join(examples, 'firewood.md')),
  });
  await expect(verdict(page)).toHaveText('Stays home');
  await expect(page.locator('.ticket')).toContainText('30');

  await page.goto('/#/cases');
  await page.getByLabel('What it is about').selectOption('Firewood');
  await page.getByRole('button', { name: 'Start a blank case' }).click();
  await fact(page, 'room.left').fill('100');
  await fact(page, 'bundle.count').fill('4');
  await expect(verdict(page)).toHaveText('Cannot say');
  await fact(page, 'bundle.weight').fill('20');
  await expect(verdict(page)).toHaveText('Comes along');
});
