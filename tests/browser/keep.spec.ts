import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { openSend, post, shut } from './leaving';
import { expect, fact, openCase, test, verdict } from './page';
import { isStored, stored } from './stored';

const crossover = 'crossover-and-single-axle';
const payload = 'vehicle.placardPayload';

const put = (page: Page, store: string, key: string, value: unknown) =>
  page.evaluate(
    ([name, at, what]) =>
      new Promise<void>((done, failed) => {
        const open = indexedDB.open('tarebook');
        open.onerror = () => failed(new Error('no database'));
        open.onsuccess = () => {
          const write = open.result.transaction(String(name), 'readwrite');
          write.objectStore(String(name)).put(what, String(at));
          write.oncomplete = () => {
            open.result.close();
            done();
          };
        };
      }),
    [store, key, value] as const,
  );

test('what was typed survives a tab that crashes', async ({ page, context }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1,101 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await isStored(page, '1,101 lb');
  const crashed = page.waitForEvent('crash');
  const session = await context.newCDPSession(page);
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  const again = await context.newPage();
  await openCase(again, crossover);
  await expect(fact(again, payload)).toHaveValue('1,101');
  await expect(verdict(again)).toHaveText('Does not fit');
});

test('what was typed survives a tab that is closed at once', async ({ page, context }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1,102 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.close({ runBeforeUnload: true });
  const again = await context.newPage();
  await openCase(again, crossover);
  await expect(fact(again, payload)).toHaveValue('1,102');
});

test('a change in one window is told in the other, and shown there when asked for', async ({
  page,
  context,
}) => {
  await openCase(page, crossover);
  const other = await context.newPage();
  await openCase(other, crossover);
  await fact(page, payload).fill('1,103 lb');
  await expect(other.getByText('This case was changed in another window.')).toBeVisible();
  await expect(fact(other, payload)).toHaveValue('1,260');
  await other.getByRole('button', { name: 'Show it as it is there' }).click();
  await expect(fact(other, payload)).toHaveValue('1,103');
  await expect(other.getByText('This case was changed in another window.')).toHaveCount(0);
});

test('the list of cases follows what another window does', async ({ page, context }) => {
  await page.goto('/#/cases');
  const row = page.locator('.cases li').filter({ hasText: 'Four people, a dog, and a crossover' });
  await page.getByLabel(/Find a case/).fill('dog crossover');
  await expect(row).not.toContainText('changed by you');
  await expect(row.locator('.word-of')).toHaveText('fits with care');
  const other = await context.newPage();
  await openCase(other, crossover);
  await fact(other, payload).fill('1,103 lb');
  await expect(row).toContainText('changed by you');
  await expect(row.locator('.word-of')).toHaveText('does not fit');
});

test('two windows that change one case overwrite nothing: both are kept, and it is said', async ({
  page,
  context,
}) => {
  await openCase(page, crossover);
  const other = await context.newPage();
  await openCase(other, crossover);
  await fact(page, payload).fill('1,104 lb');
  await isStored(page, '1,104 lb');
  await fact(other, payload).fill('1,105 lb');
  await expect(other.getByText('Both are kept')).toBeVisible();
  await fact(other, payload).fill('1,106 lb');
  await isStored(other, '1,106 lb');
  const texts = Object.entries(await stored(page, 'cases'));
  expect(texts.map(([, value]) => /1,10\d lb/.exec(JSON.stringify(value))?.[0]).toSorted()).toEqual(
    ['1,104 lb', '1,106 lb'],
  );
  await other.reload();
  await expect(fact(other, payload)).toHaveValue('1,106');
  await page.reload();
  await expect(fact(page, payload)).toHaveValue('1,104');
});

test('a device that refuses storage is told, and nothing on the page is lost', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await openCase(page, crossover);
  await fact(page, payload).fill('1,107');
  await expect(page.getByText(/keeps nothing|could not be kept|not kept/).first()).toBeVisible();
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(fact(page, payload)).toHaveValue('1,107');
  await page.goto('/#/class');
  await expect(page.getByText('This device keeps nothing for the page just now')).toBeVisible();
  await page.getByLabel('First names or numbers').fill('Ada');
  await page.getByRole('searchbox').fill('label nobody has read');
  await page.getByRole('checkbox', { name: 'The label nobody has read' }).check();
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await page.locator('#prediction').fill('1,000');
  await page.getByRole('button', { name: 'Commit' }).click();
  await expect(page.getByText('Committed: 1 of 1.')).toBeVisible();
  await expect(page.getByText('Save the record as CSV before you leave')).toBeVisible();
});

