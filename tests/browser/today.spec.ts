import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, fact, test, ticket, verdict } from './page';
import { scriptsBefore } from './scripts';
import { isStored } from './stored';

const line = 'crossover rated five thousand, trailer thirty-nine hundred, four of us and a dog';

const said = (page: Page) => page.getByLabel('What did they say?');
const marks = (page: Page) => page.getByRole('group', { name: 'What was understood' });
const next = (page: Page) => page.getByRole('region', { name: 'Ask next' });

async function say(page: Page, text = line): Promise<void> {
  await page.goto('/#/today');
  await said(page).fill(text);
  await expect(verdict(page)).toBeVisible();
}

test('one line is read, answered at once, put right by a touch, and opens as a case with all of it', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Today');
  await say(page);
  // What nobody said is asked, and never assumed.
  await expect(verdict(page)).toHaveText('Cannot say');
  await expect(page.getByLabel('About')).toHaveValue('tow-fit');
  await expect(marks(page)).toContainText('Maximum trailer weight 5,000 lb');
  await expect(marks(page)).toContainText('4 adults');
  await expect(marks(page)).toContainText('1 dog');
  await expect(next(page)).toContainText('“trailer thirty-nine hundred”: which is that?');
  // What is like it was answered before.
  const near = page.getByRole('region', { name: 'Cases like this' });
  await expect(near.getByRole('listitem')).toHaveCount(3);
  await expect(near).toContainText('Tow fit');
  await next(page).getByRole('button', { name: 'Dry weight' }).click();
  await expect(marks(page)).toContainText('Dry weight 3,900 lb');
  await expect(next(page)).toHaveCount(1);
  await expect(next(page)).not.toContainText('which is that?');

  await marks(page)
    .getByRole('button', { name: /rated five thousand/ })
    .click();
  await page.getByRole('textbox', { name: 'Maximum trailer weight' }).fill('3500');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.getByRole('textbox', { name: 'Maximum trailer weight' }).press('Escape');
  await marks(page).getByRole('button', { name: /a dog/ }).click();
  await page.getByRole('button', { name: 'Take it away' }).click();
  await expect(marks(page)).toContainText('left out');
  await marks(page).getByRole('button', { name: /a dog/ }).click();
  await page.getByRole('button', { name: 'One child more' }).click();

  await page.reload();
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.getByRole('button', { name: 'Open as a case' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    'Crossover rated five thousand',
  );
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(page.locator('input[data-fact="vehicle.maxTrailerWeight"]')).toHaveValue('3500');
  await expect(page.locator('input[data-fact="trailer.dryWeight"]')).toHaveValue('3,900');
  const people = page.getByRole('group', { name: 'People and animals' });
  for (const each of ['4 adults', '1 child', '1 dog']) await expect(people).toContainText(each);
  await page.goto('/#/today');
  await expect(said(page)).toHaveValue('');
});

