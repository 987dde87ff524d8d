import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const file = (name: string, text: string) => ({
  ...{ name, mimeType: 'text/csv', buffer: Buffer.from(text) },
});
const table = (page: Page) => page.getByLabel('Or take in a table of messages (CSV)');
const entries = (page: Page) => page.locator('asked-entry');

test('a table with names of its own is asked once which column is which, and taken in', async ({
  page,
}) => {
  await page.goto('/#/questions');
  const rows = (...said: readonly string[]) =>
    ['Woher;Wer;Satz', ...said.map((each) => `Film;Dale R.;"${each}"`)].join('\r\n');
  await table(page).setInputFiles(
    file(
      'a.csv',
      rows('What tire pressure should I run?', 'I smell gas by the stove; what now?', '!!!'),
    ),
  );
  const words = page.getByLabel('The words that were asked');
  await expect(words).toBeVisible();
  await expect(words.locator('option')).toHaveCount(4);
  await words.selectOption('2');
  await page.getByLabel('By which way it came').selectOption('0');
  await page.getByLabel('Who asked').selectOption('1');
  expect(await objections(page)).toEqual([]);
  await page.getByRole('button', { name: 'Read it so' }).click();
  await expect(
    page.getByText(/^2 messages were taken in\. Not taken in: message 3 has no words/),
  ).toBeVisible();
  await expect(entries(page).first()).toContainText('Urgent: gas.');
  await expect(entries(page).last()).toContainText('Film');
  // The same columns are not asked for again, nor after the page was left.
  await page.reload();
  await table(page).setInputFiles(file('b.csv', rows('How long does a 20 lb cylinder last?')));
  await expect(page.getByText('1 message was taken in.')).toBeVisible();
  await expect(words).toHaveCount(0);
  await table(page).setInputFiles(file('b.csv', rows('How long does a 20 lb cylinder last?')));
  await expect(page.getByText('0 messages were taken in, 1 were here already.')).toBeVisible();
  await page.getByRole('link', { name: 'What is asked most' }).click();
  await expect(page.getByRole('region', { name: 'Asked most, by month' })).toContainText('Tires');
  await expect(page.getByText(/^\d+ waits? for: /).first()).toBeVisible();
  expect(await objections(page)).toEqual([]);
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
  ).toBeLessThanOrEqual(0);
});

test('what is no table, and cells that would harm, take nothing along @once', async ({ page }) => {
  await page.goto('/#/questions');
  const wrong = page.locator('table-box .error');
  await table(page).setInputFiles(file('x.csv', 'text\r\n"never closed\r\n'));
  await expect(wrong).toContainText('Nothing was taken in.');
  await table(page).setInputFiles(file('x.xlsx', 'PK\u0003\u0004'));
  await expect(wrong).toContainText('is a workbook');
  const harm = [
    'text,asker',
    `${'a'.repeat(1_200_000)},Big`,
    'pay\u0000load 1\u0000100 lb and can it pull 3\u0000900 lb?,Nul',
    '"=HYPERLINK(""http://x.invalid"",""What tire pressure should I run?"")",=1+1',
    '<img src=x onerror=alert(1)> what tire pressure should I run?,<b>Bold</b>',
  ].join('\r\n');
  await table(page).setInputFiles(file('harm.csv', harm));
  await expect(
    page.getByText(/^3 messages were taken in\. Not taken in: message 1 has more than/),
  ).toBeVisible();
  await expect(page.getByText('Reading:')).toHaveCount(0);
  await expect(page.locator('asked-entry img, asked-entry b')).toHaveCount(0);
  await page.getByRole('button', { name: 'Make a round of what has an answer' }).click();
  await expect(page.locator('.round-item').first()).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: /CSV/ }).click();
  const saved = await readFile(await (await saving).path(), 'utf8');
  expect(saved).not.toMatch(/(?:^|,|\n)"?[=+@]/);
  expect(saved).toMatch(/'=HYPERLINK/);
});

test('five thousand messages are read while the page answers, and a killed tab loses none @once', async ({
  page,
  context,
}) => {
  test.slow();
  const asked = Array.from(
    { length: 5_000 },
    (_, n) =>
      `m${n},mail,2026-11-01,Ada,"Number ${n}: can it pull ${2_000 + n} lb, dry weight ${1_500 + n} lb?"`,
  );
  await page.goto('/#/questions');
  await expect(table(page)).toBeVisible();
  await page.evaluate(() => {
    const gaps = { last: performance.now(), most: 0 };
    Object.assign(window, { gaps });
    const tick = (): void => {
      gaps.most = Math.max(gaps.most, performance.now() - gaps.last);
      gaps.last = performance.now();
      setTimeout(tick, 10);
    };
    tick();
  });
  const began = Date.now();
  await table(page).setInputFiles(
    file('many.csv', ['id,channel,date,name,message', ...asked].join('\r\n')),
  );
  await expect(page.getByText('5,000 messages were taken in.')).toBeVisible();
  await expect(page.getByText(/^Reading: [\d,]+ of 5,000/)).toBeVisible();
  const shown = Date.now() - began;
  const most = await page.evaluate(() => Reflect.get(Reflect.get(window, 'gaps'), 'most'));
  // In the middle of reading another tab finds them all.
  const other = await context.newPage();
  await page.close();
  await other.goto('/#/questions');
  await expect(other.getByRole('heading', { name: /^5,000 open|^\d[\d,]* open/ })).toBeVisible();
  await expect(other.getByText(/of 5,000/)).toBeVisible();
  const again = Date.now();
  await expect(other.getByText('Reading:')).toHaveCount(0, { timeout: 60_000 });
  const read = Date.now() - again;
  console.log(`taken in after ${shown} ms, longest pause ${most} ms, read after ${read} ms`);
  // Ten seconds are wanted for both, and reached where nothing else runs; busy machines are given time.
  expect(shown).toBeLessThan(10_000);
  expect(read).toBeLessThan(55_000);
  expect(most).toBeLessThan(1_500);
});
