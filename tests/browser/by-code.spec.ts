import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const cases = [
  'The label nobody has read',
  'A pickup rated ninety-four hundred that runs out of payload',
  'It drops over the ball, so it must fit',
  'A foot further back, and what it costs',
  'Four people, a dog, and a crossover rated for five thousand',
  'A drift against the wall',
] as const;
const learners = ['Ada', 'Ben', 'Cal', 'Dot', 'Eve', 'Fay', 'Gus', 'Hal'];

async function begin(page: Page, names: readonly string[], titles: readonly string[]) {
  await page.goto('/#/class');
  await page.getByLabel('First names or numbers, one on a line').fill(names.join('\n'));
  for (const title of titles) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await page.getByText('Learners’ phones, by codes read out or scanned').click();
  await expect(page.locator('on-phones svg.code')).toBeVisible();
}

const linkOf = (page: Page) =>
  page.getByRole('link', { name: /The link that opens/ }).getAttribute('href');

const modules = async (page: Page, code: string) =>
  Number((await page.locator(code).getAttribute('viewBox'))?.split(' ')[2]);

test('six filed cases and eight names stand in a code of few enough modules, on the wall as large as it goes; who comes late is in it', {
  tag: '@once',
}, async ({ page, context }) => {
  await begin(page, learners, cases);
  // Of an address that no phone reaches the trainer is told before anybody scans it.
  await expect(page.getByText('“localhost”, is this machine alone')).toBeVisible();
  // A phone at the back of the room tells modules of a hundredth of the code's height apart (a house choice).
  expect(await modules(page, 'on-phones svg.code')).toBeLessThanOrEqual(81);
  const wall = await context.newPage();
  await wall.setViewportSize({ width: 1920, height: 1080 });
  await wall.goto('/#/class/learners');
  await expect(wall.getByRole('heading', { level: 1 })).toContainText(cases[0]);
  await page.bringToFront();
  const put = page.getByRole('button', { name: 'The code on the wall' });
  await put.click();
  const code = wall.locator('.to-scan svg.code');
  await expect(code).toBeVisible();
  const box = await code.boundingBox();
  expect(box?.height).toBeGreaterThan(650);
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(1080);
  const over = await wall.evaluate(() => document.documentElement.scrollHeight - innerHeight);
  expect(over).toBeLessThanOrEqual(0);
  expect(await objections(wall)).toEqual([]);
  // Whoever is taken in stands in the code at once, wherever it is shown.
  const before = await linkOf(page);
  await page.getByText('Take a guess back, or take somebody in').click();
  await page.getByRole('textbox', { name: 'Came late' }).fill('Ida');
  await page.getByRole('button', { name: 'Take in' }).click();
  await expect.poll(() => linkOf(page)).not.toBe(before);
  const phone = await context.newPage();
  await phone.goto((await linkOf(page)) ?? '');
  await expect(phone.getByRole('button', { name: 'Ida' })).toBeVisible();
  await page.bringToFront();
  await put.click();
  await expect(wall.locator('.stage h1')).toContainText(cases[0]);
  await put.click();
  await expect(code).toBeVisible();
  await page.locator('.open-working').click();
  await expect(wall.locator('guess-spread')).toBeVisible();
});

test('a phone without a line knows who has it and what was said, tells what comes next, and ends by the code of the end', async ({
  page,
  browser,
}) => {
  await begin(page, ['Ada', 'Ben'], cases.slice(0, 2));
  const href = (await linkOf(page)) ?? '';
  const phone = await (
    await browser.newContext({ viewport: { width: 360, height: 740 } })
  ).newPage();
  await phone.goto(href);
  await expect(phone.getByRole('button', { name: 'Ben' })).toBeVisible();
  await phone.getByRole('button', { name: 'Ada' }).click();
  const say = async (figure: string) => {
    await phone.getByLabel('I say').fill(figure);
    await phone.getByRole('button', { name: 'That is my guess' }).click();
    return (await phone.locator('.read-out').textContent()) ?? '';
  };
  const takeDown = async (code: string) => {
    await page.bringToFront();
    await page.locator('#guess-code').fill(code);
    await page.getByRole('button', { name: 'Note the guess' }).click();
    await expect(page.getByText('Ada’s guess is noted.')).toBeVisible();
  };
  const mistyped = await say('100');
  await phone.getByRole('button', { name: 'I mistyped' }).click();
  await expect(phone.getByLabel('I say')).toHaveValue('100');
  const first = await say('1,003');
  expect(first).not.toBe(mistyped);
  await expect(phone.getByText('Go to the next case when the trainer does.')).toBeVisible();
  // The phone slept, and the page was read anew.
  await phone.reload();
  await expect(phone.locator('.read-out')).toHaveText(first);
  await expect(phone.getByText('· Ada')).toBeVisible();
  await takeDown(first);
  await page.locator('.open-working').click();
  await page.getByRole('button', { name: 'The next case' }).click();
  await phone.getByRole('button', { name: 'The next case' }).click();
  await expect(phone.getByText('Case 2 of 2')).toBeVisible();
  const end = phone.getByLabel('End code');
  await expect(end).toBeHidden();
  await phone.getByLabel('Because').fill('The label says so');
  await say('500');
  await expect(phone.getByText('say it, too: “The label says so”')).toBeVisible();
  await expect(phone.getByText('You have answered all 2 cases.')).toBeVisible();
  await page.getByLabel('Their reason').fill('The label says so');
  await takeDown((await phone.locator('.read-out').textContent()) ?? '');
  expect(await objections(phone)).toEqual([]);
  await end.fill('AAAA');
  await phone.getByRole('button', { name: 'See what came out' }).click();
  await expect(phone.getByText('“AAAA” is not the end code')).toBeVisible();
  await expect(phone.getByText('1,016')).toHaveCount(0);
  await page.getByRole('button', { name: 'End the class here' }).click();
  const code = (await page.locator('.read-out').textContent()) ?? '';
  expect(code).toMatch(/^[A-Z]{4}$/);
  await end.fill(code.toLowerCase());
  await phone.getByRole('button', { name: 'See what came out' }).click();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('The class is over');
  await expect(phone.locator('main')).toContainText('Thank you, Ada.');
  await expect(phone.locator('.said-here li').first()).toContainText('1,003 lb');
  await expect(phone.locator('.said-here li').first()).toContainText('Met: 13 lb under.');
  await expect(phone.locator('.said-here li')).toHaveCount(2);
  expect(await objections(phone)).toEqual([]);
  await phone.reload();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('The class is over');
  // The wall says the code to everybody.
  const wall = await page.context().newPage();
  await wall.goto('/#/class/learners');
  await expect(wall.locator('.end-code')).toHaveText(code);
});
