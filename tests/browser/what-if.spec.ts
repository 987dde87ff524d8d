import { objections } from './objections';
import { expect, test } from './page';

const people = 'Four people, a dog, and a crossover rated for five thousand';

test('in the open case people and loads come and go as at the counter, and the wall follows without scrolling', {
  tag: '@once',
}, async ({ page, context }) => {
  await page.goto('/#/class');
  await page.getByRole('searchbox').fill(people);
  await page.getByRole('checkbox', { name: people }).check();
  await page.locator('#learners').fill('Ada');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await page.locator('.open-working').click();
  const wall = await context.newPage();
  await wall.setViewportSize({ width: 1920, height: 1080 });
  await wall.goto('/#/class/learners');
  await expect(wall.locator('guess-spread')).toBeVisible();
  await page.bringToFront();
  const rows = page.locator('.moved-rows');
  await rows.getByText(/^Add or leave out:/).click();
  await rows
    .getByRole('button', { name: /^Leave out: .*dog/i })
    .first()
    .click();
  await expect(wall.locator('.what-if')).toHaveText(/^What if .*dog.* were left out\?$/i);
  const person = rows.getByRole('textbox', { name: /what else$/ }).first();
  await person.fill('Aunt');
  await person.press('Enter');
  await rows.getByRole('textbox', { name: /^Aunt: weight/i }).fill('150');
  await expect(wall.locator('.what-if')).toContainText('Aunt (150 lb) were there too');
  // A load is named, and then weighed where it stands.
  const load = rows.getByRole('textbox', { name: /what else$/ }).last();
  await load.fill('Bicycles');
  await load.press('Enter');
  const weight = rows.getByRole('textbox', { name: /^Bicycles: weight/i });
  await expect(weight).toBeFocused();
  await weight.fill('90');
  await expect(wall.locator('.what-if')).toContainText('Bicycles (90 lb');
  await expect(page.locator('what-if .what-if')).toContainText('Bicycles (90 lb');
  expect(await objections(page)).toEqual([]);
  const over = await wall.evaluate(() => document.documentElement.scrollHeight - innerHeight);
  expect(over, 'nothing to scroll on the wall').toBeLessThanOrEqual(0);
  const small = await wall.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('learners-view *')].flatMap((each) => {
      const own = [...each.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim());
      const size = Number.parseFloat(getComputedStyle(each).fontSize);
      const isSeen = each.getBoundingClientRect().width > 1;
      return own && isSeen && size < 28 ? [`${each.tagName} ${each.className} ${size}`] : [];
    }),
  );
  expect(small, 'legible from ten meters').toEqual([]);
  const box = await wall.locator('.step').boundingBox();
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(1080);
  await rows.getByRole('button', { name: 'Leave out: Bicycles' }).click();
  await expect(wall.locator('.what-if')).not.toContainText('Bicycles');
  await page.getByRole('button', { name: 'Back to the case' }).click();
  await expect(wall.locator('.what-if')).toHaveCount(0);
});
