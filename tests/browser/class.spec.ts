import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { objections } from './objections';
import { expect, test } from './page';
import { isStored } from './stored';

const ball = 'It drops over the ball, so it must fit';
const unread = 'The label nobody has read';

const names = (page: Page) => page.getByLabel('First names or numbers, one on a line');
const prediction = (page: Page) => page.locator('#prediction');
const commit = (page: Page) => page.getByRole('button', { name: 'Commit' });

async function choose(page: Page, title: string) {
  await page.getByRole('searchbox').fill(title);
  await page.getByRole('checkbox', { name: title }).check();
}

async function begin(page: Page, learners: readonly string[], cases: readonly string[]) {
  await page.goto('/#/class');
  const fresh = page.getByRole('button', { name: 'A new lesson' });
  await expect(fresh).toBeVisible();
  await fresh.click();
  await names(page).fill(learners.join('\n'));
  for (const title of cases) await choose(page, title);
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.getByText(`Case 1 of ${cases.length}`)).toBeVisible();
}

async function say(page: Page, said: string) {
  await prediction(page).fill(said);
  await commit(page).click();
}

const opened = (page: Page) => page.getByRole('heading', { name: 'What came out' });

test('each learner commits before the working opens, then sees the difference and why', async ({
  page,
}) => {
  await begin(page, ['Ada', 'Ben'], [unread]);
  await expect(opened(page)).toHaveCount(0);
  await expect(page.getByText('a phone call away')).toHaveCount(0);
  await say(page, '1,003 lb');
  await expect(page.getByText('Ada has committed. Hand over to Ben.')).toBeVisible();
  await expect(page.locator('class-page')).not.toContainText('1,003');
  await expect(prediction(page)).toHaveValue('');
  await say(page, '900');
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  await expect(opened(page)).toBeFocused();
  const row = (name: string) => page.getByRole('row', { name: new RegExp(`^${name}`) });
  await expect(row('Ada')).toContainText('13 lb under');
  await expect(row('Ada')).toContainText('met');
  await expect(row('Ben')).toContainText('900 lb');
  await expect(row('Ben')).toContainText('116 lb under');
  await expect(row('Ben')).toContainText('not met');
  await expect(page.locator('.came-out')).toContainText('1,016 lb');
  await expect(page.locator('.verdict')).toContainText('cannot be said yet');
  await expect(page.locator('class-case')).toContainText('a phone call away');
  await expect(page.locator('class-case')).toContainText('Weigh the loaded rig');
  await expect(page.locator('#prediction')).toHaveCount(0);
});

test('a mistake is told beside its field, and nothing is taken down', { tag: '@once' }, async ({
  page,
}) => {
  await page.goto('/#/class');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.locator('#learners-wrong')).toContainText('Nobody is named');
  await names(page).fill('Ada\nAda');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.locator('#learners-wrong')).toContainText('“Ada” stands here twice');
  await names(page).fill('Ada');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await expect(page.getByText('No case is chosen')).toBeVisible();
  await choose(page, unread);
  await page.getByRole('button', { name: /^Begin with/ }).click();
  for (const [said, told] of [
    ['heavy', 'is no number'],
    ['4 ft', 'is in ft, and lb was asked'],
    ['', 'Nothing is written here'],
  ] as const) {
    await say(page, said);
    await expect(page.locator('#prediction-wrong')).toContainText(told);
  }
  await expect(page.getByText('Committed: 0 of 1.')).toBeVisible();
});

test('a class survives a reload, in the middle of a case and at its tally', {
  tag: '@once',
}, async ({ page }) => {
  await begin(page, ['Ada', 'Ben'], [unread, ball]);
  await say(page, '1,003 lb');
  await expect(page.getByText('Committed: 1 of 2.')).toBeVisible();
  await isStored(page, '"said":"1,003 lb"', 'classes');
  await page.reload();
  await expect(page.getByText('Committed: 1 of 2.')).toBeVisible();
  await say(page, '1,020 lb');
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  await page.getByRole('button', { name: 'The next case' }).click();
  await expect(page.getByText('Case 2 of 2')).toBeVisible();
  await page.getByRole('button', { name: 'Open the working without 2 of 2' }).click();
  await page.getByRole('button', { name: 'To the tally' }).click();
  await expect(page.getByText('Together: 2 of 2 predictions met.')).toBeVisible();
  await expect(page.getByRole('row', { name: /^Ada/ })).toContainText(
    'said: 1,003 lb; 13 lb under',
  );
  await isStored(page, /"opened":\[0,1\].*"at":2\b/, 'classes');
  await page.reload();
  await page.getByRole('button', { name: /^Tally: class of/ }).click();
  await expect(page.getByText('Together: 2 of 2 predictions met.')).toBeVisible();
});

