import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, fact, test, verdict } from './page';

const said = (page: Page) => page.locator('.yard .say');
const rows = (page: Page) => page.locator('.yard-rows li[data-name]');

test('a buyer’s question: a hybrid rated 3,500, four of us; which, and what do I look up?', async ({
  page,
}) => {
  await page.goto('/#/yard');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Yard');
  await expect(said(page)).toContainText('one figure is enough');
  const begun = Date.now();
  await fact(page, 'vehicle.maxTrailerWeight').fill('3,500');
  const more = page.getByRole('button', { name: 'One adult more' });
  await more.click();
  await more.click();
  await expect(said(page)).toContainText(/Of 30 trailers, \d+ may fit, once more is known: /);
  await expect(said(page)).toContainText('Counted: 4 at 150 lb');
  const seconds = (Date.now() - begun) / 1000;
  test.info().annotations.push({ type: 'seconds', description: seconds.toFixed(1) });
  expect(seconds).toBeLessThan(60);
  await expect(said(page)).toContainText(/Look up .*payload: at [\d,]+ lb and [\d,]+ lb or more/);
  await expect(said(page)).toContainText(/is stopped by the tow rating: [\d,]+ lb too much/);
  await expect(rows(page).first()).toContainText(/if .*payload is at least [\d,]+ lb/);
  expect(await objections(page)).toEqual([]);

  const count = await rows(page).count();
  await page.getByRole('heading', { name: 'Narrow it down' }).click();
  await page.getByLabel(/No longer than/).fill('14');
  await page.getByLabel(/No longer than/).blur();
  await expect(said(page)).toContainText(/Of \d trailers/);
  expect(await rows(page).count()).toBeLessThan(count);
  await page.getByRole('button', { name: 'Show all again' }).click();
  await expect(said(page)).toContainText(/Of 30 trailers/);

  await fact(page, 'vehicle.placardPayload').fill('a lot');
  await expect(said(page)).toHaveText('Not read: Payload.');
  await expect(rows(page)).toHaveCount(0);
  await fact(page, 'vehicle.placardPayload').fill('1,000');
  await expect(said(page)).toContainText(/Of 30 trailers/);

  await page
    .getByRole('button', { name: /^Open as a case/ })
    .first()
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Their vehicle and /);
  await expect(verdict(page)).toHaveText('Cannot say');
});

test('a vehicle of the catalogue with a load, and what can pull one trailer', async ({ page }) => {
  await page.goto('/#/yard');
  await page.getByLabel('What they drive').selectOption('Corrie Hybrid');
  await expect(said(page)).toContainText(/Of 30 trailers, \d+ fit/);
  await page.getByRole('button', { name: 'a weekend' }).click();
  await expect(said(page)).toContainText('packed for a weekend');
  await expect(page.getByRole('heading', { name: /Fits( with care)?$/ }).first()).toBeVisible();
  await page.getByLabel('What can pull it?').check();
  await expect(said(page)).toContainText('one figure is enough');
  await page.getByLabel(/^The trailer/).selectOption('Sallow 13');
  await expect(said(page)).toContainText(/Of 33 vehicles/);
  const width = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(width).toBeLessThanOrEqual(0);
});
