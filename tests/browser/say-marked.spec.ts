import { objections } from './objections';
import { expect, test } from './page';

const old = 'Nine years old, and the tread like new';

test('say it aloud: the opposite is not met by itself, and the trainer’s mark is what the tally and what comes back keep', async ({
  page,
}) => {
  await page.goto('/#/class');
  await page.getByRole('searchbox').fill(old);
  await page.getByRole('checkbox', { name: old }).check();
  await page.getByLabel(`What they do with ${old}`).selectOption({ label: 'Say it aloud' });
  await page.locator('#learners').fill('Ada\nBen');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.getByText('Case 1 of 1')).toBeVisible();
  const say = async (sentence: string) => {
    await page.locator('#prediction').fill(sentence);
    await page.getByRole('button', { name: 'Commit' }).click();
  };
  await say(
    'No, I would not tow on these: they are past six years, and old rubber can come apart.',
  );
  await page.locator('#sure').selectOption('certain');
  await say(
    'These tires are not bad at all, they will do nicely, they are not past six years. Check cold pressures.',
  );
  await page.locator('.open-working').click();
  const of = (name: string) => page.getByRole('group', { name: `What ${name} said` });
  await expect(of('Ben').getByRole('button', { name: 'The verdict: not met' })).toBeVisible();
  await expect(of('Ada').getByRole('button', { name: 'The verdict: met' })).toBeVisible();
  await expect(page.locator('guess-spread')).toContainText('0 of 2 were right');
  await of('Ada').getByRole('button', { name: 'A caution: not met' }).click();
  await expect(of('Ada').getByRole('button', { name: 'A caution: met' })).toBeFocused();
  await expect(of('Ada').getByRole('button', { name: ': not met' })).toHaveCount(0);
  await expect(page.locator('guess-spread')).toContainText('1 of 2 were right');
  expect(await objections(page)).toEqual([]);
  await page.getByRole('button', { name: 'To the tally' }).click();
  const row = (name: string) => page.getByRole('row', { name: new RegExp(`^${name}`) });
  await expect(row('Ada')).toContainText('1 of 1');
  await expect(row('Ben')).toContainText('0 of 1');
  await expect(row('Ben')).toContainText('“These tires are not bad at all, they will do nicely');
  await page.reload();
  await page.goto('/#/class/weeks');
  await expect(row('Ada')).toContainText('1 of 1');
  await expect(page.getByRole('columnheader', { name: 'Wrong and certain' })).toBeVisible();
  await expect(row('Ben').getByRole('cell', { name: '1 of 1' })).toBeVisible();
  await expect(page.getByRole('link', { name: new RegExp(`${old}, Ben`) })).toBeVisible();
  await expect(page.getByRole('link', { name: new RegExp(`${old}, Ada`) })).toHaveCount(0);
});
