import type { Page } from '@playwright/test';
import { objections } from './objections';
import { allFigures, expect, fact, openCase, test, ticket, verdict } from './page';

const crossover = 'crossover-and-single-axle';
const payload = 'vehicle.placardPayload';
const back = (page: Page) => page.getByRole('region', { name: 'Asked of you' });

/** The link to the case as it stands, as Send gives it. */
async function linkTo(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Send', exact: true }).click();
  await page.getByRole('button', { name: 'Copy a link to this case' }).click();
  const link = await page.getByLabel('The link').inputValue();
  return new URL(link).hash;
}

test('who opens a link reads the verdict, three reasons and what to do, and meets no form', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openCase(page, crossover);
  await fact(page, payload).fill('1,100');
  await expect(verdict(page)).toHaveText('Does not fit');
  const hash = await linkTo(page);
  await page.goto('/#/cases');
  await page.goto(`/${hash}`);
  await expect(page.locator('reader-face h1')).toHaveText(/^Four people, a dog/);
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(ticket(page)).toBeInViewport({ ratio: 1 });
  await expect(page.locator('.big')).toContainText('over');
  const reasons = page.getByRole('region', { name: 'Why' }).getByRole('listitem');
  await expect(reasons).toHaveCount(3);
  await expect(reasons.first()).toContainText('Payload');
  // What the author said of other facts is not said of these.
  await expect(page.locator('reader-face')).not.toContainText('So it fits');
  await expect(page.getByRole('region', { name: 'What to do next' })).toContainText('Then:');
  await expect(page.getByRole('region', { name: 'Take care' })).toContainText('scale');
  expect(await page.locator('reader-face').locator('input, select, textarea').count()).toBe(0);
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
});

test('what was asked back is answered where it is asked, and the link returns filled', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  // A phone hands the link on by itself where it can; here it is copied.
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'share', { value: undefined });
  });
  await openCase(page, crossover);
  await fact(page, payload).fill('unknown');
  await expect(verdict(page)).toHaveText('Cannot say');
  const hash = await linkTo(page);
  await page.goto('/#/cases');
  await page.goto(`/${hash}`);
  await expect(back(page)).toContainText('What does the label in the driver’s door say');
  expect(await objections(page)).toEqual([]);
  await back(page).locator(`input[data-fact="${payload}"]`).fill('1260');
  await expect(verdict(page)).toHaveText('Fits with care');
  await back(page).getByRole('button', { name: 'Send the answers back' }).click();
  await expect(back(page)).toContainText('is copied');
  const answered = await page.evaluate(() => navigator.clipboard.readText());
  await page.goto('/#/cases');
  await page.goto(`/${new URL(answered).hash}`);
  await expect(verdict(page)).toHaveText('Fits with care');
  await allFigures(page);
  await expect(fact(page, payload)).toHaveValue('1260');
});

test('one case has two faces, and what is typed on one stands on the other', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1,300');
  await page.getByRole('button', { name: 'As the owner reads it' }).click();
  await expect(page.getByRole('region', { name: 'Why' })).toContainText('of 1,300 lb');
  await allFigures(page);
  await expect(fact(page, payload)).toHaveValue('1,300');
});
