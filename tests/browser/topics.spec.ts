import { readdirSync } from 'node:fs';
import { objections } from './objections';
import { expect, fact, test, unfold, verdict } from './page';

const cases = new URL('../../cases/', import.meta.url);
const topics = readdirSync(cases, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !['refused', 'note', 'rig'].includes(entry.name))
  .map(({ name: topic }) => ({
    topic,
    names: readdirSync(new URL(`${topic}/`, cases)).map((file) => file.replace(/\.md$/, '')),
  }));

test('there is a case of each of the twenty topics', () => {
  expect(topics).toHaveLength(20);
});

for (const { topic, names } of topics) {
  test(`${topic}: a case stands with its verdict, and its rules can be read`, async ({ page }) => {
    const [name = ''] = names;
    await page.goto(`/#/case/${topic}/${name}`);
    await expect(verdict(page)).not.toBeEmpty();
    await expect(page.getByRole('heading', { name: 'Take care' })).toBeVisible();
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(await over()).toBeLessThanOrEqual(0);
    await page.goto(`/#/rules/${topic}`);
    await expect(page.getByRole('heading', { name: 'How it reckons' })).toBeVisible();
    await page.locator('.formula').first().scrollIntoViewIfNeeded();
    await expect(page.locator('.math math').first()).toBeAttached();
    expect(await over()).toBeLessThanOrEqual(0);
  });
}

for (const address of [
  'case/spares-kit/two-weeks-beyond-help',
  'case/gas-supply/griddle-on-the-quick-connect',
  'rules/gas-supply',
  'rules/house-battery',
]) {
  // Lists, rankings and tables; what is named and in which order hangs on no width.
  test(`${address} has nothing for axe to object to`, { tag: '@once' }, async ({ page }) => {
    await page.goto(`/#/${address}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('Reading the case')).toHaveCount(0);
    expect(await objections(page)).toEqual([]);
  });
}

test('chances are drawn when asked for, with the drawing of where they fell', async ({ page }) => {
  await page.goto('/#/case/tow-fit/range-across-the-limit');
  await unfold(page, 'How likely');
  await page.getByRole('button', { name: 'Draw the ranges 100,000 times' }).click();
  const chances = page.locator('chance-list');
  await expect(chances).toContainText(/Trailer’s own rating: over \d+(\.\d)? in 100/, {
    timeout: 20_000,
  });
  await expect(chances.getByRole('img')).toBeVisible();
  await fact(page, 'trailer.gvwr').fill('6,000 lb');
  await expect(chances).not.toContainText('in 100');
});