test('the learners’ window shows question and answer, and never what anyone predicted', async ({
  page,
  context,
}) => {
  await begin(page, ['Ada', 'Ben'], [unread]);
  const other = await context.newPage();
  await other.addInitScript(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    new BroadcastChannel('tarebook-class').addEventListener('message', ({ data }) => {
      heard.push(JSON.stringify(data));
    });
  });
  await other.goto('/#/class/learners');
  await expect(other.getByRole('heading', { level: 1 })).toContainText(unread);
  await expect(other.getByText('0 of 2 have committed.')).toBeVisible();
  // A window behind another one draws nothing, so that every press would wait for it.
  await page.bringToFront();
  await say(page, '1001.5 lb');
  await expect(other.getByText('1 of 2 have committed.')).toBeVisible();
  await expect(other.locator('#prediction, .came-out')).toHaveCount(0);
  await say(page, '1033.5 lb');
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  // How they guessed stands alone, with nothing that tells what came out.
  await expect(other.locator('guess-spread')).toContainText('2 answers.');
  await expect(other.locator('guess-spread')).toContainText('1,000 to 1,010 lb');
  await expect(other.locator('.came-out, .verdict, .limits, .guessed .right')).toHaveCount(0);
  await expect(other.locator('learners-view')).not.toContainText(
    /1,016|cannot be said|were right|a phone call away/,
  );
  const show = (step: string) => page.getByRole('button', { name: step, exact: true }).click();
  await show('The picture and the limit');
  await expect(other.locator('.verdict')).toContainText('cannot be said yet');
  await expect(other.locator('.came-out')).toContainText('1,016 lb');
  await expect(other.getByText('2 of 2 were right.')).toBeVisible();
  // Beside an open verdict stands the limit that is open.
  await expect(other.locator('.limits li')).toHaveCount(1);
  await expect(other.locator('.limits li')).toHaveClass('level-unknown');
  await expect(other.locator('learners-view')).not.toContainText('a phone call away');
  await show('The working');
  await expect(other.locator('.sums ol li').last()).toHaveText(
    /Payload used\s+620 lb \+ 396 lb = 1,016 lb/,
  );
  await expect(other.locator('learners-view')).not.toContainText('a phone call away');
  await show('Why');
  await expect(other.locator('learners-view')).toContainText('a phone call away');
  await page.getByLabel('Fact').selectOption('vehicle.placardPayload');
  await page.locator('#moved-to').fill('1200');
  await page.getByRole('button', { name: 'See' }).click();
  await expect(other.locator('.what-if')).toContainText('1,200 lb?');
  await expect(other.locator('.verdict')).not.toContainText('cannot be said yet');
  await expect(page.locator('what-if .verdict')).toBeVisible();
  // The trainer's window says what is on the wall.
  const why = page.getByRole('button', { name: 'Why', exact: true });
  await expect(page.getByRole('group', { name: 'On the wall' })).toContainText('what if');
  await expect(why).toHaveAttribute('aria-pressed', 'false');
  // A row of a list is moved as a fact is.
  await page.getByLabel('Fact').selectOption({ label: 'Caller: weight' });
  await page.locator('#moved-to').fill('250');
  await page.getByRole('button', { name: 'See' }).click();
  await expect(other.locator('.what-if')).toHaveText(
    /^What if payload on the door label were 1,200 lb and Caller were 250 lb\?$/i,
  );
  await page.locator('#moved-to').fill('a lot');
  await page.getByRole('button', { name: 'See' }).click();
  await expect(page.locator('what-if').getByRole('alert')).toContainText('a lot');
  await page.getByRole('button', { name: 'Back to the case' }).click();
  await expect(why).toHaveAttribute('aria-pressed', 'true');
  await expect(other.locator('learners-view')).toContainText('a phone call away');
  expect(await other.locator('body').textContent()).not.toMatch(/1001\.5|1033\.5|Ada|Ben/);
  const heard = await other.evaluate((): readonly string[] =>
    'heard' in window && Array.isArray(window.heard) ? window.heard : [],
  );
  const before = heard.filter((each) => each.includes('"open":false')).join();
  expect(before).toContain('committed');
  expect(before).not.toMatch(/1001\.5|1033\.5/);
  expect(heard.join()).not.toContain('Ada');
  await page.getByRole('button', { name: 'To the tally' }).click();
  // The wall ends with what all came to, and with nobody's name.
  await expect(other.getByRole('heading', { level: 1 })).toHaveText('That was the last case');
  await expect(other.getByText('Together: 2 of 2 predictions met.')).toBeVisible();
  expect(await other.locator('body').textContent()).not.toMatch(/Ada|Ben/);
  // On paper the tally stands by itself, and sheets of these very cases are had there.
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.masthead, page-foot, class-tally button').first()).toBeHidden();
  await expect(page.locator('page-foot')).toBeHidden();
  await expect(page.locator('class-tally table')).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset.printed = document.querySelector('class-paper')?.textContent ?? '';
    };
  });
  await page.getByRole('button', { name: 'Print worksheets' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-printed', /Afterward, what I had not/);
  await page.getByRole('button', { name: 'Print the key' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-printed', /a phone call away/);
});

test('the record is CSV that a general reader takes, names that look like formulas made harmless', {
  tag: '@once',
}, async ({ page }) => {
  await begin(page, ['=1+1', 'Ben "B" jr.'], [unread, ball]);
  await say(page, '1,003 lb');
  await say(page, '-20 lb');
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  await page.getByRole('button', { name: 'The next case' }).click();
  await page.getByRole('button', { name: 'End the class here' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the record as CSV' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toMatch(/^class-\d{4}-\d\d-\d\d\.csv$/);
  const rows: Record<string, string>[] = parse(await readFile(await file.path(), 'utf8'), {
    columns: true,
  });
  expect(
    rows.map((row) => [row.learner, row.prediction, row.difference, row.unit, row.met]),
  ).toEqual([
    ["'=1+1", '1,003 lb', '-13', 'lb', 'yes'],
    ['Ben "B" jr.', '-20 lb', '-1036', 'lb', 'no'],
  ]);
  expect(rows[0]).toMatchObject({
    case: 'payload-not-known',
    asked: 'payload.used',
    came_out: '1,016 lb',
    verdict: 'cannot say',
  });
});

test('a class is walked by keyboard alone', { tag: '@once' }, async ({ page }) => {
  await page.goto('/#/class');
  await expect(page.getByRole('checkbox').first()).toBeVisible();
  await page.getByRole('searchbox').focus();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('combobox', { name: 'About' })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await names(page).focus();
  await page.keyboard.type('Ada');
  for (const name of [/^Begin with/, 'Print worksheets and key', 'Print the key alone']) {
    await page.keyboard.press('Tab');
    await expect(page.getByRole('button', { name })).toBeFocused();
  }
  await page.getByRole('button', { name: /^Begin with/ }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('class-case h2').first()).toBeFocused();
  const word = await prediction(page).evaluate((field) => field instanceof HTMLSelectElement);
  for (let i = 0; i < 4; i += 1) {
    await page.keyboard.press('Tab');
    if (await prediction(page).evaluate((field) => field === document.activeElement)) break;
  }
  await expect(prediction(page)).toBeFocused();
  if (word) await page.keyboard.press('ArrowDown');
  else await page.keyboard.type('1000');
  await page.getByLabel('How sure').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Tab');
  await page.keyboard.type('The brochure says so');
  await page.keyboard.press('Enter');
  await expect(page.locator('.open-working')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(opened(page)).toBeFocused();
});

test('no state of a class has anything for axe to object to', async ({ page }) => {
  const clean = async (state: string) => {
    expect(await objections(page), state).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, `${state} scrolls sideways`).toBeLessThanOrEqual(0);
  };
  await page.goto('/#/class');
  await expect(page.getByRole('checkbox').first()).toBeVisible();
  await expect(page.locator('page-foot footer')).toBeVisible();
  await clean('setting up');
  await begin(page, ['Ada', 'Ben'], [unread, ball]);
  await clean('in progress');
  await say(page, 'nothing');
  await clean('with a mistake');
  await say(page, '1,003 lb');
  await say(page, '1,020 lb');
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  await clean('opened');
  await page.getByRole('button', { name: 'End the class here' }).click();
  await expect(page.getByText('Together: 2 of 2')).toBeVisible();
  await clean('tally');
  await page.getByRole('button', { name: 'To the lessons' }).click();
  await expect(page.getByText('Earlier classes')).toBeVisible();
  await clean('records');
  await page.goto('/#/class/learners');
  await expect(page.getByText('Waiting for the trainer')).toBeVisible();
  await clean('learners');
});

test('a learner guesses on a phone of their own, and the guess comes back read out or scanned', async ({
  page,
  context,
}) => {
  await begin(page, ['Ada', 'Ben'], [unread]);
  await page.getByText('Learners’ phones, by codes read out or scanned').click();
  await expect(page.locator('on-phones svg.code')).toBeVisible();
  // This very page stands at an address that is this machine alone.
  await expect(page.locator('on-phones .notice')).toContainText(
    'A phone cannot open this code: its address, “localhost”, is this machine alone. Let the learners in over the shop’s network',
  );
  const href = await page.getByRole('link', { name: /The link that opens/ }).getAttribute('href');
  const phone = await context.newPage();
  const guess = async (who: string, figure: string, why: string) => {
    await phone.goto('about:blank');
    await phone.goto(href ?? '');
    // One phone may go around; whoever had it last is known to it.
    const other = phone.getByRole('button', { name: 'Somebody else has this phone' });
    if (who === 'Ben') await other.click();
    await phone.getByRole('button', { name: who }).click();
    await expect(phone.getByRole('heading', { level: 1 })).toHaveText(unread);
    await phone.getByLabel('I say').fill(figure);
    await phone.getByLabel('How sure').selectOption('fairly sure');
    await phone.getByLabel('Because').fill(why);
    await phone.getByRole('button', { name: 'That is my guess' }).click();
    await expect(phone.locator('join-view svg.code')).toBeVisible();
    return (await phone.locator('.read-out').textContent()) ?? '';
  };
  const first = await guess('Ada', '1,003', '');
  await expect(phone.locator('join-view')).not.toContainText('a phone call away');
  const second = (await guess('Ben', '900', 'a/b: tongue')).replaceAll(' ', '');
  await page.bringToFront();
  await page.locator('#guess-code').fill(first.replace('1', '2'));
  await page.getByRole('button', { name: 'Note the guess' }).click();
  await expect(page.locator('#guess-code-wrong')).toContainText('ask for it once more');
  await page.locator('#guess-code').fill(first.toLowerCase());
  await page.getByRole('button', { name: 'Note the guess' }).click();
  await expect(page.getByText('Committed: 1 of 2.')).toBeVisible();
  // The trainer's device scans the other one: the code is an address of this very page.
  const id = await page.evaluate(
    () =>
      new Promise<string>((done) => {
        const open = indexedDB.open('tarebook');
        open.onsuccess = () => {
          const keys = open.result.transaction('classes').objectStore('classes').getAllKeys();
          keys.onsuccess = () => done(String(keys.result.at(-1)));
        };
      }),
  );
  await phone.goto(`/#/class/guess/${id}/${second}/${encodeURIComponent('a/b: tongue')}`);
  await expect(phone.getByText('Ben’s guess for case 1 is noted.')).toBeVisible();
  await expect(page.getByText('Committed: 2 of 2.')).toBeVisible();
  await page.bringToFront();
  await page.getByRole('button', { name: 'Open the working', exact: true }).click();
  await expect(page.getByRole('row', { name: /^Ben/ })).toContainText('fairly sure: a/b: tongue');
  await phone.goto(`/#/class/join/${(href ?? '').split('/').at(-1)?.slice(0, -4)}`);
  await expect(phone.getByRole('alert')).toContainText('ask for it once more');
});
