import type { Page } from '@playwright/test';
import { expect, fact, openCase, test, ticket, unfold, verdict } from './page';

const crossover = 'crossover-and-single-axle';

async function startBlank(page: Page): Promise<void> {
  await page.goto('/#/cases');
  await page.getByRole('button', { name: 'Start a blank case' }).click();
  await expect(verdict(page)).toHaveText('Cannot say');
}

const more = (page: Page, who: string) => page.getByRole('button', { name: `One ${who} more` });
const people = (page: Page) => page.getByRole('group', { name: 'People and animals' });

test('a blank case starts with a driver, and whoever else comes is one touch each', async ({
  page,
}) => {
  await startBlank(page);
  await expect(people(page)).toContainText('1 adult');
  await more(page, 'adult').click();
  await more(page, 'child').click();
  await more(page, 'child').click();
  await more(page, 'dog').click();
  await expect(people(page)).toContainText('2 adults');
  await expect(people(page)).toContainText('2 children');
  await expect(people(page)).toContainText('1 dog');
  const each = await unfold(page, 'Each by weight');
  await expect(each.getByRole('textbox')).toHaveCount(6);
  await page.getByRole('textbox', { name: 'Dog: Weight' }).fill('90');
  await page.getByRole('button', { name: 'One child less' }).click();
  await expect(people(page)).toContainText('1 child');
  await expect(page.getByRole('textbox', { name: 'Dog: Weight' })).toHaveValue('90');
});

test('people of a worked case are counted, and one less is one less on the scale', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(people(page)).toContainText('2 adults');
  await expect(people(page)).toContainText('2 children');
  await expect(page.locator('.ticket .big')).toHaveText('52lb left');
  await page.getByRole('button', { name: 'One dog less' }).click();
  // The dog and its crate weigh 70 lb.
  await expect(page.locator('.ticket .big')).not.toHaveText('52lb left');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.ticket .big')).toHaveText('52lb left');
});

test('the driver stays', async ({ page }) => {
  await startBlank(page);
  await expect(page.getByRole('button', { name: 'One adult less' })).toBeDisabled();
});

test('a load by its name is one touch, is named on the ticket, and another takes its place', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(ticket(page)).not.toContainText('Counted in');
  await page.getByRole('button', { name: 'a weekend' }).click();
  await expect(ticket(page)).toContainText('Counted in: a weekend (280 lb, invented).');
  await page.getByRole('button', { name: 'a week', exact: true }).click();
  await expect(ticket(page)).toContainText('Counted in: a week (500 lb, invented).');
  await page.getByRole('button', { name: 'a week', exact: true }).click();
  await expect(ticket(page)).not.toContainText('Counted in');
  await expect(verdict(page)).toHaveText('Fits with care');
  await page.getByRole('button', { name: 'two and a dog' }).click();
  await expect(people(page)).toContainText('2 adults');
  await expect(people(page)).toContainText('0 children');
});

test('a caller’s rig takes at most forty keys and twelve taps', async ({ page }) => {
  await page.goto('/#/cases');
  let [keys, taps] = [0, 0];
  const tap = async (name: string): Promise<void> => {
    await page.getByRole('button', { name }).click();
    taps += 1;
  };
  await tap('Start a blank case');
  await expect(verdict(page)).toHaveText('Cannot say');
  for (const who of ['adult', 'child', 'child', 'dog']) await tap(`One ${who} more`);
  const next = page.getByRole('region', { name: 'Ask next' });
  await next.getByRole('textbox').click();
  taps += 1;
  const answers: readonly (readonly [RegExp, string])[] = [
    [/trailer weigh empty/, '2900'],
    [/may pull/, '5000'],
    [/tongue weigh empty/, '310'],
    [/rest on the ball/, '600'],
    [/label in the driver/, '1300'],
    [/gross rating/, '4400'],
  ];
  const asked = async () => (await next.locator('label, p').allTextContents())[0] ?? '';
  const word = async () => (await verdict(page).textContent()) ?? '';
  for (let i = 0; i < 12 && !(await word()).startsWith('Fits'); i += 1) {
    const question = await asked();
    const [, value] = answers.find(([pattern]) => pattern.test(question)) ?? [];
    if (value === undefined) {
      // What he does not know is left for later.
      await next.getByRole('button', { name: /^Next/ }).click();
      taps += 1;
    } else {
      await next.getByRole('textbox').focus();
      await page.keyboard.type(value);
      await page.keyboard.press('Enter');
      keys += value.length + 1;
    }
    await expect
      .poll(async () => (await word()).startsWith('Fits') || (await asked()) !== question)
      .toBe(true);
  }
  await expect(verdict(page)).toHaveText(/^Fits/);
  expect(keys).toBeLessThanOrEqual(40);
  expect(taps).toBeLessThanOrEqual(12);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1300');
});

test('a question may be left for later, and is asked again', async ({ page }) => {
  await startBlank(page);
  const next = page.getByRole('region', { name: 'Ask next' });
  const first = (await next.locator('label').first().textContent()) ?? '';
  await next.getByRole('button', { name: /^Next/ }).click();
  await expect(next.locator('label').first()).not.toHaveText(first);
  for (let i = 0; i < 5; i += 1) await next.getByRole('button', { name: /^Next|^Done/ }).click();
  await page.getByRole('button', { name: 'Ask again' }).click();
  await expect(next.locator('label').first()).toHaveText(first);
});
