import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';
import { textOfPdf } from './pdf-text';

const bunch = `# Phone
Smell of gas by the stove, what do we do? Call me at 555-0142.

# Comments under the towing film
Dale R., Nov 27
Can I tow 3,900 lb dry with a crossover rated 5,000 lb? Door label says payload 1,100 lb.

Wren, Nov 27
What tire pressure should I run?

Ike, Nov 27
What tire pressure should I run cold?

# Counter
Do I get my deposit back?
`;

const entries = (page: Page) => page.locator('asked-entry');
const box = (page: Page) => page.getByLabel('Paste what came in, from all sides');

async function paste(page: Page, text: string): Promise<void> {
  await box(page).fill(text);
  await page.getByRole('button', { name: 'Take them in' }).click();
}

test('a pasted bunch is read: urgent first, repeats together, each with its answer; and is kept', async ({
  page,
  context,
  browserName,
}) => {
  expect(browserName).toBe('chromium');
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/#/questions');
  await paste(page, ' -- ');
  await expect(page.locator('#bunch-wrong')).toContainText('no words here yet');
  await paste(page, bunch);
  await expect(page.getByText('5 messages were taken in.')).toBeVisible();
  await expect(box(page)).toHaveValue('');
  await expect(entries(page)).toHaveCount(4);
  const at = (place: number) => entries(page).nth(place);
  const [gas, tow, tires, deposit] = [at(0), at(1), at(2), at(3)];
  await expect(gas).toContainText('Urgent: gas.');
  await expect(gas.getByLabel('First reply')).toHaveValue(/^Everybody out now\./);
  await expect(gas.locator('.asked-personal')).toHaveText(['555-0142']);
  await expect(tow.getByRole('combobox')).toHaveValue('tow-fit');
  await expect(tow).toContainText('Comments under the towing film, Nov 27');
  await expect(tow.locator('.asked-fact').first()).toBeVisible();
  await expect(tow.getByLabel(/^Answer: /)).not.toHaveValue('');
  await tow.getByRole('button', { name: 'To hand on' }).click();
  await expect(tow.getByLabel('Answer: To hand on')).toHaveValue(/3,?900 lb/);
  await expect(tires).toContainText('Asked 2 times');
  await expect(tires.getByLabel('Answer: In short')).toHaveValue(/\w+/);
  const said = await tires.getByLabel('Answer: In short').inputValue();
  await tires.getByRole('button', { name: 'Copy' }).click();
  // What has left gets out of the way, and whoever asked the same after it is next.
  await expect(tires).toContainText('Done: What tire pressure should I run?');
  await expect(tires.getByRole('textbox')).toHaveCount(0);
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(said);
  await expect(entries(page)).toHaveCount(5);
  await expect(deposit).toContainText('What tire pressure should I run cold?');
  // What was answered stands beside the question, for whoever asks it again.
  await expect(deposit).toContainText(/Answered on \d{4}-\d{2}-\d{2}/);
  await deposit.getByRole('button', { name: 'Done', exact: true }).click();
  await expect(deposit).toContainText('Do I get my deposit back?');
  await deposit.getByRole('combobox').selectOption('note/how-a-deposit-works');
  await expect(deposit.getByLabel('Answer: In short')).toHaveValue(/deposit/i);
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);

  await page.reload();
  // What is done stands below, one line each.
  await expect(page.getByRole('heading', { name: '3 open, 1 urgent, 2 done' })).toBeVisible();
  await expect(at(2).getByRole('combobox')).toHaveValue('note/how-a-deposit-works');
  await paste(page, bunch);
  await expect(page.getByText('0 messages were taken in, 5 were here already.')).toBeVisible();

  await page.getByRole('link', { name: 'What was answered' }).click();
  const given = page.locator('.given');
  await expect(given).toHaveCount(1);
  await expect(given).toContainText('What tire pressure should I run?');
  await expect(given).toContainText(/short · tires \d/);
  await page.getByRole('button', { name: 'What would we say today?' }).click();
  await expect(page.getByText('All 1 hold as they were given.')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save for a colleague' }).click();
  const ledger = JSON.parse(await readFile(await (await saving).path(), 'utf8'));
  const [entry] = ledger.entries;
  const theirs = { ...ledger, entries: [{ ...entry, by: 'Ines', text: 'Sixty-five.' }] };
  const file = (text: string) => ({
    ...{ name: 'ines.json', mimeType: 'application/json', buffer: Buffer.from(text) },
  });
  const open = page.getByLabel('Take in a colleague’s file');
  await open.setInputFiles(file('{"version":1,"entries":[{}]}'));
  await expect(page.getByRole('alert')).toContainText('ines.json: Nothing was taken in.');
  await open.setInputFiles(file(JSON.stringify(theirs)));
  await expect(page.getByText('1 of your colleague’s answers were taken in')).toBeVisible();
  await expect(given).toHaveCount(2);
  await expect(given.filter({ hasText: 'Ines' })).toHaveCount(1);
  expect(await objections(page)).toEqual([]);

  await page.goto('/#/today');
  const hand = page.getByRole('region', { name: 'Questions' });
  await expect(hand).toContainText('Smell of gas by the stove');
  await expect(hand).not.toContainText('555-0142');
});

