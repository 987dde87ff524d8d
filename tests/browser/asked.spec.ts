import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const morning = `# Phone
Smell of gas by the stove, what do we do?

# Comments under the towing film
Dale R., Nov 27
Can I tow 3,900 lb dry with a crossover rated 5,000 lb? Door label says payload 1,100 lb.

Wren, Nov 27
What tire pressure should I run?

Ike, Nov 27
What tire pressure should I run cold?

# Counter
How often do I repack the wheel bearings?
`;
const mistake = `# Mail
Bread, milk and eggs from the store

Call the plumber about the sink at home

Which ball height do we need for a coupler at 18 inches?
`;

const entries = (page: Page) => page.locator('asked-entry');
const entry = (page: Page, words: string) => entries(page).filter({ hasText: words }).first();

async function paste(page: Page, text: string): Promise<void> {
  await page.getByLabel('Paste what came in, from all sides').fill(text);
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText(/messages were taken in/)).toBeVisible();
  await expect(page.getByText('Reading:')).toHaveCount(0);
}

test('a paste that was a mistake goes out again, nothing else with it, and comes back', async ({
  page,
}) => {
  await page.goto('/#/questions');
  await paste(page, morning);
  await entry(page, 'repack the wheel bearings')
    .getByRole('button', { name: 'Done', exact: true })
    .click();
  await paste(page, mistake);
  await expect(entry(page, 'Bread, milk')).toBeVisible();
  // One of them has been answered: it stays.
  const ball = entry(page, 'Which ball height');
  await ball.getByLabel(/^Answer: /).fill('Eighteen and a half.');
  await ball.getByLabel(/^Answer: /).blur();
  await page.getByRole('button', { name: 'Take the last 2 messages out again' }).click();
  await expect(
    page.getByText(/^2 messages were taken out\. 1 of the same paste stays/),
  ).toBeVisible();
  await expect(entry(page, 'Bread, milk')).toHaveCount(0);
  await expect(ball).toBeVisible();
  await expect(entry(page, 'Smell of gas')).toBeVisible();
  await expect(page.getByRole('heading', { name: /1 done/ })).toBeVisible();

  await page.reload();
  await expect(ball.getByLabel(/^Answer: /)).toHaveValue('Eighteen and a half.');
  await expect(entry(page, 'Bread, milk')).toHaveCount(0);

  // One message by itself, and back again, even after a turn to another page and another load.
  const dale = entry(page, 'Can I tow 3,900 lb');
  await dale.getByRole('button', { name: 'Correct' }).click();
  await page.getByRole('button', { name: 'Take this message out' }).click();
  await expect(dale).toHaveCount(0);
  await page.getByRole('link', { name: 'What was answered' }).click();
  await page.getByRole('link', { name: 'What was asked' }).click();
  await page.reload();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByText('1 message was brought back.')).toBeVisible();
  await expect(dale.locator('.asked-fact').first()).toBeVisible();
  await page.reload();
  await expect(dale).toBeVisible();
});

test('what is done is out of the way, and no repeat is under it', async ({ page }) => {
  await page.goto('/#/questions');
  await paste(page, morning);
  await expect(page.getByRole('heading', { name: '4 open, 1 urgent' })).toBeVisible();
  const tires = entry(page, 'What tire pressure should I run?');
  await expect(tires).toContainText('Asked 2 times');
  await tires.getByRole('button', { name: 'Done', exact: true }).click();
  await expect(tires).toContainText('Done: What tire pressure should I run?');
  await expect(tires.getByRole('button', { name: 'Show' })).toBeFocused();
  const next = entries(page).nth(3);
  await expect(next).toContainText('What tire pressure should I run cold?');
  // Both in one look, whatever comes in above them: the next one stands right below the fold.
  const { height, gap } = await entries(page).evaluateAll((all) => {
    const [fold, after] = all.slice(2, 4).map((each) => each.getBoundingClientRect());
    return { height: fold?.height ?? 999, gap: (after?.top ?? 999) - (fold?.bottom ?? 0) };
  });
  expect(height).toBeLessThan(160);
  expect(gap).toBeLessThan(40);
  await expect(page.getByRole('heading', { name: '4 open, 1 urgent, 1 done' })).toBeVisible();

  const gas = entry(page, 'Smell of gas');
  await gas.getByRole('button', { name: 'Done', exact: true }).click();
  await expect(page.getByRole('heading', { name: '3 open, 2 done' })).toBeVisible();
  const before = page.locator('.asked-done');
  await before.locator('summary').first().click();
  await before.getByRole('button', { name: 'Show' }).click();
  await expect(before.getByLabel(/^Answer: /)).toBeVisible();
  await before.getByRole('button', { name: 'Open again' }).click();
  await expect(page.getByRole('heading', { name: '3 open, 1 done' })).toBeVisible();
  await expect(tires).toContainText('Asked 2 times');
  await tires.getByRole('button', { name: 'Done, all 2' }).click();
  await expect(page.getByRole('heading', { name: '2 open, 3 done' })).toBeVisible();
  expect(await objections(page)).toEqual([]);

  await page.getByRole('button', { name: 'To the top' }).click();
  await expect(page.getByRole('heading', { name: 'Questions', exact: true })).toBeFocused();
  expect(await page.evaluate(() => scrollY)).toBe(0);
});