test('a device that is full is told, nothing on the page is lost, and room is used once there is some', async ({
  page,
  context,
  baseURL,
}) => {
  await openCase(page, crossover);
  const session = await context.newCDPSession(page);
  const origin = new URL(baseURL ?? '').origin;
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  await fact(page, payload).fill('1,108');
  await expect(
    page
      .locator('.notice, [role="alert"]')
      .filter({ hasText: /full|keeps nothing|not kept|kept/ })
      .first(),
  ).toBeVisible();
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(fact(page, payload)).toHaveValue('1,108');
  const coming = page.waitForEvent('download');
  await openSend(page);
  await page
    .getByRole('button', { name: /Markdown/ })
    .first()
    .click();
  expect(await readFile(await (await coming).path(), 'utf8')).toContain('1,108 lb');
  await shut(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await fact(page, payload).fill('1,109 lb');
  await isStored(page, '1,109 lb');
  await page.reload();
  await expect(fact(page, payload)).toHaveValue('1,109');
});

test('a damaged record is set aside, offered as a file, and never deleted', async ({ page }) => {
  await openCase(page, crossover);
  await expect(page.locator('page-foot footer')).toBeVisible();
  await put(page, 'cases', `tow-fit/${crossover}`, { text: 5, precious: 'words of mine' });
  await put(page, 'classes', 'broken', { id: 'broken' });
  await page.reload();
  await expect(verdict(page)).toHaveText('Fits with care');
  await page.goto('/#/class');
  await expect(page.getByRole('checkbox').first()).toBeVisible();
  await page.reload();
  const save = page.getByRole('button', { name: 'Save what was set aside' });
  await expect(page.getByText('2 records kept here could not be read')).toBeVisible();
  const coming = page.waitForEvent('download');
  await save.click();
  const text = await readFile(await (await coming).path(), 'utf8');
  expect(text).toContain('words of mine');
  expect(Object.keys(await stored(page, 'aside'))).toHaveLength(2);
  expect(await stored(page, 'cases')).toEqual({});
});

test('an older page still keeps what is typed after a newer page was here', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1,110 lb');
  await isStored(page, '1,110 lb');
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const open = indexedDB.open('tarebook', 99);
        open.onupgradeneeded = () => open.result.createObjectStore('of-a-newer-page');
        open.onerror = () => failed(new Error('not opened'));
        open.onsuccess = () => {
          open.result.close();
          done();
        };
      }),
  );
  await fact(page, payload).fill('1,111 lb');
  await isStored(page, '1,111 lb');
  await page.reload();
  await expect(fact(page, payload)).toHaveValue('1,111');
});

test('everything goes into one file and comes back, beside what is there and never over it', async ({
  page,
  browser,
  baseURL,
}) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1,112 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await openSend(page);
  await post(page).fill('As I would say it.');
  await shut(page);
  await isStored(page, '1,112 lb');
  await page.goto('/#/class');
  await page.getByLabel('First names or numbers').fill('Ada');
  await page.getByRole('searchbox').fill('label nobody has read');
  await page.getByRole('checkbox', { name: 'The label nobody has read' }).check();
  await page.getByRole('button', { name: /^Begin with/ }).click();
  await page.locator('#prediction').fill('1,000');
  await page.getByRole('button', { name: 'Commit' }).click();
  await expect(page.getByText('Committed: 1 of 1.')).toBeVisible();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything as one file' }).click();
  const path = await (await coming).path();

  const elsewhere = await browser.newContext({ baseURL: baseURL ?? '' });
  const there = await elsewhere.newPage();
  await openCase(there, crossover);
  await fact(there, payload).fill('1,250 lb');
  await isStored(there, '1,250 lb');
  const take = () => there.getByLabel('Open such a file').setInputFiles(path);
  await take();
  await expect(
    there.getByText('1 case and 1 class were taken in, beside what was here.'),
  ).toBeVisible();
  await take();
  await expect(there.getByText('0 cases and 0 classes were taken in')).toBeVisible();
  const cases = await stored(there, 'cases');
  expect(Object.keys(cases).toSorted()).toEqual([`tow-fit/${crossover}`, `tow-fit/${crossover}-2`]);
  expect(JSON.stringify(cases[`tow-fit/${crossover}`])).toContain('1,250 lb');
  expect(JSON.stringify(cases[`tow-fit/${crossover}-2`])).toContain('1,112 lb');
  await there.goto(`/#/case/tow-fit/${crossover}-2`);
  await openSend(there);
  await expect(post(there)).toHaveValue(/^As I would say it\./);
  await there.goto('/#/class');
  await expect(there.getByText('Committed: 1 of 1.')).toBeVisible();
  await elsewhere.close();
});

test('a file that was not saved here is refused in one sentence', async ({ page }) => {
  await openCase(page, crossover);
  const field = page.getByLabel('Open such a file');
  for (const [text, told] of [
    ['not json', 'This file is no JSON'],
    ['{"a": 1}', 'does not say what it is'],
    [
      '{"kind": "tarebook-everything", "version": 7}',
      'is of version 7 and this page reads version 1',
    ],
    ['{"kind": "tarebook-everything", "version": 1, "cases": 5}', '“cases” is no list'],
  ] as const) {
    await field.setInputFiles({
      name: 'a.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await expect(page.locator('page-foot [role="alert"]')).toContainText(told);
  }
});
