import type { Page } from '@playwright/test';
import { caution, clipboard, crossover, grant, openSay, openSend, post, shut } from './leaving';
import { objections } from './objections';
import { expect, fact, openCase, test, ticket } from './page';

const spoken = (page: Page) => page.getByLabel('To say aloud', { exact: true });
const letter = (page: Page) => page.getByLabel('A long reply, with the working', { exact: true });
const card = (page: Page) => page.locator('reply-card');

test('the reply stands three ways, each with its figure and its caution', async ({ page }) => {
  await openCase(page, crossover);
  await openSay(page);
  await expect(spoken(page)).toHaveValue(/52 pounds/);
  await expect(spoken(page)).toHaveValue(new RegExp(caution));
  await expect(card(page)).toContainText(/About \d+ seconds aloud, at 150 words a minute/);
  await shut(page);
  await openSend(page);
  for (const field of [post(page), letter(page)]) {
    await expect(field).toHaveValue(/52 lb/);
    await expect(field).toHaveValue(new RegExp(caution));
  }
  await expect(letter(page)).toHaveValue(/The working/);
});

test('a ticket is copied at a touch, as the short post has it, and that it was is said', async ({
  page,
}) => {
  await grant(page);
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect(ticket(page)).toContainText('Copied, with its caution.');
  const copied = await clipboard(page);
  expect(copied).toContain('52 lb');
  expect(copied).toContain(caution);
  await openSend(page);
  expect(copied).toBe(await post(page).inputValue());
  await post(page).fill(`Go slowly. ${caution}`);
  await shut(page);
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect(async () => expect(await clipboard(page)).toContain('Go slowly.')).toPass();
  expect(await clipboard(page)).toContain(caution);
});

test('a caution that was deleted is put back when the text is copied, and that is said', {
  tag: '@once',
}, async ({ page }) => {
  await grant(page);
  await openCase(page, crossover);
  await openSay(page);
  await spoken(page).fill('Fifty pounds left, go slowly.');
  await page.getByRole('button', { name: 'Copy: To say aloud' }).click();
  await expect(card(page).getByRole('status')).toContainText('it was put back');
  const copied = await clipboard(page);
  expect(copied).toContain('Fifty pounds left, go slowly.');
  expect(copied).toContain(caution);
  await expect(spoken(page)).toHaveValue(copied);
});

test('without a clipboard the text is marked, and the page says what to press', {
  tag: '@once',
}, async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: () => Promise.reject(new Error('refused')) },
    });
    document.execCommand = () => false;
  });
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect(ticket(page)).toContainText('does not let the page copy');
  await openSend(page);
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await expect(card(page).getByRole('status')).toContainText('the text is marked');
  const marked = await post(page).evaluate((field) =>
    field instanceof HTMLTextAreaElement
      ? field.value.slice(field.selectionStart, field.selectionEnd)
      : '',
  );
  expect(marked).toBe(await post(page).inputValue());
});

test('own words are kept until the verdict changes, then it is said and they can be had back', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  await openSend(page);
  await post(page).fill('My own words about 52 lb.');
  await expect(card(page)).toContainText('In your words.');
  await page.reload();
  await openSend(page);
  await expect(post(page)).toHaveValue('My own words about 52 lb.');
  await shut(page);
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await openSend(page);
  await expect(post(page)).toHaveValue(/108 lb/);
  await expect(card(page)).toContainText('The verdict has changed since you reworded this');
  await page.getByRole('button', { name: 'Bring my words back' }).click();
  await expect(post(page)).toHaveValue('My own words about 52 lb.');
  await page.getByRole('button', { name: 'Write it afresh: A short post' }).click();
  await expect(post(page)).toHaveValue(/108 lb/);
});

test('replies are metric or US as chosen', { tag: '@once' }, async ({ page }) => {
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Show kg' }).click();
  await openSend(page);
  await expect(post(page)).toHaveValue(/24 kg left of 572 kg/);
  await shut(page);
  await openSay(page);
  await expect(spoken(page)).toHaveValue(/24 kilograms left/);
});

test('Escape closes what is over the case, and the case is as it was', async ({ page }) => {
  await openCase(page, crossover);
  await openSay(page);
  expect(await objections(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Say', exact: true })).toBeFocused();
  await openSay(page);
  await expect(spoken(page)).toHaveValue(/52 pounds/);
});