test('what waits stands in the tray with what it waits for, and goes once it is answered', async ({
  page,
}) => {
  await say(page);
  await page.getByRole('button', { name: 'Open as a case' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Crossover');
  await page.goto('/#/today');
  const tray = page.getByRole('region', { name: 'Open calls' });
  const calls = tray.locator('.cases li:not(.gone)');
  await expect(calls).toHaveCount(1);
  await expect(calls).toContainText('waits for: What does the trailer weigh empty?');
  await calls.getByRole('button', { name: /^Rename/ }).click();
  await page.getByLabel('Name', { exact: true }).fill('Ada: crossover');
  await page.keyboard.press('Enter');
  await expect(calls.getByRole('link')).toHaveText('Ada: crossover');
  await calls.getByRole('button', { name: /^Copy/ }).click();
  await expect(calls).toHaveCount(2);
  await calls
    .first()
    .getByRole('button', { name: /^Delete/ })
    .click();
  await expect(calls).toHaveCount(1);
  await tray.getByRole('button', { name: /^Undo/ }).click();
  await expect(calls).toHaveCount(2);
  // What is answered waits for nothing.
  await calls.getByRole('link').first().click();
  await fact(page, 'trailer.dryWeight').fill('5600');
  await expect(verdict(page)).toHaveText('Does not fit');
  await isStored(page, /5,?600/);
  await page.goto('/#/today');
  await expect(calls).toHaveCount(1);
  await expect(tray).toContainText('1 more of your own');
});

test('nothing that is done with an open call moves another, so that a quick touch is not lost', async ({
  page,
}) => {
  for (const each of ['four of us', 'two of us']) {
    await say(page, `crossover rated five thousand, ${each}`);
    await page.getByRole('button', { name: 'Open as a case' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Crossover');
    await isStored(page, /tow-fit\/mine-/);
  }
  await page.goto('/#/today');
  const tray = page.getByRole('region', { name: 'Open calls' });
  const calls = tray.locator('.cases li:not(.gone)');
  await expect(calls).toHaveCount(2);
  await expect(tray.getByText('waits for:')).toHaveCount(2);
  const places = () =>
    tray
      .locator('.cases li button')
      .evaluateAll((all) =>
        all.slice(0, 6).map((each) => Math.round(each.getBoundingClientRect().top + scrollY)),
      );
  // Until nothing above them comes in any more.
  let before = await places();
  await expect
    .poll(
      async () => {
        const was = before;
        before = await places();
        return `${was}` === `${before}`;
      },
      { intervals: [400] },
    )
    .toBe(true);
  await calls.first().getByRole('button', { name: /^Copy/ }).click();
  await expect(calls).toHaveCount(3);
  expect(await places()).toEqual(before);
  const second = calls.nth(1).getByRole('button', { name: /^Delete/ });
  const at = await second.boundingBox();
  await calls
    .first()
    .getByRole('button', { name: /^Delete/ })
    .click();
  await expect(calls).toHaveCount(2);
  expect(
    await calls
      .first()
      .getByRole('button', { name: /^Delete/ })
      .boundingBox(),
  ).toEqual(at);
  await tray.getByRole('button', { name: /^Undo/ }).click();
  await expect(calls).toHaveCount(3);
  expect(await places()).toEqual(before);
});

test('nothing is forced: no topic, another topic, and what is dangerous first', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/today');
  await said(page).fill('what time do you close on Saturday');
  await expect(page.getByText('No topic is clear from these words.')).toBeVisible();
  await expect(ticket(page)).toHaveCount(0);
  await page.getByLabel('About').selectOption('gas-supply');
  await expect(ticket(page)).toContainText('Gas supply');
  await page.getByRole('button', { name: 'Clear' }).click();
  await expect(ticket(page)).toHaveCount(0);
  await said(page).fill('tow rating 5000 and it smells like propane in the trailer');
  await expect(page.getByRole('alert', { name: 'Urgent' })).toContainText('Say this first');
});

test('Today is in order for everybody, narrow too, and nothing waits on a hostile line', async ({
  page,
}) => {
  await say(page);
  expect(await objections(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 640 });
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(await wide()).toBeLessThanOrEqual(0);
  await page.emulateMedia({ forcedColors: 'active' });
  const underline = await marks(page)
    .locator('.said')
    .first()
    .evaluate((at) => getComputedStyle(at).borderBottomStyle);
  expect(underline).toBe('solid');
  const small = await page.locator('one-line').evaluate((at) =>
    [...at.querySelectorAll('button, select, textarea')]
      .map((each) => [each.textContent?.trim(), each.getBoundingClientRect()] as const)
      .filter(([, { height, width }]) => height > 0 && (height < 43.5 || width < 43.5))
      .map(([words, { width, height }]) => `${words} ${width}×${height}`),
  );
  expect(small).toEqual([]);
  const began = Date.now();
  await said(page).fill(`${'trailer 9 '.repeat(60_000)} <img src=x onerror=alert(1)>`);
  await page.getByLabel('About').focus();
  expect(Date.now() - began).toBeLessThan(15_000);
});

test('Today comes with at most 110 KiB of script, and nothing of it reads or judges before somebody types', {
  tag: '@once',
}, async ({ page }) => {
  const { urls, kib } = await scriptsBefore(page, 'textarea', async () => {
    await page.goto('/#/today');
    await expect(said(page)).toBeVisible();
  });
  expect(urls.filter((url) => /worker|reader|parse|tow-fit/.test(url))).toEqual([]);
  expect(kib).toBeGreaterThan(20);
  // The bar is 120 KiB; held here so that it does not grow back to it.
  expect(kib).toBeLessThanOrEqual(110);
});

test('six facts, two adults, two children and a dog take at most forty keys and twelve taps; a line said takes none', async ({
  page,
}) => {
  let [keys, taps] = [0, 0];
  await page.goto('/#/today');
  const type = async (text: string): Promise<void> => {
    await page.keyboard.type(text);
    keys += text.length;
  };
  const tap = async (name: string): Promise<void> => {
    await page.getByRole('button', { name }).click();
    taps += 1;
  };
  await said(page).click();
  taps += 1;
  await type('tow');
  await expect(verdict(page)).toHaveText('Cannot say');
  for (const who of ['adult', 'child', 'child', 'dog']) await tap(`One ${who} more`);
  await next(page).getByRole('textbox').click();
  taps += 1;
  const answers: readonly (readonly [RegExp, string])[] = [
    [/trailer weigh empty/, '2900'],
    [/may pull/, '5000'],
    [/tongue weigh empty/, '310'],
    [/rest on the ball/, '600'],
    [/label in the driver/, '1300'],
    [/gross rating/, '4400'],
  ];
  const told = new Set<string>();
  for (let i = 0; i < 12 && told.size < answers.length; i += 1) {
    const question = (await next(page).locator('.next-ask').textContent()) ?? '';
    const [, value] = answers.find(([pattern]) => pattern.test(question)) ?? [];
    if (value === undefined) {
      await next(page).getByRole('button', { name: /^Next/ }).click();
      taps += 1;
    } else {
      await expect(next(page).getByRole('textbox')).toBeFocused();
      await type(value);
      await page.keyboard.press('Enter');
      keys += 1;
      told.add(question);
    }
    await expect(next(page).locator('.next-ask')).not.toHaveText(question);
  }
  await expect(verdict(page)).toHaveText(/^Fits/);
  expect(keys).toBeLessThanOrEqual(40);
  expect(taps).toBeLessThanOrEqual(12);

  // The same, dictated or pasted: nothing is typed, and nothing has to be touched.
  await page.getByRole('button', { name: 'Clear' }).click();
  await said(page).fill(
    'rated five thousand, six hundred pounds tongue rating, payload thirteen hundred, dry weight twenty-nine hundred, gvwr forty-four hundred, TW 310 dry, two adults, two kids and a dog',
  );
  await expect(verdict(page)).toHaveText(/^Fits/);
  // By the keyboard alone: the first mark opens, is mended, and shuts.
  await said(page).press('Tab');
  await page.keyboard.press('Tab');
  await expect(marks(page).getByRole('button').first()).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Maximum trailer weight' })).toBeFocused();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('2500');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Maximum trailer weight' })).toHaveCount(0);
});
