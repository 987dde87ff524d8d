import type { Page } from '@playwright/test';
import { caution, clipboard, crossover, grant, post } from './leaving';
import { expect, fact, openCase, test } from './page';

const spoken = (page: Page) => page.getByLabel('To say aloud', { exact: true });
const letter = (page: Page) => page.getByLabel('A long reply, with the working', { exact: true });
const card = (page: Page) => page.locator('reply-card');

test('the reply stands three ways, each with its figure and its caution', async ({ page }) => {
  await openCase(page, crossover);
  for (const field of [spoken(page), post(page), letter(page)]) {
    await expect(field).toHaveValue(/52 (lb|pounds)/);
    await expect(field).toHaveValue(new RegExp(caution));
  }
  await expect(letter(page)).toHaveValue(/The working/);
  await expect(card(page)).toContainText(/About \d+ seconds aloud, at 150 words a minute/);
});

test('what would change the verdict comes into post and letter once it is found', async ({
  page,
}) => {
  await openCase(page, crossover);
  await spoken(page).fill('Go slowly.');
  await expect(post(page)).toHaveValue(/What would change it: .+ Then: fits\. /, {
    timeout: 15_000,
  });
  await expect(letter(page)).toHaveValue(/What would change it\n– .+ Then: fits\./);
  await expect(spoken(page)).toHaveValue('Go slowly.');
});

test('the sentence that is copied by the verdict is the one to say aloud', async ({ page }) => {
  await grant(page);
  await openCase(page, crossover);
  const copy = page.getByRole('button', { name: 'Copy the sentence' });
  await copy.click();
  await expect(page.getByText('Copied, with its caution.')).toBeVisible();
  expect(await clipboard(page)).toBe(await spoken(page).inputValue());
  await spoken(page).fill(`Go slowly. ${caution}`);
  await copy.click();
  await expect(async () => expect(await clipboard(page)).toContain('Go slowly.')).toPass();
  expect(await clipboard(page)).toContain(caution);
});

test('a reply is copied at a touch, and that it was is said once', async ({ page }) => {
  await grant(page);
  await openCase(page, crossover);
  await expect(post(page)).toHaveValue(/What would change it/, { timeout: 15_000 });
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await expect(card(page).getByRole('status')).toHaveText('Copied, with its caution.');
  expect(await clipboard(page)).toBe(await post(page).inputValue());
});

test('a caution that was deleted is put back when the text is copied, and that is said', async ({
  page,
}) => {
  await grant(page);
  await openCase(page, crossover);
  await spoken(page).fill('Fifty pounds left, go slowly.');
  await page.getByRole('button', { name: 'Copy: To say aloud' }).click();
  await expect(card(page).getByRole('status')).toContainText('it was put back');
  const copied = await clipboard(page);
  expect(copied).toContain('Fifty pounds left, go slowly.');
  expect(copied).toContain(caution);
  await expect(spoken(page)).toHaveValue(copied);
});

test('without a clipboard the text is marked, and the page says what to press', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: () => Promise.reject(new Error('refused')) },
    });
    document.execCommand = () => false;
  });
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await expect(card(page).getByRole('status')).toContainText('the text is marked');
  const marked = await post(page).evaluate((field) =>
    field instanceof HTMLTextAreaElement
      ? field.value.slice(field.selectionStart, field.selectionEnd)
      : '',
  );
  expect(marked).toBe(await post(page).inputValue());
});

test('own words are kept until the verdict changes, then it is said and they can be had back', async ({
  page,
}) => {
  await openCase(page, crossover);
  await post(page).fill('My own words about 52 lb.');
  await expect(card(page)).toContainText('In your words.');
  await page.reload();
  await expect(post(page)).toHaveValue('My own words about 52 lb.');
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(post(page)).toHaveValue(/108 lb/);
  await expect(card(page)).toContainText('The verdict has changed since you reworded this');
  await page.getByRole('button', { name: 'Bring my words back' }).click();
  await expect(post(page)).toHaveValue('My own words about 52 lb.');
  await page.getByRole('button', { name: 'Write it afresh: A short post' }).click();
  await expect(post(page)).toHaveValue(/108 lb/);
});

test('a reply of a verdict that is no longer that of the text cannot be copied', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(spoken(page)).toBeVisible();
  await fact(page, 'vehicle.placardPayload').fill('1,100');
  await expect(card(page)).toContainText('before the entry marked above');
  await expect(page.getByRole('button', { name: 'Copy: To say aloud' })).toBeDisabled();
  await expect(page.getByRole('button', { name: 'Save as JSON' })).toBeDisabled();
});

test('replies are metric or US as chosen', async ({ page }) => {
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Show metric' }).click();
  await expect(post(page)).toHaveValue(/23\.6 kg left of 571\.5 kg/);
  await expect(spoken(page)).toHaveValue(/23\.6 kilograms left/);
});