test('a form of answer that is chosen belongs to its question alone, here and in the round', async ({
  page,
}) => {
  await page.goto('/#/questions');
  const others = ['Can I tow 4,000 lb?', 'Can it pull 5,200 lb?'];
  await paste(
    page,
    [
      'What tire pressure should I run?',
      'How often do I repack the wheel bearings?',
      ...others,
    ].join('\n\n'),
  );
  const bearings = entries(page).nth(1);
  const tires = entries(page).nth(0);
  await expect(bearings.getByLabel('Answer: In short')).not.toHaveValue('');
  await expect(tires.getByLabel('Answer: In short')).not.toHaveValue('');
  const said = await tires.getByLabel('Answer: In short').inputValue();
  for (const form of ['With the working', 'Ask back', 'To everybody', 'On the phone']) {
    await bearings.getByRole('button', { name: form, exact: true }).click();
    await expect(bearings.getByLabel(`Answer: ${form}`)).not.toHaveValue('');
    await expect(tires.getByLabel('Answer: In short')).toHaveValue(said);
  }
  const aloud = await bearings.getByLabel('Answer: On the phone').inputValue();
  await page.reload();
  await expect(bearings.getByLabel('Answer: On the phone')).toHaveValue(aloud);
  await expect(tires.getByLabel('Answer: In short')).toHaveValue(said);
  await page.getByRole('button', { name: 'Make a round of what has an answer' }).click();
  await expect(page.getByLabel(/^Answer \d+$/)).toHaveCount(4);
  const answers = await page
    .getByLabel(/^Answer \d+$/)
    .evaluateAll((fields) =>
      fields.map((field) => (field instanceof HTMLTextAreaElement ? field.value : '')),
    );
  expect(answers).toContain(aloud);
  expect(answers).toContain(said);
});

/** Twenty messages as they stand in five places on a morning at Sallowbridge Trailers; all invented. */
const morning = `# Phone
Ruth, calls back at noon: can her wagon rated 3,500 lb pull a trailer of 2,900 lb dry?
---
It gets down to 20 degrees tonight and the trailer is full of water, what now?
---
Is the pass over Marrow Ridge open for trailers?
---
How often do I repack the wheel bearings?

# Mail
From: Ada Pell <ada@example.org>
Date: Fri, 27 Nov 2026
Subject: House battery

How long does a 100 Ah lithium battery last with the furnace on at night?


From: Ike Marsh <ike@example.org>
Subject: Outlet

Could you put an outlet by the bed?


From: Noor <noor@example.org>
Subject: Deposit

Do I get the deposit back if my truck turns out too small?


# Comments under the towing film
Dale R., Nov 27
Can I tow 3,900 lb dry with a crossover rated 5,000 lb? Door label says payload 1,100 lb.

Wren, Nov 27
What tire pressure should I run?

Ossie, Nov 27
what tire pressure should i run on my trailer tires

Finn B., Nov 27
My trailer sways behind the truck on the highway, what helps?

Lark, Nov 27
Does a weight distribution hitch raise my payload?

# Counter
- How many days can we stay off grid with 200 Ah and no sun?
- Which surge protector do I need on a 30 amp pedestal?
- What spares should we carry on a long trip?
- Can you winterize it for us?

# Text
[11/27/2026, 9:14 AM] Jo: u open on saturday?
[11/27/2026, 9:20 AM] Kit: how long do 2 twenty lb propane cylinders last w the furnace on
[11/27/2026, 9:31 AM] Bea: how do i keep my trailer from being stolen at the campground
[11/27/2026, 9:40 AM] Sol: is a used trailer with a soft spot in the floor worth it?
`;

/**
 * Seconds of a person for one action: to think of it, to point and to press (Card, Moran and Newell 1980,
 * keystroke-level model: M 1.35, P 1.1, K 0.2), as remembered; and words read silently in a minute
 * (Brysbaert 2019: 238), as remembered.
 */
const secondsAnAction = 1.35 + 1.1 + 0.2;
const wordsAMinute = 238;

