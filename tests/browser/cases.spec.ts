import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, fact, openCase, test, verdict } from './page';
import { isStored } from './stored';

const crossover = 'crossover-and-single-axle';

const own = (page: Page) => page.locator('.own li:not(.gone)');
const row = (page: Page, title: string) => page.locator('.cases li').filter({ hasText: title });
const topic = (page: Page, title: RegExp) =>
  page.locator('case-fold').filter({ has: page.getByRole('heading', { name: title }) });

async function startBlank(page: Page): Promise<void> {
  await page.goto('/#/cases');
  await page.getByRole('button', { name: 'Start a blank case' }).click();
  await expect(verdict(page)).toHaveText('Cannot say');
  await isStored(page, /tow-fit\/mine-/);
}

test('the list of cases judges nothing, and says of each what the case itself says', async ({
  page,
}) => {
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto('/#/cases');
  await topic(page, /Tow fit$/)
    .locator('summary')
    .click();
  const link = page.getByRole('link', { name: 'Four people, a dog, and a crossover' });
  await expect(link).toBeVisible();
  expect(requests.length).toBeLessThan(40);
  expect(requests.filter((url) => /tow-fit|worker|yaml|parse/.test(url))).toEqual([]);
  const said = await row(page, 'Four people, a dog, and a crossover')
    .locator('.word-of')
    .textContent();
  await link.click();
  await expect(verdict(page)).toHaveText(new RegExp(`^${said}$`, 'i'));
});

test('one’s own cases stand first, with their verdict; named, copied, deleted, put back', async ({
  page,
}) => {
  await startBlank(page);
  await page.goto('/#/cases');
  await expect(own(page)).toHaveCount(1);
  await expect(own(page).locator('.word-of')).toHaveText('cannot say');
  await own(page)
    .getByRole('button', { name: /^Rename/ })
    .click();
  await expect(page.getByLabel('Name', { exact: true })).toBeFocused();
  await page.keyboard.type('Ada: the van');
  await page.keyboard.press('Enter');
  await expect(own(page).getByRole('link')).toHaveText('Ada: the van');
  await own(page).getByRole('button', { name: /^Copy/ }).click();
  await expect(own(page).getByRole('link')).toHaveText(['Ada: the van', 'Ada: the van, copy']);
  expect(await objections(page)).toEqual([]);
  await row(page, 'Ada: the van, copy')
    .getByRole('button', { name: /^Delete/ })
    .click();
  await expect(own(page)).toHaveCount(1);
  await expect(page.locator('.gone')).toContainText('“Ada: the van, copy” is deleted.');
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeFocused();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(own(page)).toHaveCount(2);
  await page.reload();
  await expect(own(page)).toHaveCount(2);
  await own(page).getByRole('link', { name: 'Ada: the van', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ada: the van');
});

test('a worked case that was changed stands among one’s own, judged as it stands, and goes back', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, 'vehicle.placardPayload').fill('1,100');
  await expect(verdict(page)).toHaveText('Does not fit');
  await isStored(page, '1,100 lb');
  await page.goto('/#/cases');
  await expect(own(page)).toContainText('changed by you');
  await expect(own(page).locator('.word-of')).toHaveText('does not fit');
  await own(page)
    .getByRole('button', { name: /^Put back/ })
    .click();
  await expect(own(page)).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(own(page).locator('.word-of')).toHaveText('does not fit');
});

test('a whole question finds what it is about, in the words that people use', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/cases');
  await page
    .getByLabel(/Find a case/)
    .fill('Hi, can I run my griddle off the quick connect under the trailer?');
  const hits = page.locator('.cases li');
  await expect(hits.first()).toContainText('Gas supply');
  await expect(hits.first().locator('.word-of')).not.toHaveText('…');
  await page.getByLabel(/Find a case/).fill('zeppelin');
  await expect(page.getByText('No case has “zeppelin”.')).toBeVisible();
});

test('two thousand cases of one’s own are listed at once, and only what is seen is drawn', {
  tag: '@once',
}, async ({ page }) => {
  await startBlank(page);
  await page.goto('/#/class');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.evaluate(async () => {
    const opened = indexedDB.open('tarebook');
    await new Promise((done) => {
      opened.onsuccess = done;
    });
    const write = opened.result.transaction('cases', 'readwrite');
    const store = write.objectStore('cases');
    const first = store.getAll();
    await new Promise((done) => {
      first.onsuccess = done;
    });
    const [{ topic, text }] = first.result;
    for (let i = 0; i < 2000; i += 1) {
      const named = text.replace(/^title: .*$/m, `title: Call ${i}`);
      store.put({ topic, name: `call-${i}`, text: named, at: i }, `${topic}/call-${i}`);
    }
    await new Promise((done) => {
      write.oncomplete = done;
    });
    opened.result.close();
  });
  await page.evaluate(() => {
    performance.mark('asked');
    location.hash = '#/cases';
  });
  await expect(page.getByRole('button', { name: 'Show more of the 2001' })).toBeVisible();
  const took = await page.evaluate(async () => {
    const shown = document.querySelector('.own li a');
    return shown
      ? performance.now() - (performance.getEntriesByName('asked')[0]?.startTime ?? 0)
      : Infinity;
  });
  expect(took).toBeLessThan(3000);
  expect(await own(page).count()).toBeLessThan(20);
  await page.getByLabel(/Find a case/).fill('call 1777');
  await expect(page.locator('.cases li').first()).toContainText('Call 1777');
});

test('the notes stand below the cases, and open', async ({ page }) => {
  await page.goto('/#/cases');
  await topic(page, /Notes$/)
    .locator('summary')
    .click();
  const first = topic(page, /Notes$/)
    .getByRole('link')
    .first();
  const title = (await first.textContent()) ?? '';
  await first.click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
});
