import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './page';
import { isStored } from './stored';

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
  await page.getByText('Learners’ phones, by codes read out or scanned').click();
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

const choose = async (page: Page, title: string) => {
  await page.getByRole('searchbox').fill(title);
  await page.getByRole('checkbox', { name: title }).check();
};

test('a title typed is the first case found, whatever else is about the same', {
  tag: '@once',
}, async ({ page }) => {
  for (const where of ['cases', 'class']) {
    await page.goto('about:blank');
    await page.goto(`/#/${where}`);
    await page.getByRole('searchbox').fill(unread);
    const first = page.locator(where === 'class' ? '.choices label' : 'cases-page ul.cases li');
    await expect(first.first()).toContainText(unread);
  }
});

test('what was prepared is there after a reload, and passed on as a file it is there on another device, without the names', {
  tag: '@once',
}, async ({ page, browser }) => {
  await page.goto('/#/class');
  await page.locator('#lesson-name').fill('Week 1');
  await choose(page, unread);
  await choose(page, settled);
  await page.getByLabel(`Minutes for ${unread}`).fill('12');
  await page.getByRole('button', { name: `Earlier: ${settled}` }).click();
  await page.locator('#learners').fill('Ada\nBen');
  const titles = page.locator('ol.plan .title');
  await expect(titles).toHaveText([settled, unread]);
  await isStored(page, /"learners":"Ada\\nBen"/, 'lessons');
  await page.reload();
  await expect(titles).toHaveText([settled, unread]);
  await expect(page.locator('#lesson-name')).toHaveValue('Week 1');
  await expect(page.locator('#learners')).toHaveValue('Ada\nBen');
  await expect(page.getByText('2 cases, 20 minutes in all.')).toBeVisible();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file: Week 1' }).click();
  const file = await (await coming).path();
  const other = await (await browser.newContext()).newPage();
  await other.goto(new URL('/#/class', page.url()).href);
  await other.getByLabel('Open a lesson somebody passed on').setInputFiles({
    name: 'lesson-week-1.json',
    mimeType: 'application/json',
    buffer: await readFile(file),
  });
  await expect(other.locator('ol.plan .title')).toHaveText([settled, unread]);
  await expect(other.locator('#lesson-name')).toHaveValue('Week 1');
  await expect(other.locator('#learners')).toHaveValue('');
});

test('two windows of the trainer take guesses down in one class, and neither loses what the other has', {
  tag: '@once',
}, async ({ page, context }) => {
  await page.goto('/#/class');
  await choose(page, unread);
  await page.locator('#learners').fill('Ada\nBen\nCal');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.getByText('Committed: 0 of 3. Waiting for Ada, Ben, Cal.')).toBeVisible();
  const other = await context.newPage();
  await other.goto('/#/class');
  await expect(other.getByText('Committed: 0 of 3.')).toBeVisible();
  const say = async (window: Page, who: string, figure: string) => {
    await window.bringToFront();
    await window.getByLabel('Whose turn').selectOption(who);
    await window.locator('#prediction').fill(figure);
    await window.getByRole('button', { name: 'Commit' }).click();
  };
  await say(page, 'Ada', '1001');
  await say(other, 'Ben', '1002');
  for (const window of [page, other]) {
    await expect(window.getByText('Committed: 2 of 3. Waiting for Cal.')).toBeVisible();
  }
  // One mistyped takes it back in the other window, and says it anew in the first.
  await other.getByText('Take a guess back, or take somebody in').click();
  await other.getByRole('button', { name: 'Take back the guess of Ada' }).click();
  await expect(page.getByText('Waiting for Ada, Cal.')).toBeVisible();
  await say(page, 'Ada', '1016');
  await other.getByRole('textbox', { name: 'Came late' }).fill('Dot');
  await other.getByRole('button', { name: 'Take in' }).click();
  await expect(page.getByText('Committed: 2 of 4. Waiting for Cal, Dot.')).toBeVisible();
  await page.bringToFront();
  await page.locator('.open-working').click();
  for (const window of [page, other]) {
    const row = (name: string) => window.getByRole('row', { name: new RegExp(`^${name}`) });
    await expect(row('Ada')).toContainText('1016 lb');
    await expect(row('Ben')).toContainText('1002 lb');
    await expect(row('Dot')).toContainText('nothing');
  }
});

test('what a trainer presses next is in sight from the first to the last, and what a learner answers stands before what is known', async ({
  page,
}) => {
  await page.goto('/#/class');
  await choose(page, settled);
  await page.locator('#learners').fill('Ada');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  const open = page.locator('.open-working');
  await expect(open).toBeInViewport();
  const before = await page.evaluate(() => {
    const [field, known] = ['#prediction', 'class-case td.num'].map((each) =>
      document.querySelector(each),
    );
    return field && known ? field.compareDocumentPosition(known) : 0;
  });
  expect(before & 4, 'the field stands before the figures').toBe(4);
  await open.click();
  const next = page.getByRole('button', { name: 'To the tally' });
  await expect(next).toBeInViewport();
  await page.keyboard.press('End');
  await expect(next).toBeInViewport();
  await expect(page.getByRole('button', { name: 'Why', exact: true })).toBeInViewport();
});

test('a week later the page says what is due, and makes a lesson of it in one touch', {
  tag: '@once',
}, async ({ page }) => {
  await page.clock.setFixedTime(new Date('2027-03-01T09:00:00Z'));
  await page.goto('/#/class');
  await choose(page, unread);
  await page.locator('#learners').fill('Ada\nBen');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  for (const said of ['900', '1,016']) {
    await page.locator('#prediction').fill(said);
    await page.getByRole('button', { name: 'Commit' }).click();
  }
  await page.locator('.open-working').click();
  await page.getByRole('button', { name: 'To the tally' }).click();
  await isStored(page, /"at":1\b/, 'classes');
  await page.reload();
  await expect(page.getByText('Earlier classes')).toBeVisible();
  // On the day itself nothing is due.
  await expect(page.locator('comes-back')).toHaveText('');
  await page.clock.setFixedTime(new Date('2027-03-08T09:00:00Z'));
  await page.reload();
  const due = page.getByRole('region', { name: 'Due again today' });
  await expect(due.getByRole('listitem')).toHaveText([new RegExp(`^Ada: ${unread}`)]);
  await due.getByRole('button', { name: 'Make a lesson of these' }).click();
  await expect(page.locator('#lesson-name')).toHaveValue('What comes back, 2027-03-08');
  await expect(page.locator('#lesson-name')).toBeFocused();
  await expect(page.locator('ol.plan .title')).toHaveText([unread]);
  await expect(page.locator('#learners')).toHaveValue('Ada');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.getByText('Waiting for Ada.')).toBeVisible();
});
