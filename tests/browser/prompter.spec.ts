import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const long = `${'The chains cross under the tongue, each with its own hook. '.repeat(40)}That is all.`;

/** A round of two questions, the first with an answer of several screens. */
async function makeRound(page: Page): Promise<void> {
  await page.goto('/#/questions');
  await page
    .getByLabel('Paste what came in, from all sides')
    .fill('PHONE NOTE\nHow often do I grease the jack?\n\n# Text\nAre you open on Sunday?\n');
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText(/messages were taken in/)).toBeVisible();
  for (const [words, answer] of [
    ['grease the jack', long],
    ['open on Sunday', 'Until noon.'],
  ] as const) {
    const asked = page.locator('asked-entry').filter({ hasText: words }).first();
    await asked.getByRole('combobox').selectOption('none');
    const field = asked.getByLabel('Answer: In your own words');
    await field.fill(answer);
    await field.blur();
    await asked.getByRole('button', { name: 'Speak it' }).click();
    await expect(asked.getByRole('button', { name: 'In the round' })).toBeVisible();
  }
  await page.getByRole('link', { name: 'The round, 2' }).click();
}

test('a long answer goes on by screens, and what was spoken is kept though it is left early', async ({
  page,
}) => {
  await makeRound(page);
  await expect(page.locator('.round-item').first()).toContainText('Phone note:');
  await page.getByRole('button', { name: 'Put in a good order' }).click();
  await expect(page.locator('round-view').getByRole('status')).toContainText(
    'It is in that order already',
  );
  await page.getByRole('link', { name: 'Speak from the screen' }).click();
  const spoken = page.getByRole('region', { name: 'What is spoken' });
  const next = page.getByRole('button', { name: 'Next' });
  const top = () => page.locator('.prompter-text').evaluate((at) => at.scrollTop);
  await next.click();
  await expect(spoken).toContainText('1 of 2');
  expect(await top()).toBe(0);
  await next.click();
  await expect(spoken).toContainText('1 of 2');
  const first = await top();
  expect(first).toBeGreaterThan(0);
  await page.keyboard.press('PageUp');
  expect(await top()).toBeLessThan(first);
  await page.getByRole('button', { name: 'Leave' }).click();
  await expect(page.locator('.round-kept')).toHaveText(
    '1 answer of it is kept, as spoken or printed, in What was answered.',
  );
  await page.getByRole('link', { name: 'What was answered' }).first().click();
  await expect(page.locator('record-desk')).toContainText('grease the jack');
  await expect(page.locator('record-desk')).not.toContainText('open on Sunday');
  // What was spoken is done; what was not is open.
  await page.getByRole('link', { name: 'What was asked' }).click();
  await expect(page.getByRole('heading', { name: '1 open, 1 done' })).toBeVisible();
});

test('printing keeps the answers too, once, and says where', async ({ page }) => {
  await makeRound(page);
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: 'Print the running sheet' }).click();
  await expect(page.locator('.round-kept')).toContainText('2 answers of it are kept');
  await page.getByRole('button', { name: 'Print the running sheet' }).click();
  expect(await objections(page)).toEqual([]);
  await page.getByRole('link', { name: 'What was answered' }).first().click();
  await expect(page.locator('record-desk').getByText('Until noon.')).toHaveCount(1);
  await page.reload();
  await page.getByRole('link', { name: /^The round/ }).click();
  await expect(page.locator('.round-kept')).toContainText('2 answers of it are kept');
});