test('why it is urgent is told; a person lifts it, and puts it back', async ({ page }) => {
  await page.goto('/#/questions');
  await paste(page, morning);
  const gas = entry(page, 'Smell of gas');
  await expect(gas).toContainText('Urgent: gas. It says “smell … gas”.');
  await gas.getByRole('button', { name: 'It is not urgent' }).click();
  await expect(page.getByRole('heading', { name: '4 open', exact: true })).toBeVisible();
  await expect(gas).toContainText(
    'Read as urgent, gas; you said it is not. It says “smell … gas”.',
  );
  await expect(gas.getByLabel('First reply')).toHaveCount(0);
  await page.reload();
  await expect(gas).toContainText('you said it is not');
  await gas.getByRole('button', { name: 'Urgent after all' }).click();
  await expect(gas).toContainText('Urgent: gas.');
  await expect(page.getByRole('heading', { name: '4 open, 1 urgent' })).toBeVisible();
  await page.goto('/#/today');
  await expect(page.getByRole('region', { name: 'Questions' })).toContainText('Urgent');
});

test('a fact is set right by a touch, and the form of an answer is that of its question alone', async ({
  page,
}) => {
  await page.goto('/#/questions');
  await paste(
    page,
    `${morning}\n# Text\nWhich ball height do we need for a coupler at 18 inches?\n\n# Mail\nHow often do I grease the jack?\n`,
  );
  const dale = entry(page, 'Can I tow 3,900 lb');
  const fact = dale.locator('.asked-fact', { hasText: '3,900 lb dry' });
  await fact.click();
  const field = dale.getByLabel('Dry weight');
  await expect(field).toBeFocused();
  await field.fill('heavy');
  await dale.getByRole('button', { name: 'Take it so' }).click();
  await expect(dale.getByRole('alert')).toContainText('Dry weight: “heavy” is no number');
  await field.fill('4100');
  await dale.getByRole('button', { name: 'Take it so' }).click();
  await expect(dale).toContainText('Dry weight: 4100 lb, set right by hand');
  await expect(fact).toBeFocused();
  await page.reload();
  await expect(dale).toContainText('Dry weight: 4100 lb, set right by hand');
  await dale.getByRole('button', { name: 'To hand on' }).click();
  await expect(dale.getByLabel('Answer: To hand on')).toHaveValue(/4,?100 lb/);
  await fact.click();
  await dale.getByRole('button', { name: 'As it was read' }).click();
  await expect(dale).toContainText('Dry weight: 3900 lb');
  await fact.click();
  await dale.getByRole('button', { name: 'Leave it out' }).click();
  await expect(fact).toHaveAttribute('aria-pressed', 'false');
  await expect(dale).not.toContainText('Dry weight');

  // Where the same form would fit, the one that was chosen stands; to hand on is for one alone.
  const tires = entry(page, 'What tire pressure should I run?');
  await tires.getByRole('button', { name: 'On the phone' }).click();
  await expect(tires.getByLabel('Answer: On the phone')).toHaveValue(/\w/);
  await tires.getByRole('button', { name: 'Done', exact: true }).click();
  const ike = entry(page, 'What tire pressure should I run cold?');
  // The form that was chosen there belongs to that question alone.
  await expect(ike.getByLabel('Answer: In short')).toHaveValue(/\w/);
  await page.reload();
  await expect(ike.getByLabel('Answer: In short')).toHaveValue(/\w/);
  expect(await objections(page)).toEqual([]);
});

test('an answer says which figures it does not use, and a chat keeps its names apart', async ({
  page,
}) => {
  await page.goto('/#/questions');
  await paste(
    page,
    `# Chat
Kenji: Can I put a rack and two e-bikes at 62 lb each on the back?
Sallowbridge: Hello, we will look at that.
Kenji: My wagon is rated for 3,500 lb.`,
  );
  const kenji = entry(page, 'two e-bikes');
  await expect(kenji.locator('.asked-personal').first()).toHaveText('Kenji');
  await expect(kenji.locator('.asked-words').first()).not.toContainText('Kenji');
  await expect(kenji.locator('.asked-beside').first()).toContainText('the 62 lb');
});

