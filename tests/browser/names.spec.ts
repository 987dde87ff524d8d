import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { alike, listened, nameless, namesOn, outOfOrder } from './names';
import { packed } from './packed';
import { expect, test, unfold } from './page';

const filed = readFileSync(
  new URL('../../cases/tow-fit/crossover-and-single-axle.md', import.meta.url),
  'utf8',
);
const asFiled = { text: filed, vehicle: '', trailer: '', load: '' };
const two = {
  ...{ kind: 'tarebook-beside', version: 1, from: filed },
  columns: [asFiled, asFiled],
};

/** Every page, and what stands on it once it is drawn. */
const pages: Readonly<Record<string, string>> = {
  '#/today': 'one-line :is(textarea, input)',
  '#/cases': 'cases-page input[type="search"]',
  '#/case/tow-fit/crossover-and-single-axle': 'case-behind case-fold',
  '#/case/tow-fit/payload-not-known': 'next-question input',
  '#/case/off-grid-stay/two-cold-nights': 'case-behind case-fold',
  '#/case/options-fit/family-slide': 'case-behind case-fold',
  [`#/case/tow-fit/by-link/${packed(filed)}`]: 'reader-face h1',
  [`#/beside/tow-fit/crossover-and-single-axle/${packed(JSON.stringify(two))}`]: '.beside-rig',
  '#/case/note/a-front-window-please': 'note-page h1',
  '#/case/rig/leaving-and-coming-home': 'rig-page h2',
  '#/case/tow-fit/nowhere': 'h1',
  '#/class': 'case-chooser input[type="checkbox"]',
  '#/class/practice': 'practice-view button',
  '#/class/weeks': 'weeks-view h1',
  '#/class/write': 'author-view button',
  '#/questions': 'questions-page textarea',
  '#/yard': 'yard-told select',
  '#/rules': 'rules-page a[href^="#/rules/"]',
  '#/rules/tow-fit': 'rules-page h2',
};

// `TAREBOOK_NAMES=1 npm run browser -- names` writes each page as it is listened to, for reading.
const folder = new URL('../../.look/', import.meta.url);
function noted(page: string, told: string): void {
  if (!process.env.TAREBOOK_NAMES) return;
  mkdirSync(folder, { recursive: true });
  writeFileSync(new URL(`names-${page}.txt`, folder), `${told}\n`);
}

const short = (address: string): string =>
  address.slice(2).split('/').slice(0, 3).join('-').slice(0, 60);

for (const [address, stands] of Object.entries(pages)) {
  test(`${short(address)}: every control has a name of its own, and headings go down by one`, {
    tag: '@once',
  }, async ({ page }) => {
    await page.goto(`/${address}`);
    await expect(page.locator(stands).first()).toBeVisible();
    await expect(page.locator('page-foot footer')).toBeVisible();
    const all = await namesOn(page);
    noted(short(address), listened(all));
    expect(all.length).toBeGreaterThan(8);
    expect({ nameless: nameless(all), outOfOrder: outOfOrder(all), alike: alike(all) }).toEqual({
      ...{ nameless: [], outOfOrder: [], alike: [] },
    });
  });
}

test('all that is folded has its names too', { tag: '@once' }, async ({ page }) => {
  await page.goto('/#/case/tow-fit/range-across-the-limit');
  await expect(page.locator('case-behind case-fold').first()).toBeVisible();
  for (const heading of await page.locator('case-behind case-fold h2').allTextContents()) {
    await unfold(page, heading);
  }
  await expect(page.locator('.folded').last()).toBeVisible();
  const all = await namesOn(page);
  noted('case-unfolded', listened(all));
  expect({ nameless: nameless(all), outOfOrder: outOfOrder(all), alike: alike(all) }).toEqual({
    ...{ nameless: [], outOfOrder: [], alike: [] },
  });
});
