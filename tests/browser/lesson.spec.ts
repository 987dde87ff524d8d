import { expect, test } from './page';

const unread = 'The label nobody has read';
const settled = 'A pickup rated ninety-four hundred that runs out of payload';

test('an exercise that a case has nothing for cannot be chosen, and why is said', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/class');
  for (const title of [unread, settled]) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  const exercise = (title: string) => page.getByLabel(`What they do with ${title}`);
  const option = (title: string, name: string) =>
    exercise(title).getByRole('option', { name, exact: true });
  await expect(option(unread, 'What do you ask next?')).toBeDisabled();
  await expect(option(unread, 'Say it aloud')).toBeEnabled();
  await expect(exercise(unread)).toHaveAccessibleDescription(
    /Not with this case: “What do you ask next\?”: its verdict stays open/,
  );
  await expect(option(settled, 'What do you ask next?')).toBeEnabled();
  await expect(exercise(settled)).toHaveAccessibleDescription('');
});

test('what a trainer wants to say stands folded with its case, and phones stay asked for from case to case', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/class');
  for (const title of [unread, settled]) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  await page.locator('#learners').fill('Ada');
  await page.locator('ol.plan').getByText('What I want to say').first().click();
  const note = 'The label is in the door.';
  await page.getByLabel(`Note on ${unread}`).fill(note);
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.getByText('Case 1 of 2')).toBeVisible();
  await expect(page.getByText('8 min planned')).toBeVisible();
  // Whoever has the device in hand shall not read it unasked.
  await expect(page.getByText(note)).toBeHidden();
  await page.getByText('What I want to say').click();
  await expect(page.getByText(note)).toBeVisible();
  await page.getByText('On the learners’ own phones').click();
  await expect(page.locator('on-phones svg.code')).toBeVisible();
  const href = await page.getByRole('link', { name: /The link that opens/ }).getAttribute('href');
  await page.locator('.open-working').click();
  await page.getByRole('button', { name: 'The next case' }).click();
  await expect(page.getByText('Case 2 of 2')).toBeVisible();
  await expect(page.locator('#guess-code')).toBeVisible();
  const phone = await page.context().newPage();
  await phone.goto(href ?? '');
  await phone.getByRole('button', { name: 'Ada' }).click();
  await phone.getByLabel('I say').fill('1,003');
  await phone.getByRole('button', { name: 'That is my guess' }).click();
  await expect(phone.locator('.handed')).toBeInViewport();
  await expect(phone.locator('.read-out')).toBeInViewport();
  expect(await phone.locator('body').textContent()).not.toContain(note);
});

test('which questions settle a case is worked out beside the page: said, stopped, and begun again', {
  tag: '@once',
}, async ({ page }) => {
  let letGo = (): void => undefined;
  const gone = new Promise<void>((done) => {
    letGo = done;
  });
  let held = 0;
  await page.context().route(/\/task-of-[^/]*\.js$/, async (route) => {
    held += 1;
    if (held === 1) await gone;
    await route.continue();
  });
  await page.goto('/#/class');
  await page.getByRole('searchbox').fill(settled);
  await page.getByRole('checkbox', { name: settled }).check();
  await page.getByLabel(`What they do with ${settled}`).selectOption('What do you ask next?');
  await page.locator('#learners').fill('Ada');
  const begin = page.getByRole('button', { name: /^Begin with/ });
  const stop = page.getByRole('button', { name: 'Stop' });
  await begin.click();
  await expect(
    page.getByText('Working out which questions settle case 1 of 1 …').first(),
  ).toBeVisible();
  // The page is free meanwhile: what is typed is taken.
  await page.locator('#lesson-name').fill('Asking');
  await stop.click();
  await expect(page.getByText('Stopped; nothing was begun.')).toBeVisible();
  await expect(stop).toHaveCount(0);
  letGo();
  await begin.click();
  await expect(page.getByText('Case 1 of 1')).toBeVisible();
  await expect(page.getByText('Ada says, asked so far: 0.')).toBeVisible();
  // A window that begins anew has it worked out anew.
  await page.reload();
  await expect(page.locator('.asks button').first()).toBeVisible();
});