test('two that were read as one question are taken apart; weights are set right, each by itself', async ({
  page,
}) => {
  await page.goto('/#/questions');
  await paste(
    page,
    `# Mail
What tire pressure should I run?

What tire pressure should I run cold?

Door sticker says 1,480 lb payload. Me and the wife are 390 together, dog 60. Tongue weight is listed 620 lb. Am I over?

whats the tongue weight supposed to be on a 4200 lb trailer?
`,
  );
  const tires = entry(page, 'What tire pressure should I run?');
  await tires.getByText('Asked 2 times').click();
  await tires.getByRole('button', { name: 'Not the same' }).click();
  await expect(tires).not.toContainText('Asked 2 times');
  const cold = entry(page, 'should I run cold?');
  await expect(cold.getByLabel(/^Answer: /)).not.toHaveValue('');
  await cold.getByRole('button', { name: 'The same after all' }).click();
  await expect(tires).toContainText('Asked 2 times');

  const over = entry(page, 'Am I over?');
  await expect(over.getByLabel('Answer: In short')).toHaveValue(/^In the vehicle 348 lb may/);
  await over.getByRole('button', { name: /Driver 195 lb/ }).click();
  await over.getByLabel('Dog').fill('160');
  await over.getByRole('button', { name: 'Take it so' }).click();
  await expect(over.getByRole('button', { name: /Dog 160 lb/ })).toBeVisible();
  await expect(over.getByLabel('Answer: In short')).toHaveValue(/^In the vehicle 248 lb may/);

  const which = entry(page, '4200 lb trailer');
  await expect(which.getByLabel('Answer: In short')).toHaveValue(/^If 4,200 lb is the dry weight:/);
  await which.getByRole('button', { name: 'It is the dry weight' }).click();
  await expect(which.getByLabel('Answer: In short')).toHaveValue(/^A trailer of 4,200 lb empty/);
  await page.reload();
  // Once it is answered nothing more is asked of it, but that it may be asked again.
  await expect(which).toContainText('Dry weight: 4200 lb, set right by hand');
  await expect(which.getByRole('button', { name: /^It is / })).toHaveCount(0);
  await which.getByRole('button', { name: 'Ask again what 4,200 lb is' }).click();
  await expect(which.getByRole('button', { name: /^It is / })).toHaveCount(2);
  await expect(which.getByLabel('Answer: In short')).toHaveValue(/^If 4,200 lb is the dry weight:/);
  await which.getByRole('button', { name: 'It is the dry weight' }).click();
  await expect(which.getByRole('button', { name: /^It is / })).toHaveCount(0);
  expect(await objections(page)).toEqual([]);
});

test('the prompter moves by itself: from the opening on, and to the next', async ({ page }) => {
  await page.goto('/#/questions');
  await paste(page, '# Mail\nHow often do I grease the jack?\n\n# Text\nAre you open on Sunday?\n');
  for (const words of ['grease the jack', 'open on Sunday']) {
    const asked = entry(page, words);
    await asked.getByRole('combobox').selectOption('none');
    const field = asked.getByLabel('Answer: In your own words');
    await field.fill('Twice a year.');
    // Whatever is drawn anew meanwhile, what is being typed stays.
    await asked.locator('part-answer').evaluate((part: Element & { requestUpdate?(): void }) => {
      part.requestUpdate?.();
      return new Promise(requestAnimationFrame);
    });
    await expect(field).toHaveValue('Twice a year.');
    await field.blur();
    await asked.getByRole('button', { name: 'Speak it' }).click();
    await expect(asked.getByRole('button', { name: 'In the round' })).toBeVisible();
  }
  await page.getByRole('link', { name: 'The round, 2' }).click();
  await page.getByLabel('words a minute').fill('300');
  await page.getByLabel('words a minute').blur();
  await page.getByRole('link', { name: 'Speak from the screen' }).click();
  const spoken = page.getByRole('region', { name: 'What is spoken' });
  await expect(spoken).toContainText('Opening');
  await page.getByRole('button', { name: 'Move by itself' }).click();
  await expect(spoken).toContainText('1 of 2');
  await expect(spoken).toContainText('2 of 2');
  await expect(spoken).toContainText('Closing');
  await expect(page.getByRole('button', { name: 'Move by itself' })).toBeVisible();
});
