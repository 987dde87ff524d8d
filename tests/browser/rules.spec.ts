import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, openCase, test, verdict } from './page';

const rules = async (page: Page) => {
  await page.goto('/#/rules/tow-fit');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tow fit');
};

const margin = (page: Page) => page.locator('form.own').first();

test('every formula is set as mathematics, from the formula that is run', { tag: '@once' }, async ({
  page,
}) => {
  await rules(page);
  const formulas = page.locator('.formula');
  const all = await formulas.count();
  expect(all).toBeGreaterThan(50);
  // What is far from sight is not set yet; on paper all of it stands.
  expect(await formulas.locator('.math math').count()).toBeLessThan(all / 2);
  await page.locator('[id="formula-tongue.share"]').scrollIntoViewIfNeeded();
  await expect(page.locator('[id="formula-tongue.share"] math')).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await expect(formulas.locator('.math math')).toHaveCount(all);
  expect(await page.locator('.math [style], .math merror').count()).toBe(0);
  const used = page.locator('[id="formula-payload.used"]');
  await expect(used.locator('math')).toContainText('tongue');
  await used.getByText('What stands in it').click();
  await expect(used).toContainText('Tongue weight, loaded');
  await expect(used).toContainText('49 CFR 571.110');
  const share = page.locator('[id="formula-tongue.share"] mfrac');
  await expect(share).toHaveCount(1);
  await expect(page.locator('[id="formula-tongue.dryShare"] mfrac')).toHaveCount(1);
  const drawn = await share.first().boundingBox();
  expect(drawn?.height ?? 0).toBeGreaterThan(20);
});

test('a name in a legend leads to its own formula', { tag: '@once' }, async ({ page }) => {
  await rules(page);
  const used = page.locator('[id="formula-payload.used"]');
  const legend = used.locator('details');
  // Formulas above are set as they come near, and what is below them moves under a press.
  await used.scrollIntoViewIfNeeded();
  await expect(used.locator('math').first()).toBeVisible();
  await expect(async () => {
    if ((await legend.getAttribute('open')) === null) await legend.locator('summary').click();
    await expect(legend).toHaveAttribute('open', '', { timeout: 2000 });
  }).toPass();
  await used.getByRole('link', { name: 'Tongue weight, loaded' }).click();
  await expect(page.locator('[id="formula-tongue.loaded"]')).toBeFocused();
  await page.goto('/#/rules/tow-fit/axle.front');
  await expect(page.locator('[id="formula-axle.front"]')).toBeFocused();
});

test('facts say what they are and where to read them, numbers since when and by which source', {
  tag: '@once',
}, async ({ page }) => {
  await rules(page);
  const main = page.locator('main');
  await expect(main).toContainText('tire-and-loading label in the driver’s door');
  await expect(
    main.getByRole('row', { name: /Loaded add-on to the dry tongue weight/ }),
  ).toContainText('2020-01-01');
  for (const kind of ['published', 'common practice', 'from memory', 'house']) {
    await expect(main.locator('.tag').filter({ hasText: kind }).first()).toBeVisible();
  }
  for (const title of [
    'What it answers',
    'The limits',
    'Numbers of the trade',
    'What is asked',
    'How it reckons',
    'What it says beside the limits',
    'What to be careful about',
    'Sources',
  ]) {
    await expect(page.getByRole('heading', { level: 2, name: title, exact: true })).toBeVisible();
  }
});

test('a dealer’s own number is refused outside its range, beside the field', {
  tag: '@once',
}, async ({ page }) => {
  await rules(page);
  const form = margin(page);
  const value = form.getByLabel(/in this house/);
  await form.getByLabel(/because/).fill('a cautious house');
  for (const [said, told] of [
    ['60 %', 'is outside what a dealer may choose; write one number from'],
    ['a lot', 'is no single number'],
    ['5 lb', 'is in lb'],
  ] as const) {
    await value.fill(said);
    await form.getByRole('button', { name: /: keep$/ }).click();
    await expect(form.locator('.error')).toContainText(told);
    await expect(value).toHaveAttribute('aria-invalid', 'true');
  }
});