test('twenty messages from five channels become a printed running sheet, with few actions', async ({
  page,
}) => {
  test.slow();
  let actions = 0;
  const act = async (doing: Promise<unknown>): Promise<void> => {
    actions += 1;
    await doing;
  };
  await page.goto('/#/questions');
  const began = Date.now();
  await act(box(page).fill(morning));
  await act(page.getByRole('button', { name: 'Take them in' }).click());
  await expect(page.getByText('20 messages were taken in.')).toBeVisible();
  await expect(page.getByText('Reading:')).toHaveCount(0);
  await expect(entries(page)).toHaveCount(19);
  await expect(entries(page).first()).toContainText('Urgent: frost is near.');
  // What no rules decide is answered with the note that is nearest, or in one's own words.
  for (const [asks, note] of [
    ['Is the pass over Marrow Ridge open', 'note/is-the-pass-open'],
    ['an outlet by the bed', 'note/an-outlet-by-the-bed'],
    ['Do I get the deposit back', 'note/how-a-deposit-works'],
    ['Can you winterize it for us', 'note/winterizing-by-us'],
    ['u open on saturday', 'note/when-we-are-open'],
  ] as const) {
    const part = page.locator('asked-part').filter({ hasText: asks }).first();
    await act(part.getByRole('combobox').selectOption(note));
    await expect(part.getByLabel('Answer: In short')).not.toHaveValue('');
  }
  await act(page.getByRole('button', { name: 'Make a round of what has an answer' }).click());
  const items = page.locator('.round-item');
  await expect(items.first()).toBeVisible();
  const count = await items.count();
  expect(count).toBeGreaterThanOrEqual(12);
  await act(page.getByRole('button', { name: 'Later: question 1', exact: true }).click());
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  await act(page.getByRole('button', { name: 'Print the running sheet' }).click());
  await expect(page.locator('body')).toHaveAttribute('data-printed', 'yes');
  // Whoever does it reads every message as it came, and every question and answer that is spoken.
  const read = await page
    .locator('.round-item textarea')
    .evaluateAll((fields) =>
      fields.map((field) => (field instanceof HTMLTextAreaElement ? field.value : '')).join(' '),
    );
  const words = `${morning} ${read}`.split(/\s+/).length;
  const waited = (Date.now() - began) / 60_000;
  const minutes = waited + words / wordsAMinute + (actions * secondsAnAction) / 60;
  const watch = `${actions} actions for ${count} questions in the round, of 20 messages; ${words} words; ${minutes.toFixed(1)} minutes, ${waited.toFixed(1)} of them the page`;
  test.info().annotations.push({ type: 'watch', description: watch });
  if (process.env.TAREBOOK_WATCH) console.log(watch);
  expect(actions).toBeLessThanOrEqual(6 * 20);
  expect(actions / count).toBeLessThanOrEqual(6);
  expect(minutes).toBeLessThan(15);

  const asks = await page
    .getByLabel(/^Question \d+$/)
    .evaluateAll((fields) =>
      fields.map((field) => (field instanceof HTMLTextAreaElement ? field.value : '')),
    );
  const { pages, text } = textOfPdf(await page.pdf({ format: 'Letter' }));
  // Each answer to everybody is up to 190 words; four of them fill a page.
  expect(pages).toBeLessThanOrEqual(5);
  const plain = text.replace(/\s+/g, '');
  for (const each of asks) expect(plain).toContain(each.slice(0, 24).replace(/\s+/g, ''));
  expect(plain).not.toContain('DaleR');
  expect(plain).not.toContain('Savewhat');
  // Where else one may go is no part of a sheet.
  expect(plain).not.toContain('Whatisaskedmost');

  // What is found out by one person is not said to all, and brackets are not spoken.
  expect(read).not.toContain('Find out next');
  await page.getByRole('link', { name: 'What was asked', exact: true }).click();
  await expect(page.getByText(/^\d+ of the \d+ open are in the round\.$/)).toBeVisible();
  // What was said when they were taken in is past.
  await expect(page.getByText('20 messages were taken in.')).toHaveCount(0);
  await page.getByRole('link', { name: /^The round/ }).click();
  await page.reload();
  await expect(items).toHaveCount(count);
  expect(await objections(page)).toEqual([]);
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
  ).toBeLessThanOrEqual(0);

  await page.getByRole('link', { name: 'Speak from the screen' }).click();
  const spoken = page.getByRole('region', { name: 'What is spoken' });
  await expect(spoken).toContainText('Welcome.');
  await page.keyboard.press('ArrowRight');
  await expect(spoken).toContainText(`1 of ${count}`);
  await expect(spoken).toContainText(asks[0] ?? 'nothing');
  await page.waitForTimeout(1100);
  // A long answer goes on by screens, and only then comes the next.
  await expect(async () => {
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(spoken).toContainText(`2 of ${count}`, { timeout: 500 });
  }).toPass();
  await page.keyboard.press('PageUp');
  await expect(spoken).toContainText(`1 of ${count}`);
  expect(
    await page
      .locator('.prompter-text')
      .evaluate((at) => Number.parseFloat(getComputedStyle(at).fontSize)),
  ).toBeGreaterThanOrEqual(27);
  await page.keyboard.press('Escape');
  await expect(page.locator('.round-chapters li').nth(1)).toContainText(/0:(?:0[1-9]|[1-9]\d)/);
});
