import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const morning = `[forum]
From: gus_gravel
hey all, can I tow your 24 footer with my half ton? truck says max tow 7600, trailer gvwr is 6800 and dry is 5350. dealer in the next town said no problemo

[phone notes]
Mon 4:35 - Ray Pruitt. Backed into a post, dent in rear corner abt 8 inches, no water yet. Should he go thru insurance, deductable is 500, and will we fix it

[e-mail]
From: Carl Omdahl
Subject: tongue weight
My loaded trailer weighed 6150 lbs at the scale and the tongue 560. It sways when semis pass me. Is 560 enough? Should I just move the bikes to the back bumper?

From: Ted K
Subject: closing time
Until when are you open on Friday?
`;

async function takeIn(page: Page): Promise<void> {
  await page.goto('/#/questions');
  await page.getByLabel('Paste what came in, from all sides').fill(morning);
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText('4 messages were taken in.')).toBeVisible();
  await expect(page.getByText('Working it out')).toHaveCount(0);
  await expect(page.getByText('Reading:')).toHaveCount(0);
}

const asksOf = (page: Page) =>
  page
    .getByLabel(/^Question \d+$/)
    .evaluateAll((fields) =>
      fields.map((field) => (field instanceof HTMLTextAreaElement ? field.value : '')),
    );

test('a question is heard whole; what has no answer is said, answered there, and heard beside the rest of its message', async ({
  page,
}) => {
  await takeIn(page);
  await page.getByRole('button', { name: 'Make a round of what has an answer' }).click();
  await expect(page.getByLabel('Question 1', { exact: true })).toBeVisible();
  const asks = await asksOf(page);
  expect(asks).toContain(
    'Can I tow your 24 footer with my half ton? Truck says max tow 7600, trailer gvwr is 6800 and dry is 5350.',
  );
  expect(asks).toContain(
    'Backed into a post, dent in rear corner abt 8 inches, no water yet. Should he go thru insurance, deductable is 500, and will we fix it?',
  );
  const sways =
    'My loaded trailer weighed 6150 lbs at the scale and the tongue 560. It sways when semis pass me.';
  expect(asks).toContain(`${sways} Is 560 enough?`);
  for (const each of asks) expect(each).not.toMatch(/Pruitt|4:35|tongue weight My/u);

  const left = page.locator('round-left');
  await expect(left.getByRole('heading')).toContainText('without an answer');
  const bikes = left.locator('form').filter({ hasText: 'move the bikes' });
  await page.getByRole('button', { name: /^Write (?:it|them) below$/ }).click();
  await expect(left.getByRole('textbox').first()).toBeFocused();
  await bikes.getByRole('button', { name: /^Into the round/ }).click();
  await expect(bikes).toContainText('Write the answer first.');
  await bikes.getByRole('textbox').fill('No: that takes weight off the tongue.');
  await bikes.getByRole('button', { name: /^Into the round/ }).click();
  await expect(bikes).toHaveCount(0);
  const now = await asksOf(page);
  expect(now[now.indexOf(`${sways} Is 560 enough?`) + 1]).toBe(
    `${sways} Should I just move the bikes to the back bumper?`,
  );
  // Whoever works with keys goes on with the next, or with the closing.
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('TEXTAREA');
  expect(await objections(page)).toEqual([]);
});

test('what cannot wait is said above the round; whoever reads that it can puts it in', async ({
  page,
}) => {
  await page.goto('/#/questions');
  await page
    .getByLabel('Paste what came in, from all sides')
    .fill(
      `${morning}\n[phone notes]\nSmell of gas by the stove in their trailer, are they safe?\n`,
    );
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText('5 messages were taken in.')).toBeVisible();
  await expect(page.getByText('Reading:')).toHaveCount(0);
  await page.getByRole('button', { name: 'Make a round of what has an answer' }).click();
  const waiting = page.locator('round-waiting');
  await expect(waiting).toContainText('One urgent question is not in the round');
  await expect(waiting).toContainText('Urgent: gas. Smell of gas by the stove');
  const before = (await asksOf(page)).length;
  await waiting.getByRole('button', { name: /^It is not urgent, into the round/ }).click();
  await expect(waiting).toHaveText('');
  await expect(page.getByLabel('Opening')).toBeFocused();
  await expect.poll(async () => (await asksOf(page)).length).toBe(before + 1);
  expect(await objections(page)).toEqual([]);
});