test('a dealer’s own margin is kept, named with the verdict it took part in, and given up again', {
  tag: '@once',
}, async ({ page }) => {
  await rules(page);
  const form = margin(page);
  await form.getByLabel(/in this house/).fill('20 %');
  await form.getByLabel(/because/).fill('a cautious house');
  await form.getByRole('button', { name: /: keep$/ }).click();
  await expect(form.locator('.error')).toContainText('Nobody’s name');
  await page.getByLabel('Whose numbers these are').fill('Sallowbridge Trailers');
  await page.getByLabel('Whose numbers these are').press('Tab');
  await form.getByRole('button', { name: /: keep$/ }).click();
  await expect(page.getByText(/is now 20 % in this house/)).toBeVisible();
  await page.reload();
  await expect(margin(page).getByLabel(/in this house/)).toHaveValue('20 %');
  await openCase(page, 'crossover-and-single-axle');
  await expect(verdict(page)).toBeVisible();
  await expect(page.locator('main')).toContainText('Choice of Sallowbridge Trailers');
  await expect(page.locator('main')).toContainText('20 % instead of 10 %');
  await page.goto('/#/rules/tow-fit');
  await margin(page).getByRole('button', { name: 'as the rules have it' }).click();
  await expect(page.getByText('is as the rules have it again')).toBeVisible();
  await page.reload();
  await expect(margin(page).getByLabel(/in this house/)).toHaveValue('');
  await openCase(page, 'crossover-and-single-axle');
  await expect(verdict(page)).toBeVisible();
  await expect(page.locator('main')).not.toContainText('Sallowbridge Trailers');
});

test('of an earlier release the cases that come out otherwise are told first, then how it changed', {
  tag: '@once',
}, async ({ page }) => {
  await rules(page);
  const since = page.locator('cases-since').last();
  await since.getByText('Which worked cases come out otherwise').click();
  await expect(since).toContainText(/Of \d+ worked cases, \d+ come out otherwise\./);
  const first = since.getByRole('listitem').first();
  await expect(first).toContainText(/ was .+, is .+\./);
  const above = await since.evaluate((at) => {
    const heading = at.previousElementSibling?.textContent ?? '';
    const next = at.nextElementSibling?.localName;
    return { heading, next };
  });
  expect(above).toEqual({ heading: 'Since 1.0.0', next: 'p' });
  await first.getByRole('link').click();
  await expect(verdict(page)).not.toBeEmpty();
});

test('the rules have nothing for axe to object to, opened and with a mistake', {
  tag: '@once',
}, async ({ page }) => {
  // A page of ninety formulas is long work for axe.
  test.slow();
  await rules(page);
  await page.locator('[id="formula-payload.used"]').getByText('What stands in it').click();
  await margin(page)
    .getByRole('button', { name: /: keep$/ })
    .click();
  await expect(page.locator('page-foot footer')).toBeVisible();
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
});

test('a topic has contents, and each section an address', async ({ page }) => {
  await page.goto('/#/rules/tow-fit');
  const contents = page.getByRole('navigation', { name: 'On this page' });
  await contents.getByRole('link', { name: 'The limits', exact: true }).click();
  await expect(page).toHaveURL(/#\/rules\/tow-fit\/the-limits$/);
  await expect(page.getByRole('heading', { name: 'The limits', exact: true })).toBeFocused();
  await page.goto('/#/cases');
  await page.goto('/#/rules/tow-fit/take-care');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tow fit');
});

test('a search over all rules leads to the fact, by its name or by a word that people use', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/rules');
  await page.getByLabel(/Find in the rules/).fill('griddle');
  await expect(page.locator('.cases li').first()).toContainText('Gas supply');
  await page.getByLabel(/Find in the rules/).fill('minivan');
  await expect(page.locator('.cases li').first()).toContainText('Tow fit');
  await page.getByLabel(/Find in the rules/).fill('payload door label');
  const hit = page.locator('.cases li').filter({ hasText: 'Tow fit: what is asked' }).first();
  expect(await objections(page)).toEqual([]);
  await hit.getByRole('link').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tow fit');
  await expect(page.locator('dt:focus')).toContainText(/payload/i);
});
