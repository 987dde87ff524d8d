import { objections } from './objections';
import { allFigures, expect, fact, test } from './page';

const address = '/#/case/rig/leaving-and-coming-home';

test('a whole rig shows its one verdict, its moments, and what came up by topic', async ({
  page,
}) => {
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'It was fine on the way out, the whole rig this time',
  );
  const verdict = page.getByRole('region', { name: 'Verdict' });
  await expect(verdict.locator('.word')).toHaveText('Does not fit');
  await expect(verdict).toContainText('home');
  // Under the word it is not said once more.
  await expect(verdict).not.toContainText('The trailer does not fit');
  const row = page.getByRole('row', { name: /^Tow fit/ });
  await expect(row.getByRole('cell')).toHaveText(['Fits with care', 'Does not fit']);
  const towFit = page.locator('section').filter({
    has: page.getByRole('heading', { level: 2, name: 'Tow fit' }),
  });
  // The sentence says the verdict already; its word is not set before it once more.
  await expect(towFit.locator('p').first()).toHaveText(/^Home: The trailer does not fit\. /);
  await expect(towFit.locator('p').first()).not.toContainText('Does not fit');
  expect(await towFit.locator('svg').count()).toBe(0);
  await towFit.getByText('What came up').click();
  await expect(towFit.getByRole('listitem').first()).toBeVisible();
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
});

test('from a rig each topic opens as a case with the facts of the rig', async ({ page }) => {
  await page.goto(address);
  await page.getByRole('link', { name: 'Tow fit with these facts' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'the whole rig this time, home',
  );
  await expect(page.getByText('does not fit', { exact: false }).first()).toBeVisible();
  // Only the way home has gray water aboard, and home is what the answer is given for.
  await allFigures(page);
  await expect(fact(page, 'trailer.grayWater')).toHaveValue(/^42/);
  await expect(fact(page, 'trailer.dryWeight')).toHaveValue(/^4,050/);
});

test('a rig that is not there is told so', { tag: '@once' }, async ({ page }) => {
  await page.goto('/#/case/rig/nowhere');
  await expect(page.getByText('There is no rig “nowhere” here.')).toBeVisible();
});

test('a file that holds a rig opens as one', { tag: '@once' }, async ({ page }) => {
  await page.goto('/#/cases');
  await expect(page.locator('drop-cases')).toBeAttached();
  const text = `---
title: Ours
topic: rig
---

| Fact | Value |
| --- | --- |
| \`vehicle.maxTrailerWeight\` | 3,500 lb |
| \`trailer.dryWeight\` | 3,720 lb |
`;
  const data = await page.evaluateHandle((held) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([held], 'ours.md', { type: 'text/markdown' }));
    return transfer;
  }, text);
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
  await expect(page.getByRole('heading', { level: 1, name: 'Ours' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Verdict' }).locator('.word')).toHaveText(
    'Does not fit',
  );
  await page.goto('/#/cases');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});