test('a sentence is left out of an answer by a touch and put back; a caution is not left out', async ({
  page,
}) => {
  await takeIn(page);
  await page.getByRole('button', { name: 'Make a round of what has an answer' }).click();
  const item = page
    .locator('.round-item')
    .filter({ has: page.getByRole('button', { name: 'Shorten the answer: question 1' }) })
    .first();
  const answer = item.getByLabel('Answer 1');
  const whole = await answer.inputValue();
  await item.getByRole('button', { name: 'Shorten the answer: question 1' }).click();
  const sentences = item.locator('button.sentence');
  const first = (await sentences.first().textContent()) ?? '';
  expect(whole).toContain(first);
  await sentences.first().click();
  await expect(answer).not.toHaveValue(whole);
  expect(await answer.inputValue()).not.toContain(first);
  await expect(sentences.first()).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(answer).toHaveValue(whole);
  // What stands there without a button is a caution.
  const said = await item.locator('.sentences li').count();
  expect(await sentences.count()).toBeLessThan(said);
  expect(await objections(page)).toEqual([]);
});

test('what is set right beside its question is said so in the round; what was written there stays', async ({
  page,
}) => {
  await takeIn(page);
  await page.getByRole('button', { name: 'Make a round of what has an answer' }).click();
  const second = page.getByLabel('Answer 2');
  await second.fill('As I say it.');
  await second.blur();
  await page.getByRole('link', { name: 'What was asked' }).click();
  const tow = page.locator('asked-entry').filter({ hasText: 'half ton' });
  const field = tow.getByLabel(/^Answer: /);
  await field.fill('Yes, with 800 pounds to spare.');
  await field.blur();
  await page.getByRole('link', { name: /^The round, / }).click();
  const answers = () =>
    page
      .getByLabel(/^Answer \d+$/)
      .evaluateAll((fields) =>
        fields.map((each) => (each instanceof HTMLTextAreaElement ? each.value : '')),
      );
  await expect.poll(answers).toContain('Yes, with 800 pounds to spare.');
  expect(await answers()).toContain('As I say it.');
});

test('the way to the top and to the round is at hand in a long list, and never over what has the focus', async ({
  page,
}) => {
  await takeIn(page);
  const fields = page.getByLabel(/^Answer: /);
  const top = page.getByRole('button', { name: 'To the top' });
  for (const key of ['Tab', 'Shift+Tab']) {
    await (key === 'Tab' ? fields.first() : fields.last()).focus();
    for (let presses = 0; presses < 25; presses += 1) {
      await page.keyboard.press(key);
      // How far what has the focus stands under the bar, while that holds to the edge.
      const covered = await page.evaluate(() => {
        const bar = document.querySelector('.asked-bar');
        const at = document.activeElement;
        const isWithin = at?.closest('asked-entry') && bar && bar.getBoundingClientRect().top < 1;
        if (!isWithin || !at) return 0;
        const { top: from, bottom: to } = at.getBoundingClientRect();
        // Of a field the line that is written in is in sight: after a way back, its last.
        const seen = at instanceof HTMLTextAreaElement ? Math.max(from, to - 40) : from;
        return bar.getBoundingClientRect().bottom - seen;
      });
      expect(covered).toBeLessThanOrEqual(1);
    }
  }
  await fields.last().scrollIntoViewIfNeeded();
  await expect(top).toBeInViewport();
  await expect(
    page.getByRole('button', { name: 'Make a round of what has an answer' }),
  ).toBeInViewport();
  await top.click();
  await expect(page.getByRole('heading', { name: 'Questions', exact: true })).toBeFocused();
});
