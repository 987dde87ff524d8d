import type { Page } from '@playwright/test';
import { expect, fact, openCase, test, ticket, verdict } from './page';

const crossover = 'crossover-and-single-axle';
const payload = 'vehicle.placardPayload';
const fieldOf = (page: Page, id: string) => page.locator('.fact', { has: fact(page, id) });
const big = (page: Page) => page.locator('.ticket .big');

test('a bare number takes the unit in the field, and a touch changes the unit', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1100');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(big(page)).toHaveText('108lb over');
  const unit = page.getByRole('button', { name: 'Payload: unit lb; another' });
  await unit.click();
  // 1,100 kg are 2,425 lb.
  await expect(verdict(page)).not.toHaveText('Does not fit');
  await expect(fact(page, payload)).toHaveValue('1100');
  await page.getByRole('button', { name: 'Payload: unit kg; another' }).click();
  await expect(verdict(page)).toHaveText('Does not fit');
});

test('a unit that is typed wins, and then stands in the field', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('499 kg');
  await expect(big(page)).toHaveText('108lb over');
  await expect(page.getByRole('button', { name: 'Payload: unit kg; another' })).toBeVisible();
});

test('a number field asks a phone for its number pad', async ({ page }) => {
  await openCase(page, crossover);
  await expect(fact(page, payload)).toHaveAttribute('inputmode', 'numeric');
  await expect(fact(page, 'trailer.freshWater')).toHaveAttribute('inputmode', 'decimal');
});

test('what a number pad cannot write has keys: about, between, don’t know', async ({ page }) => {
  await openCase(page, crossover);
  const field = fieldOf(page, payload);
  await fact(page, payload).fill('1300');
  await field.getByRole('button', { name: 'about', exact: true }).click();
  // A twentieth on either side.
  await expect(fact(page, payload)).toHaveValue('1300 ± 65');
  await expect(fact(page, payload)).toBeFocused();
  await fact(page, payload).fill('1300');
  await field.getByRole('button', { name: 'between', exact: true }).click();
  await expect(fact(page, payload)).toBeFocused();
  await page.keyboard.type('1400');
  await expect(fact(page, payload)).toHaveValue('1300–1400');
  await expect(verdict(page)).toHaveText('Fits with care');
  await field.getByRole('button', { name: 'don’t know' }).click();
  await expect(fact(page, payload)).toHaveValue('');
  await expect(verdict(page)).toHaveText('Cannot say');
});

test('while an entry is refused the ticket names it by its label and says nothing else', async ({
  page,
}) => {
  await openCase(page, crossover);
  const field = fact(page, payload);
  await field.fill('12oo');
  await expect(verdict(page)).toHaveText('Not read');
  await expect(ticket(page).getByRole('button', { name: 'Payload' })).toBeVisible();
  await expect(ticket(page)).not.toContainText(/Fits|52|placard/);
  for (const name of ['Say', 'Copy', 'Send']) {
    await expect(page.getByRole('button', { name, exact: true })).toHaveCount(0);
  }
  await field.fill('1100');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(page.getByRole('button', { name: 'Copy', exact: true })).toBeVisible();
});

test('Enter goes on to the next field, and never leaves one that is refused', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1300');
  await page.keyboard.press('Enter');
  await expect(fact(page, 'vehicle.gvwr')).toBeFocused();
  await page.keyboard.type('58oo');
  await page.keyboard.press('Enter');
  await expect(fact(page, 'vehicle.gvwr')).toBeFocused();
  await expect(fact(page, 'vehicle.gvwr')).toHaveAttribute('aria-invalid', 'true');
  await expect(fieldOf(page, 'vehicle.gvwr').locator('.error')).toContainText(
    'write a number such as 3,900',
  );
  await page.keyboard.type('5800');
  await page.keyboard.press('Enter');
  await expect(fact(page, 'vehicle.gvwr')).not.toBeFocused();
  await expect(fieldOf(page, 'vehicle.gvwr').locator('.error')).toHaveCount(0);
});

test('a mistake is told once typing rests, and mended from the ticket', async ({ page }) => {
  await openCase(page, crossover);
  const error = fieldOf(page, payload).locator('.error');
  await fact(page, payload).fill('1,260 ft');
  await fact(page, payload).blur();
  await expect(error).toContainText('“1,260 ft” is not a weight');
  await expect(error).not.toContainText('vehicle.');
  await page.getByRole('heading', { level: 1 }).click();
  await ticket(page).getByRole('button', { name: 'Payload' }).click();
  await expect(fact(page, payload)).toBeFocused();
});

test('an emptied field is not known, and nothing is refused for it', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('');
  await expect(verdict(page)).toHaveText('Cannot say');
  await expect(page.locator('quantity-field .error')).toHaveCount(0);
});
