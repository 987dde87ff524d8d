import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test } from './page';

const start = async (page: Page, exercise: string, name: string, seed = 7) => {
  await page.goto('about:blank');
  await page.goto(`/#/class/practice/Ada/${exercise}/tow-fit/${name}/${seed}`);
  await expect(page.getByRole('heading', { level: 2 })).toBeFocused();
};
const clean = async (page: Page, state: string) => {
  expect(await objections(page), state).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over, `${state} scrolls sideways`).toBeLessThanOrEqual(0);
};
const kept = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<readonly { met: boolean; exercise: string; mistake?: string }[]>((done) => {
        const open = indexedDB.open('tarebook');
        open.onsuccess = () => {
          const all = open.result.transaction('practice').objectStore('practice').getAll();
          all.onsuccess = () => done(all.result);
        };
      }),
  );

test('of a case whose figures cannot be drawn anew it is said that they are the filed ones', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/class/practice/Ada/predict/house-battery/two-facts-twelve-point-two/7');
  await expect(page.getByText('The figures are those of the filed case')).toBeVisible();
});

test('what do you ask next: each answer comes when asked for, and the score names the rules’ own number', async ({
  page,
}) => {
  await start(page, 'ask', 'payload-before-rating');
  await expect(page.getByText('Asked so far: 0.')).toBeVisible();
  await expect(page.locator('practice-ask .verdict')).toHaveCount(0);
  await clean(page, 'asking');
  const asks = page.locator('.asks button');
  for (let left = await asks.count(); left > 0; left = await asks.count())
    await asks.last().click();
  // Then the verdict is asked, and how sure; nothing tells it before.
  await expect(page.locator('practice-ask .verdict')).toHaveCount(0);
  await expect(page.getByLabel('The verdict is')).toBeFocused();
  await clean(page, 'settled, and the verdict asked');
  await page.getByRole('button', { name: 'That is my answer' }).click();
  await expect(page.locator('practice-ask .error')).toHaveText(
    'It is settled; choose what the verdict is.',
  );
  await page.getByLabel('The verdict is').selectOption('fits');
  await page.getByLabel('How sure').selectOption('certain');
  await page.getByRole('button', { name: 'That is my answer' }).click();
  await expect(page.locator('.score')).toBeFocused();
  await expect(page.locator('.score')).toContainText(
    /You said fits, certain: it came out otherwise, /,
  );
  await expect(page.locator('.score')).toContainText(/Settled with \d+ question/);
  await expect(page.locator('practice-ask')).toContainText('The rules would have asked:');
  await expect(page.locator('practice-ask .verdict')).toBeVisible();
  await clean(page, 'settled');
  await expect.poll(async () => (await kept(page)).map((each) => each.exercise)).toEqual(['ask']);
});

test('say it aloud: what is missed is named, and counts as heard once it is said', async ({
  page,
}) => {
  await start(page, 'say', 'payload-before-rating');
  const say = async (sentence: string) => {
    await page.getByLabel('Say it to the customer').fill(sentence);
    await page.getByRole('button', { name: 'That is what I say' }).click();
  };
  await say('');
  await expect(page.locator('#said-wrong')).toContainText('Nothing is said yet');
  await say('That will be fine.');
  await expect(page.locator('.parts')).toContainText('A caution: missed');
  await clean(page, 'missed');
  await say('Not this one, I am afraid. Weigh the loaded rig on a public scale.');
  await expect(page.locator('.parts')).toContainText('A caution: said');
  await expect(page.locator('.parts')).toContainText('The verdict: said');
  await expect(page.locator('.parts')).toContainText('The limit that runs out first: missed');
  // The first try alone is taken down.
  await expect.poll(async () => (await kept(page)).map(({ met }) => met)).toEqual([false]);
});

test('the wrong figure: of several lines one is chosen, and the right result is told', {
  tag: '@once',
}, async ({ page }) => {
  await start(page, 'spot', 'payload-before-rating', 3);
  const lines = page.locator('.lines li');
  expect(await lines.count()).toBeGreaterThanOrEqual(3);
  await clean(page, 'choosing');
  await lines.first().getByRole('button').click();
  await expect(page.locator('.score')).toBeFocused();
  await expect(page.locator('.score')).toContainText(/comes to .+, and .+ stood there/);
  await expect(page.locator('.the-wrong')).toHaveCount(1);
  await expect(lines.first().getByRole('button')).toBeDisabled();
  await page.getByRole('button', { name: 'Another one' }).last().click();
  await expect(page.locator('.score')).toHaveCount(0);
  await expect(lines.first().getByRole('button')).toBeEnabled();
});

test('predict: fresh figures by the seed, and a mistake is called by its name', {
  tag: '@once',
}, async ({ page }) => {
  await start(page, 'predict', 'payload-not-known', 7);
  const figures = () => page.locator('practice-predict table').first().textContent();
  const first = await figures();
  await start(page, 'predict', 'payload-not-known', 8);
  expect(await figures()).not.toBe(first);
  await start(page, 'predict', 'payload-not-known', 7);
  expect(await figures()).toBe(first);
  // Without people, cargo and hitch only the loaded tongue is left: its sticker and a tenth.
  const tongue = /Dry tongue weight\s*([\d,]+)\slb/.exec(first ?? '')?.[1] ?? '';
  await page.getByLabel('I say').fill(String(Number(tongue.replace(',', '')) * 1.1));
  await page.getByRole('button', { name: 'That is my guess' }).click();
  await expect(page.locator('.score')).toBeFocused();
  await expect(page.locator('.score')).toContainText('payload forgotten');
  await clean(page, 'predicted');
  await expect
    .poll(async () => (await kept(page)).map(({ met, mistake }) => ({ met, mistake })))
    .toEqual([{ met: false, mistake: 'payload' }]);
});

test('an exercise that is long in the making says so, is stopped, and comes when asked for again', {
  tag: '@once',
}, async ({ page }) => {
  let letGo = (): void => undefined;
  const gone = new Promise<void>((done) => {
    letGo = done;
  });
  await page.context().route(/\/exercise-made-[^/]*\.js$/, async (route) => {
    await gone;
    await route.continue();
  });
  await page.goto('/#/class/practice');
  const stop = page.getByRole('button', { name: 'Stop' });
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByText('Drawing up an exercise …')).toBeVisible();
  await stop.click();
  await expect(page.getByText('Drawing up an exercise …')).toHaveCount(0);
  await expect(stop).toHaveCount(0);
  letGo();
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByRole('heading', { level: 2 })).toBeFocused();
  await expect(stop).toHaveCount(0);
});
