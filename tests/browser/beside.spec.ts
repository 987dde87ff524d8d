import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, fact, openCase, test } from './page';
import { textOfPdf } from './pdf-text';

const rigs = (page: Page) => page.locator('.beside-rig');
const line = (page: Page, label: string) =>
  page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: label, exact: true }) });

/** How far along its drawing a bar’s limit stands, from 0 to 1. */
const limitAt = (page: Page, label: string) =>
  line(page, label)
    .locator('svg.bar path.line')
    .evaluateAll((all) =>
      all.map((each) => Number(/^M([\d.]+)/.exec(each.getAttribute('d') ?? '')?.[1]) / 250),
    );

test('a case stands beside itself with another vehicle and without the family: verdicts, limits on one scale, and a link that opens the same', async ({
  page,
  context,
}) => {
  await openCase(page, 'crossover-and-single-axle');
  const begin = page.getByRole('button', { name: 'Side by side' });
  await begin.focus();
  await page.keyboard.press('Enter');
  await expect(rigs(page)).toHaveCount(2);
  await expect(rigs(page).nth(0)).toContainText('Fits with care');
  await expect(rigs(page).nth(1)).toContainText('The driver alone');
  await expect(line(page, 'Payload')).toContainText(/52 ?lb left.*592 ?lb left/s);
  await expect(line(page, 'People and animals aboard').locator('.is-other')).toHaveCount(1);

  await page.getByRole('button', { name: 'Set another beside it' }).click();
  await page.getByLabel('Vehicle of rig 3').selectOption('Linden Estate Hybrid');
  await expect(rigs(page).nth(2)).toContainText('Does not fit');
  await expect(line(page, 'Maximum trailer weight')).toContainText('−3,000 lb');
  // 5,000 lb and 2,000 lb: the smaller limit is drawn two fifths as far along.
  const [first = 0, , third = 0] = await limitAt(page, 'Trailer weight');
  expect(first).toBeCloseTo(0.8, 3);
  expect(third / first).toBeCloseTo(2_000 / 5_000, 3);
  const names = await rigs(page).locator('h2').allTextContents();
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([]);

  const elsewhere = await context.newPage();
  await elsewhere.goto(page.url());
  await expect(rigs(elsewhere)).toHaveCount(3);
  expect(await rigs(elsewhere).locator('h2').allTextContents()).toEqual(names);
  await elsewhere.close();

  await page.goBack();
  await expect(rigs(page).nth(2).locator('h2')).toHaveText('The driver alone');
  await page.getByRole('button', { name: 'Take rig 3 away' }).click();
  await expect(rigs(page)).toHaveCount(2);
});

test('a rig with a refused entry has no verdict beside the others, and a link that is none is told @once', async ({
  page,
}) => {
  await openCase(page, 'crossover-and-single-axle');
  await fact(page, 'vehicle.placardPayload').fill('1,260 gal');
  await page.getByRole('button', { name: 'Side by side' }).click();
  await expect(rigs(page).nth(0)).toContainText(/Not read.*Payload: mend it/s);
  await expect(page.locator('.beside-ticket .big')).toHaveCount(0);
  await page.goto('/#/beside/tow-fit/a/AQAAAAA');
  await expect(page.getByRole('alert')).toContainText('damaged');
});

test('three rigs side by side print on one sheet of Letter or A4 @once', async ({ page }) => {
  await openCase(page, 'crossover-and-single-axle');
  await page.getByRole('button', { name: 'Side by side' }).click();
  await page.getByRole('button', { name: 'Set another beside it' }).click();
  await expect(rigs(page)).toHaveCount(3);
  for (const format of ['Letter', 'A4'] as const) {
    const { pages, text } = textOfPdf(await page.pdf({ format }));
    expect(pages, format).toBe(1);
    for (const part of ['Fits with care', 'The driver alone', 'Take care']) {
      expect(text.replace(/\s+/g, '')).toContain(part.replace(/\s+/g, ''));
    }
  }
});
