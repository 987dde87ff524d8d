import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from './page';

const folder = new URL('../../cases/', import.meta.url);
const apart = ['note', 'refused', 'rig'];

/** Of each topic the case that has most to show. */
const longest = readdirSync(folder, { withFileTypes: true })
  .filter((each) => each.isDirectory() && !apart.includes(each.name))
  .map(({ name }) => {
    const texts = readdirSync(new URL(`${name}/`, folder))
      .filter((file) => file.endsWith('.md'))
      .map((file) => readFileSync(new URL(`${name}/${file}`, folder), 'utf8'))
      .toSorted((a, b) => b.length - a.length);
    return { topic: name, text: texts[0] ?? '' };
  });

/** What the wall shows, and where. */
const places = {
  asked: '.is-asked',
  guesses: 'guess-spread',
  picture: '.picture',
  working: '.sums',
  moved: '.what-if',
} as const;

test('on a wall of 1920 × 1080 the longest case of every topic is asked, and opened, without scrolling, nothing under 28 px', {
  tag: '@once',
}, async ({ page }) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto('/#/class/learners');
  await expect(page.getByText('Waiting for the trainer')).toBeVisible();
  const wrong: string[] = [];
  // Phones may join all the while: the longest address that a shop's network has.
  const address = '192.168.178.121:4174/join';
  const href = `http://${address}#/class/join/-/at-once/ABC234`;
  const invited = { address, code: 'ABC234', href, joined: 3 };
  for (const { topic, text } of longest) {
    for (const step of ['asked', 'guesses', 'picture', 'working', 'moved'] as const) {
      const open = step !== 'asked';
      const moved = step === 'moved' ? { moved: { text, says: 'What if it were so?' } } : {};
      const shown = {
        ...moved,
        text,
        open,
        committed: 3,
        of: 6,
        number: 1,
        cases: 4,
        done: false,
        invited,
      };
      await page.evaluate(
        (message) => new BroadcastChannel('tarebook-class').postMessage(message),
        {
          kind: 'show',
          shown: {
            ...shown,
            step: step === 'picture' || step === 'working' ? step : 'guesses',
            guesses: [],
          },
        },
      );
      const place = places[step];
      await expect(page.locator(place)).toBeVisible();
      const seen = await page.evaluate(() => {
        const root = document.querySelector('learners-view');
        const walker = document.createTreeWalker(root ?? document.body, NodeFilter.SHOW_TEXT);
        let least = Number.POSITIVE_INFINITY;
        let smallest = '';
        for (let at = walker.nextNode(); at; at = walker.nextNode()) {
          const of = at.parentElement;
          if (
            !of ||
            of.closest('svg, .hidden') ||
            !of.checkVisibility() ||
            at.textContent?.trim() === ''
          )
            continue;
          const size = Number.parseFloat(getComputedStyle(of).fontSize);
          if (size < least) [least, smallest] = [size, at.textContent?.trim().slice(0, 40) ?? ''];
        }
        const { scrollHeight: high, scrollWidth: wide } = document.documentElement;
        return { least, smallest, high, wide };
      });
      if (seen.high > 1080) wrong.push(`${topic}, ${step}: ${seen.high} px high`);
      if (seen.wide > 1920) wrong.push(`${topic}, ${step}: ${seen.wide} px wide`);
      if (seen.least < 28) wrong.push(`${topic}, ${step}: “${seen.smallest}” in ${seen.least} px`);
    }
  }
  expect(wrong).toEqual([]);
});

test('before the guesses the wall tells what the customer says, and nothing that the author thinks of it', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/class/learners');
  await expect(page.getByText('Waiting for the trainer')).toBeVisible();
  const text = readFileSync(new URL('gas-supply/four-cold-nights.md', folder), 'utf8');
  const state = { committed: 0, of: 3, number: 1, cases: 4, done: false, open: false };
  await page.evaluate((message) => new BroadcastChannel('tarebook-class').postMessage(message), {
    kind: 'show',
    shown: { ...state, text, step: 'guesses', guesses: [] },
  });
  const wall = page.locator('learners-view');
  await expect(wall).toContainText('“We have two full twenties.');
  await expect(wall).toContainText('How many pounds does such a night take?');
  await expect(wall).not.toContainText('Ask what the furnace');
  await expect(wall).not.toContainText('the gas is one half of a warm night');
  // Of a row with two figures the second is named.
  const bars = readFileSync(new URL('tow-fit/rear-axle-with-bars.md', folder), 'utf8');
  await page.evaluate((message) => new BroadcastChannel('tarebook-class').postMessage(message), {
    kind: 'show',
    shown: { ...state, text: bars, step: 'guesses', guesses: [] },
  });
  await expect(wall).toContainText('195\u00a0lb, ahead of rear axle 65\u00a0in');
});
