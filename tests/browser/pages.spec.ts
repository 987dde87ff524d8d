import { readFileSync } from 'node:fs';
import { type Page, test as plain } from '@playwright/test';
import { objections } from './objections';
import { packed } from './packed';
import { expect, fact, openCase, test, unfold, verdict } from './page';

const filed = readFileSync(
  new URL('../../cases/tow-fit/crossover-and-single-axle.md', import.meta.url),
  'utf8',
);
const asFiled = { text: filed, vehicle: '', trailer: '', load: '' };
const three = {
  ...{ kind: 'tarebook-beside', version: 1, from: filed },
  columns: [asFiled, asFiled, asFiled],
};

const pages = [
  `#/beside/tow-fit/crossover-and-single-axle/${packed(JSON.stringify(three))}`,
  `#/case/tow-fit/by-link/${packed(filed)}`,
  '#/class/practice',
  '#/class/weeks',
  '#/class/write',
  '#/today',
  '#/cases',
  '#/case/tow-fit/crossover-and-single-axle',
  '#/rules',
  '#/rules/tow-fit',
  '#/class',
  '#/questions',
  '#/yard',
  '#/case/tow-fit/nowhere',
  '#/case/rig/leaving-and-coming-home',
  '#/case/note/how-a-deposit-works',
];

/** What is touched with a finger and is smaller than one; links within a sentence have its height. */
const smallTargets = (page: Page) =>
  page.evaluate(() => {
    const least = 43.5;
    const reach = (at: Element): { width: number; height: number } => {
      const { width, height } = at.getBoundingClientRect();
      // What lies around a small drawing and takes the touch for it.
      const around = getComputedStyle(at, '::after');
      const beyond = around.position === 'absolute' ? -2 * Number.parseFloat(around.top) : 0;
      const label = at.closest('label')?.getBoundingClientRect();
      return {
        width: Math.max(width + (beyond || 0), label?.width ?? 0),
        height: Math.max(height + (beyond || 0), label?.height ?? 0),
      };
    };
    return [...document.querySelectorAll('main :is(button, a, input, select, summary, textarea)')]
      .filter((at) => at.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
      .filter((at) => !(at.localName === 'a' && getComputedStyle(at).display === 'inline'))
      .filter((at) => at.getBoundingClientRect().width > 1)
      .flatMap((at) => {
        const { width, height } = reach(at);
        const name = at.textContent?.trim().slice(0, 30) || at.className;
        return width < least || height < least
          ? [`${at.localName} “${name}” ${Math.round(width)} × ${Math.round(height)}`]
          : [];
      });
  });

/** The desktop at 400 % zoom has 320 px left. */
const narrowest = { width: 320, height: 225 };

const over = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

// One visit a page: what came before it is gone, and nothing of it is looked at in its place.
for (const address of pages) {
  const [, named = ''] = /^#\/((?:[^/]+\/?){1,3})/.exec(address) ?? [];
  test(`${named}: targets of 44 px, nothing for axe, no scrolling sideways at 400 % either`, async ({
    page,
  }) => {
    await page.goto(`/${address}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect.poll(() => smallTargets(page)).toEqual([]);
    await expect.poll(() => over(page)).toBeLessThanOrEqual(0);
    // The rules of a topic are long work for axe, and done where they are opened.
    if (address !== '#/rules/tow-fit') expect(await objections(page)).toEqual([]);
    await page.setViewportSize(narrowest);
    await expect.poll(() => over(page)).toBeLessThanOrEqual(0);
  });
}

test('a blank case asks first, and answers when it is filled in', { tag: '@once' }, async ({
  page,
}) => {
  await page.goto('/#/cases');
  await page.getByRole('button', { name: 'Start a blank case' }).click();
  await expect(verdict(page)).toHaveText('Cannot say');
  const fill = async (id: string, value: string) => fact(page, id).fill(value);
  await fill('vehicle.maxTrailerWeight', '5000');
  await fill('vehicle.maxTongueCarried', '600');
  await fill('vehicle.placardPayload', '1300');
  await fill('trailer.dryWeight', '3300');
  await fill('trailer.gvwr', '4400');
  await fill('trailer.dryTongueWeight', '350');
  await expect(verdict(page)).toHaveText('Fits if');
});

const hostile = `---
title: "<img src=x onerror=alert(1)>"
topic: tow-fit
---

<script>window.reached = true</script>

<img src="https://example.invalid/a.png" onerror="window.reached = true">

[press](javascript:window.reached=true) ![seen](https://example.invalid/b.png) <svg onload="window.reached=true">

| Fact | Value |
| --- | --- |
| \`vehicle.maxTrailerWeight\` <b onmouseover="window.reached=true">x</b> | 5,000 lb |
`;

test('a hostile document runs nothing and calls nowhere', { tag: '@once' }, async ({ page }) => {
  await page.goto('/#/cases');
  await page.getByLabel('Or open one from a file').setInputFiles({
    name: 'hostile.md',
    mimeType: 'text/markdown',
    buffer: Buffer.from(hostile),
  });
  await expect(verdict(page)).toHaveText('Cannot say');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('<img');
  expect(await page.evaluate(() => 'reached' in window)).toBe(false);
  expect(
    await page.locator('article img, article script, article a[href^="javascript"]').count(),
  ).toBe(0);
});

test('a damaged record is set aside, and the case opens as filed', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, 'crossover-and-single-axle');
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const open = indexedDB.open('tarebook');
        open.onerror = () => failed(new Error('no database'));
        open.onsuccess = () => {
          const write = open.result.transaction('cases', 'readwrite');
          write.objectStore('cases').put({ text: 5 }, 'tow-fit/crossover-and-single-axle');
          write.oncomplete = () => {
            open.result.close();
            done();
          };
        };
      }),
  );
  await page.reload();
  await expect(verdict(page)).toHaveText('Fits with care');
  const aside = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        const open = indexedDB.open('tarebook');
        open.onsuccess = () => {
          const count = open.result.transaction('aside').objectStore('aside').count();
          count.onsuccess = () => done(count.result);
        };
      }),
  );
  expect(aside).toBe(1);
});

// Not the page that fails on a refused script: one is refused here on purpose.
plain(
  'a part of a case that cannot be had is told, and what stands there stands',
  { tag: '@once' },
  async ({ page }) => {
    await page.route(/\/fold-bodies-[^/]+\.js$/, (route) => route.abort());
    await openCase(page, 'crossover-and-single-axle');
    await unfold(page, 'The working');
    await expect(page.getByText('A part of this page could not be read')).toBeVisible();
    await expect(verdict(page)).toHaveText('Fits with care');
    await page.unroute(/\/fold-bodies-[^/]+\.js$/);
    await page.getByRole('button', { name: 'Reload' }).click();
    await expect(page.locator('working-steps').getByText('Payload used').first()).toBeVisible();
    await expect(page.getByText('A part of this page could not be read')).toHaveCount(0);
  },
);
