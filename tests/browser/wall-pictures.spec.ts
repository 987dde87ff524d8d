import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './page';

/** Of each kind of picture those that have most to letter, and one of a topic without any. */
const shown = [
  'tow-fit/an-extension-nobody-read',
  'tow-fit/rear-axle-with-bars',
  'tow-fit/fifth-wheel-in-the-bed',
  'tow-fit/spread-nineteen-in-twenty',
  'gas-supply/four-cold-nights',
  'gas-supply/two-full-thirties',
  'house-battery/just-above-half',
  'house-battery/weekend-with-a-little-sun',
  'off-grid-stay/in-the-shade',
  'electric-tow-range/over-the-pass',
  'electric-tow-range/fifty-miles-in-january',
  'cold-weather/battery-for-two-nights',
  'tires/minimal-one-fact-made-in-2018',
];

const address = '192.168.178.121:4174/join';
const invited = { address, code: 'ABC234', href: `http://${address}#/class/join/-/x/Y`, joined: 3 };

/** What is wrong with the lettering of the picture on the wall. */
const faults = (page: Page) =>
  page.evaluate(() => {
    const wrong: string[] = [];
    const words = (of: Element) => of.textContent?.trim() ?? '';
    const all = document.querySelectorAll<SVGTextElement>('learners-view .drawing svg text');
    const texts = [...all].filter((each) => each.checkVisibility() && words(each) !== '');
    const boxes = texts.map((each) => {
      const size = Number.parseFloat(getComputedStyle(each).fontSize);
      const rendered = size * (each.getScreenCTM()?.d ?? 0);
      if (rendered < 28) wrong.push(`“${words(each)}” in ${rendered.toFixed(1)} px`);
      const { left, right, top, bottom } = each.getBoundingClientRect();
      const picture = each.closest('.drawing')?.getBoundingClientRect();
      if (!picture) return { left, right, top, bottom };
      if (
        left < picture.left ||
        right > picture.right ||
        top < picture.top ||
        bottom > picture.bottom
      )
        wrong.push(`“${words(each)}” is cut off`);
      // Of a line of text the letters themselves: a quarter of its box is room above and below.
      const edge = (bottom - top) / 8;
      return { left, right, top: top + edge, bottom: bottom - edge };
    });
    boxes.forEach((a, i) => {
      boxes.slice(i + 1).forEach((b, j) => {
        if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
          wrong.push(
            `“${words(texts[i] ?? document.body)}” on “${words(texts[i + 1 + j] ?? document.body)}”`,
          );
      });
    });
    for (const caption of document.querySelectorAll('learners-view figcaption')) {
      if (!caption.checkVisibility()) continue;
      const size = Number.parseFloat(getComputedStyle(caption).fontSize);
      if (size * (caption.currentCSSZoom ?? 1) < 28) wrong.push(`the caption in ${size} px`);
    }
    const high = document.documentElement.scrollHeight;
    if (high > 1080) wrong.push(`${high} px high`);
    return wrong;
  });

test('lettering in a picture on a wall of 1920 × 1080 is 28 px and more, none of it cut off or on another', {
  tag: '@once',
}, async ({ page }) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto('/#/class/learners');
  await expect(page.getByText('Waiting for the trainer')).toBeVisible();
  const wrong: Record<string, readonly string[]> = {};
  for (const path of shown) {
    const text = readFileSync(new URL(`../../cases/${path}.md`, import.meta.url), 'utf8');
    const state = { committed: 3, of: 6, number: 1, cases: 4, done: false, open: true };
    await page.evaluate((message) => new BroadcastChannel('tarebook-class').postMessage(message), {
      kind: 'show',
      shown: { ...state, text, step: 'picture', guesses: [], invited },
    });
    const title = /^title: (.*)$/m.exec(text)?.[1]?.replaceAll(/^["']|["']$/g, '') ?? '';
    await expect(page.getByRole('heading', { level: 1 })).toContainText(title);
    await expect(page.locator('.step.picture .verdict')).toBeVisible();
    if (!path.startsWith('tires')) await expect(page.locator('.drawing svg').first()).toBeVisible();
    // Once it has been measured and drawn again.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    const found = await faults(page);
    if (found.length > 0) wrong[path] = found;
  }
  expect(wrong).toEqual({});
});
