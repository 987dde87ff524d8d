import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { packed } from './packed';
import { expect, test } from './page';

/** What may be wished for, as the invented lists have it. */
const wishes = readFileSync(new URL('../../seeds/options.csv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => /^[a-z-]+,/.test(line) && !line.startsWith('id,'))
  .map((line) => line.slice(0, line.indexOf(',')))
  .map((id) => `wish.${id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())}`);

const rows = (ids: readonly string[], value: string): string =>
  ids.map((id) => `| \`${id}\` | ${value} |\n`).join('');

const loads = ['load.occupants', 'load.cargo', 'trailer.options', 'trailer.cargo'];
const tanks = ['trailer.freshWater', 'trailer.grayWater', 'trailer.blackWater'];
const things = (place: string): string =>
  Array.from({ length: 80 }, (_, at) => `| Thing ${at} | 10 to 18,000 lb | ${place} |\n`).join('');
const placed = (list: string): string =>
  list.startsWith('load.')
    ? `\n| \`${list}\` | Weight | Ahead of rear axle |\n| --- | --- | --- |\n${things('-50 to 50 in')}`
    : `\n| \`${list}\` | Weight | Ahead of axle |\n| --- | --- | --- |\n${things('-5 to 5 ft')}`;

/** Every wish open, whatever is packed and every rating anything: within every budget, and seconds of reckoning. */
const heavy = `---
title: Anything at all
topic: options-fit
---

| Fact | Value |
| --- | --- |
${rows(wishes, 'unknown')}${rows(
  [
    ...['maxTrailerWeight', 'maxTrailerCarried', 'maxTongueCarried', 'maxTongueDistributed'],
    ...['placardPayload', 'gvwr', 'gcwr', 'curbWeight', 'curbFront', 'curbRear'],
  ].map((each) => `vehicle.${each}`),
  '6,000 to 54,000 lb',
)}${rows(tanks, '0 to 100 gal')}${rows(
  tanks.map((tank) => `${tank}Ahead`),
  '-5 to 5 ft',
)}| \`trip.altitude\` | 1,150 to 22,350 ft |
${loads.map(placed).join('')}`;

/** Has the page note how long it could answer nothing; a machine that does much else holds it too. */
const watchHeld = (page: Page) =>
  page.addInitScript(() => {
    let last = performance.now();
    let most = 0;
    setInterval(() => {
      const now = performance.now();
      most = Math.max(most, now - last);
      last = now;
      // Before there is a page there is nothing to note it on.
      document.documentElement?.setAttribute('data-held', String(Math.round(most)));
    }, 20);
  });
const held = async (page: Page): Promise<number> =>
  Number(await page.locator('html').getAttribute('data-held'));

// Judged on the page itself, every topic at every moment takes longer on a slow machine.
const most = 5_000;

/**
 * Lets the page's clock run ahead until something stands there: whatever is reckoned beside the page
 * takes its own time, and on this clock any of it takes too long. So it ends on a quick machine too.
 */
async function untilTooLong(page: Page, shown: () => Promise<boolean>): Promise<void> {
  await expect
    .poll(
      async () => {
        await page.clock.fastForward(11_000);
        return shown();
      },
      { intervals: [50] },
    )
    .toBe(true);
}

test('a link whose case takes too long to work out is told in a sentence', {
  tag: '@once',
}, async ({ page }) => {
  await page.clock.install();
  await page.goto(`/#/case/options-fit/any/${packed(heavy)}`);
  const alert = page.getByRole('alert');
  await untilTooLong(page, () => alert.isVisible());
  await expect(alert).toContainText(
    'This link was not opened: working it out takes longer than any case that somebody wrote',
  );
});

test('so is one that sets such a case beside others', { tag: '@once' }, async ({ page }) => {
  await page.clock.install();
  const column = { text: heavy, vehicle: '', trailer: '', load: '' };
  const beside = { kind: 'tarebook-beside', version: 1, from: heavy, columns: [column, column] };
  await page.goto(`/#/beside/options-fit/any/${packed(JSON.stringify(beside))}`);
  const alert = page.getByRole('alert');
  await untilTooLong(page, () => alert.isVisible());
  await expect(alert).toContainText('This link was not opened');
});

test('so is a class with such a case in it, on a learner’s phone', { tag: '@once' }, async ({
  page,
}) => {
  await page.clock.install();
  const lesson = ['a', ['Ada'], [['options-fit', 'any', 'Anything at all', heavy]]];
  await page.goto(`/#/class/join/${packed(JSON.stringify(lesson))}`);
  const told = page.getByText('This link was not opened');
  await untilTooLong(page, () => told.isVisible());
});

test('so is a file', { tag: '@once' }, async ({ page }) => {
  await page.clock.install();
  await page.goto('/#/cases');
  await page
    .getByLabel('Or open one from a file')
    .setInputFiles([{ name: 'any.md', mimeType: 'text/markdown', buffer: Buffer.from(heavy) }]);
  const told = page.getByText('any.md was not opened: working it out');
  await untilTooLong(page, () => told.isVisible());
});

test('the page goes on answering while a heavy link is worked out beside it', {
  tag: '@once',
}, async ({ page }) => {
  await watchHeld(page);
  await page.goto(`/#/case/options-fit/any/${packed(heavy)}`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await held(page)).toBeLessThan(most);
});

test('every topic is asked about a whole rig beside the page', { tag: '@once' }, async ({
  page,
}) => {
  await watchHeld(page);
  await page.goto('/#/case/rig/leaving-and-coming-home');
  await expect(page.getByRole('region', { name: 'Verdict' })).toBeVisible();
  expect(await held(page)).toBeLessThan(most);
});
