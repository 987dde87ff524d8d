import { readFile } from 'node:fs/promises';
import { objections } from './objections';
import { expect, test } from './page';
import { isStored } from './stored';

test('a trainer writes a case on the page, keeps it, and has it as a document; a slip is told', async ({
  page,
}) => {
  await page.goto('/#/class/write');
  await page.getByLabel('Title').fill('A box behind a crossover');
  await page.getByLabel('The question, as it was asked').fill('“Will it pull the box?”');
  const fact = async (label: string, value: string, from: string) => {
    const field = page.getByLabel(`Value: ${label}`, { exact: true });
    if ((await field.count()) === 0) await page.locator('#more-facts').selectOption({ label });
    await field.fill(value);
    await page.getByLabel(`Read from: ${label}`, { exact: true }).fill(from);
  };
  await fact('Maximum trailer weight', '3,500 lb', 'manual');
  await fact('Dry weight', '2,000 lb', 'sticker');
  await page.getByRole('button', { name: 'Add to: Cargo in the trailer' }).click();
  await page.getByLabel('Cargo in the trailer, what, 1').fill('Bikes');
  await page.getByLabel('Cargo in the trailer, how much, 1').fill('300 lb');
  await page.locator('#author-predict').selectOption({ label: 'Trailer weight, loaded' });
  await page.getByLabel('How you ask for it').fill('What does the box weigh, loaded?');
  await expect(page.getByText('Now comes out: 2,300 lb.')).toBeVisible();
  const must = page.locator('[data-expect="trailer.loaded"]');
  await must.fill('2,400 lb');
  await expect(page.getByText('you say “2,400 lb”, and “2,300 lb” comes out.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save as a case document' })).toBeDisabled();
  await must.fill('2,300 lb');
  await expect(page.getByText('The case holds')).toBeVisible();
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a case document' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('a-box-behind-a-crossover.md');
  const text = await readFile(await file.path(), 'utf8');
  expect(text).toContain('| `trailer.loaded` | 2,300 lb |');
  await page.getByRole('button', { name: 'Keep it among your cases' }).click();
  await expect(page.getByRole('link', { name: 'Open it' })).toBeVisible();
  await page.getByRole('link', { name: 'Class' }).last().click();
  await page.getByRole('searchbox').fill('box behind a crossover');
  await page.getByRole('checkbox', { name: 'A box behind a crossover' }).check();
  await page.getByLabel('First names or numbers, one on a line').fill('Ada');
  await page.getByRole('button', { name: 'Begin with 1 case' }).click();
  await page.locator('#prediction').fill('2000');
  await page.getByRole('button', { name: 'Commit' }).click();
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  await page.getByRole('button', { name: 'To the tally' }).click();
  await expect(page.getByText('Together: 0 of 1')).toBeVisible();
  // Over weeks: the dry weight was taken for the loaded one, and it comes back tomorrow.
  await isStored(page, /"opened":\[0\].*"at":1\b/, 'classes');
  await page.goto('/#/class/weeks');
  const row = page.getByRole('row', { name: /^Ada/ });
  await expect(row.getByRole('cell').nth(0)).toHaveText('0 of 1');
  await expect(row.getByRole('cell').nth(2)).toHaveText('1');
  await expect(page.getByText(/Ada: A box behind a crossover/)).toContainText(
    /from \d{4}-\d\d-\d\d/,
  );
  expect(await objections(page)).toEqual([]);
  const back = page.getByRole('link', { name: 'Practice: A box behind a crossover, Ada' });
  await back.click();
  await expect(page.getByRole('heading', { level: 2 })).toContainText('A box behind a crossover');
  await expect(page.getByLabel('Who practices')).toHaveValue('Ada');
});
