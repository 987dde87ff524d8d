import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const bunch = `# Phone
Smell of gas by the stove, what do we do? Call me at 555-0142.

# Comments under the towing film
Dale R., Nov 27
Can I tow 3,900 lb dry with a crossover rated 5,000 lb? Door label says payload 1,100 lb.

Wren, Nov 27
What tire pressure should I run?

Ike, Nov 27
What tire pressure should I run cold?

# Counter
Do I get my deposit back?
`;

const entries = (page: Page) => page.locator('asked-entry');
const box = (page: Page) => page.getByLabel('Paste what came in, from all sides');

async function paste(page: Page, text: string): Promise<void> {
  await box(page).fill(text);
  await page.getByRole('button', { name: 'Take them in' }).click();
}

test('a pasted bunch is read: urgent first, repeats together, each with its answer; and is kept', async ({
  page,
  context,
  browserName,
}) => {
  expect(browserName).toBe('chromium');
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/#/questions');
  await paste(page, ' -- ');
  await expect(page.locator('#bunch-wrong')).toContainText('no words here yet');
  await paste(page, bunch);
  await expect(page.getByText('5 messages were taken in.')).toBeVisible();
  await expect(box(page)).toHaveValue('');
  await expect(entries(page)).toHaveCount(4);
  const at = (place: number) => entries(page).nth(place);
  const [gas, tow, tires, deposit] = [at(0), at(1), at(2), at(3)];
  await expect(gas).toContainText('Urgent: gas.');
  await expect(gas.getByLabel('First reply')).toHaveValue(/^Everybody out now\./);
  await expect(gas.locator('.asked-personal')).toHaveText(['555-0142']);
  await expect(tow.getByRole('combobox')).toHaveValue('tow-fit');
  await expect(tow).toContainText('Comments under the towing film, Nov 27');
  await expect(tow.locator('.asked-fact').first()).toBeVisible();
  await expect(tow.getByLabel(/^Answer: /)).not.toHaveValue('');
  await expect(tires).toContainText('Asked 2 times');
  await expect(tires.getByLabel('Answer: To everybody')).toHaveValue(/\w+/);
  await tires.getByRole('button', { name: 'Copy' }).click();
  await expect(tires).toContainText('Copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
    await tires.getByLabel('Answer: To everybody').inputValue(),
  );
  await deposit.getByRole('combobox').selectOption('note/how-a-deposit-works');
  await expect(deposit.getByLabel('Answer: To this one')).toHaveValue(/deposit/i);
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);

  await page.reload();
  await expect(entries(page)).toHaveCount(4);
  await expect(deposit.getByRole('combobox')).toHaveValue('note/how-a-deposit-works');
  await paste(page, bunch);
  await expect(page.getByText('0 messages were taken in, 5 were here already.')).toBeVisible();
});
