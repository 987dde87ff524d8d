import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, fact, test, verdict } from './page';

const said = (page: Page) => page.locator('.yard .say');
const rows = (page: Page) => page.locator('.yard-rows li[data-name]');

test('a buyer’s question: a hybrid rated 3,500, four of us; which, and what do I look up?', async ({
  page,
}) => {
  await page.goto('/#/yard');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Yard');
  await expect(said(page)).toContainText('one figure is enough');
  const begun = Date.now();
  await fact(page, 'vehicle.maxTrailerWeight').fill('3,500');
  const more = page.getByRole('button', { name: 'One adult more' });
  await more.click();
  await more.click();
  await expect(said(page)).toContainText(/Of 30 trailers, \d+ may fit, once more is known: /);
  await expect(said(page)).toContainText('Counted: 4 at 150 lb');
  await expect(said(page)).toContainText(/\d of these \d+ sleeps? 4: Hurdle 9 Folding/);
  const seconds = (Date.now() - begun) / 1000;
  test.info().annotations.push({ type: 'seconds', description: seconds.toFixed(1) });
  expect(seconds).toBeLessThan(60);
  // The sentence with its names is read without scrolling, on a phone too.
  const names = await page.evaluate(() => {
    // Whoever presses a button below the fold has moved the page.
    scrollTo(0, 0);
    const first = document.querySelector('.yard .say p');
    const range = document.createRange();
    if (first) range.selectNodeContents(first);
    const shown = [...range.getClientRects()].filter(({ bottom }) => bottom <= innerHeight);
    return shown.length;
  });
  expect(names).toBeGreaterThanOrEqual(4);
  await expect(said(page)).toContainText(/Look up .*payload: at [\d,]+ lb and [\d,]+ lb or more/);
  await expect(said(page)).toContainText(/is stopped by the tow rating: [\d,]+ lb too much/);
  await expect(rows(page).first()).toContainText(/if .*payload is at least [\d,]+ lb/);
  expect(await objections(page)).toEqual([]);

  const count = await rows(page).count();
  await page.getByRole('heading', { name: 'Narrow it down' }).click();
  await page.getByLabel(/No longer than/).fill('14');
  await page.getByLabel(/No longer than/).blur();
  await expect(said(page)).toContainText(/Of \d trailers/);
  expect(await rows(page).count()).toBeLessThan(count);
  await page.getByRole('button', { name: 'Show all again' }).click();
  await expect(said(page)).toContainText(/Of 30 trailers/);

  await fact(page, 'vehicle.placardPayload').fill('a lot');
  await expect(said(page)).toHaveText('Not read: Payload.');
  await expect(rows(page)).toHaveCount(0);
  await fact(page, 'vehicle.placardPayload').fill('1,000');
  await expect(said(page)).toContainText(/Of 30 trailers/);

  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset.printed =
        document.querySelector('.yard .paper-only')?.textContent ?? '';
    };
  });
  await page.getByRole('button', { name: 'Print this list' }).click();
  await expect(page.locator('body')).toHaveAttribute(
    'data-printed',
    /^Their vehicle; Rated to pull: 3,500 lb; Payload: 1,000 lb\./,
  );

  await page
    .getByRole('button', { name: /^Open as a case/ })
    .first()
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Their vehicle and /);
  await expect(verdict(page)).toHaveText('Cannot say');
});

test('a vehicle of the catalogue with a load, and what can pull one trailer', async ({ page }) => {
  await page.goto('/#/yard');
  await page.getByLabel('What they drive').selectOption('Corrie Hybrid');
  await expect(said(page)).toContainText(/Of 30 trailers, \d+ fit/);
  await page.getByRole('button', { name: 'a weekend' }).click();
  await expect(said(page)).toContainText('packed for a weekend');
  await expect(page.getByRole('heading', { name: /Fits( with care)?$/ }).first()).toBeVisible();
  await page.getByLabel('What can pull it?').check();
  await expect(said(page)).toContainText('one figure is enough');
  await page.getByLabel(/^The trailer/).selectOption('Sallow 13');
  await expect(said(page)).toContainText(/Of 33 vehicles/);
  const width = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(width).toBeLessThanOrEqual(0);
});

const sheet = (name: string, text: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text),
});

test('a catalogue of one’s own: read row by row, kept, asked, saved again, and left', async ({
  page,
}) => {
  await page.goto('/#/yard');
  await page.getByRole('heading', { name: 'The catalogue' }).click();
  const file = page.getByLabel(/Open a(nother)? file/);
  await file.setInputFiles(sheet('list.csv', 'PK\u0003\u0004'));
  await expect(page.getByText('list.csv is a workbook')).toBeVisible();
  await file.setInputFiles(
    sheet(
      'our lot.csv',
      '\ufeffModel;Dry Weight (kg);Trailer GVWR;Hitch Weight;Sleeps;Farbe\r\nHeron 14;861,5;2600 lb;200 lb;2;blue\r\n;;;;;\r\nBittern 22;2.100,0;heavy;560 lb;4;red\r\n"=cmd";900;2600 lb;;;\r\n',
    ),
  );
  const arrived = page.locator('.arrived-file');
  await expect(arrived).toContainText('1 trailer was read from our lot.csv; 2 rows were not');
  await expect(arrived).toContainText(/Line 4: .*heavy/);
  await expect(arrived).toContainText('is a formula');
  await expect(arrived).toContainText('Nothing is kept yet.');
  // What a column was said to be stays in sight, and can be said otherwise.
  const colors = arrived.getByLabel(/“Farbe” is/);
  await colors.selectOption('body');
  await expect(colors).toHaveValue('body');
  await colors.selectOption('kept as it is called');
  await expect(colors).toHaveValue('');
  expect(await objections(page)).toEqual([]);
  await page.getByRole('button', { name: 'Keep this 1 trailer' }).click();
  await expect(page.getByText('Your trailers, from our lot.csv')).toBeVisible();
  await fact(page, 'vehicle.maxTrailerWeight').fill('3,500');
  await expect(said(page).first()).toContainText('Of 1 trailer, 1 may fit');
  await page.reload();
  await expect(said(page).first()).toContainText('one figure is enough');
  await fact(page, 'vehicle.maxTrailerWeight').fill('1,000');
  await expect(said(page).first()).toContainText('Of 1 trailer, none fits');

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as CSV' }).click();
  const saved = await (await saving).createReadStream();
  const text = (await saved.toArray()).join('');
  expect(text.split('\n').slice(0, 2)).toEqual([
    'name,dryWeight,gvwr,dryTongueWeight,sleeps,Farbe',
    'Heron 14,861.5 kg,2600 lb,200 lb,2,blue',
  ]);
  await file.setInputFiles(sheet('trailers.csv', text.replace('2600 lb', '2700 lb')));
  await expect(arrived).toContainText('Heron 14: gvwr 2600 lb → 2700 lb');
  await page.getByRole('button', { name: 'Leave all as it was' }).click();

  await fact(page, 'vehicle.maxTrailerWeight').fill('3,500');
  await page
    .getByRole('button', { name: /^Open as a case/ })
    .first()
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Their vehicle and Heron 14');
  await page.goBack();
  await file.setInputFiles(
    sheet('trailers.csv', text.replace('861.5 kg', '1861.5 kg').replace('2600 lb', '4200 lb')),
  );
  await expect(arrived).toContainText(
    '1 case kept here and 0 answers given rest on what changed; 1 of them comes out otherwise.',
  );
  await expect(arrived.getByRole('link', { name: 'Their vehicle and Heron 14' })).toBeVisible();
  await page.getByRole('button', { name: 'Leave all as it was' }).click();
  await page.getByRole('button', { name: 'Go back to the invented trailers' }).click();
  await expect(said(page).first()).toContainText('Of 30 trailers');

  await page.getByRole('heading', { name: 'On all of that line?' }).click();
  await page.getByLabel(/on all of this line/).selectOption('osier');
  await expect(
    page.getByText(/on the Osier line heated tanks are standard from model year 2026 on, because/),
  ).toBeVisible();
  await page.getByRole('heading', { name: 'Fitted afterwards' }).click();
  await page.getByLabel('What is fitted').selectOption('Weight distribution bars');
  await expect(page.locator('yard-accessories')).toContainText('takes 86 lb of the payload');
});

test('every pair as a picture: by keys, by slider, filtered, printed, opened as a case, and as a table', async ({
  page,
}) => {
  await page.addInitScript(() => {
    window.print = () => {
      document.body.dataset.printed = document.querySelector<HTMLElement>('.yard')?.dataset.sheet;
    };
  });
  await page.goto('/#/yard');
  await page.getByRole('button', { name: 'One child more' }).click();
  await page.getByRole('heading', { name: 'Every pair' }).click();
  const matrix = page.locator('yard-matrix');
  await expect(matrix).toContainText('Judged with 3 aboard, as told above, each at 150 lb');
  await page.getByRole('button', { name: 'One child more' }).click();
  await expect(matrix.getByLabel(/Adults aboard/)).toHaveValue('4');
  await expect(matrix).toContainText('All 990 pairs are judged.');
  const sight = matrix.locator('.in-sight');
  // What is pointed at is told in sight, however tall the picture is; on paper nothing is squeezed.
  const picture = matrix.locator('canvas');
  await picture.evaluate((canvas) => canvas.scrollIntoView());
  await picture.hover({ position: { x: 200, y: 200 } });
  await expect(sight.locator('p').first()).toBeInViewport({ ratio: 1 });
  await page.emulateMedia({ media: 'print' });
  const squeezed = await picture.evaluate((canvas: HTMLCanvasElement) => {
    const { width, height } = canvas.getBoundingClientRect();
    return (width / height) * (canvas.height / canvas.width);
  });
  expect(squeezed).toBeCloseTo(1, 1);
  await page.emulateMedia({ media: 'screen' });
  const first = await sight.locator('p').first().textContent();
  await matrix.locator('canvas').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('PageDown');
  await expect(sight).not.toContainText(first ?? '');
  await expect(sight).toContainText('Haulm Heavy Diesel Duals');
  await expect(matrix.locator('.outline')).toBeInViewport({ ratio: 1 });
  await expect(sight).toContainText('Rushlight 8');
  await expect(sight.locator('p').nth(1)).toHaveText(/\.$/);
  await expect(sight.locator('.decides')).toHaveText(/^[A-Z][^:]+: [\d,.]+ \S+ left$/);
  await matrix.getByText('The same as a table').click();
  const counted = () =>
    matrix.locator('tbody tr').evaluateAll((rows) => rows.map((row) => row.textContent).join());
  const before = await counted();
  expect(await objections(page)).toEqual([]);
  await matrix.getByLabel(/Adults aboard/).fill('8');
  await expect(matrix).toContainText('Adults aboard: 8');
  await expect(matrix).toContainText('Judged with 8 aboard, 4 told above');
  await expect(matrix).toContainText('All 990 pairs are judged.');
  expect(await counted()).not.toBe(before);

  const usual = await counted();
  await matrix.getByLabel('Kept free of each rating').selectOption('15 %');
  await expect(matrix).toContainText('All 990 pairs are judged.');
  await expect.poll(counted).not.toBe(usual);
  await matrix.getByLabel('Kept free of each rating').selectOption('as the house has it');
  await expect.poll(counted).toBe(usual);

  const names = matrix.getByRole('region', { name: 'Of each vehicle' }).locator('tbody th');
  await matrix.getByLabel('Vehicles driven by').selectOption('hybrid');
  await expect(names).toHaveText([/Hybrid/, /Hybrid/, /Hybrid/, /Hybrid/, /Hybrid/, /Hybrid/]);
  await matrix.getByLabel(/^Line/).selectOption('Sallow');
  await matrix.getByLabel(/No longer than/).fill('17');
  await matrix.getByLabel(/No longer than/).blur();
  await expect(matrix).toContainText('12 are shown.');
  await matrix.getByLabel(/No more than/).fill('30000');
  await matrix.getByLabel(/No more than/).blur();
  await expect(matrix).toContainText('12 are shown.');
  await matrix.getByLabel('Sleeps at least').fill('19');
  await matrix.getByLabel('Sleeps at least').blur();
  await expect(matrix).toContainText('No pair is so');
  await matrix.getByLabel('Sleeps at least').fill('');
  await matrix.getByLabel('Sleeps at least').blur();
  await expect(matrix).toContainText('12 are shown.');
  const one = matrix.getByRole('region', { name: 'The vehicle in sight' });
  await expect(one.locator('tbody th')).toHaveText(['Sallow 13', 'Sallow 15 Wet Bath']);
  await matrix.getByRole('button', { name: /does not fit/ }).click();
  await expect(names).toHaveText(['Haulm Crew Hybrid']);
  await one.getByRole('button', { name: 'Sallow 15 Wet Bath' }).click();
  await expect(sight).toContainText('Haulm Crew Hybrid and Sallow 15 Wet Bath');
  await matrix.getByRole('button', { name: 'Print these pairs' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-printed', 'pairs');
  await expect(matrix.locator('.paper-only').first()).toHaveText(
    /^8 aboard, 300 lb .* vehicles: hybrid; line: Sallow; no longer than 17 ft; no more than \$30,000; left out: does not fit\./,
  );

  await matrix.getByRole('button', { name: 'Open this pair as a case' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Haulm Crew Hybrid and Sallow 15 Wet Bath',
  );
});

test('accessories, rates and loads of one’s own, chosen together and kept one by one', async ({
  page,
}) => {
  await page.goto('/#/yard');
  await page.getByRole('heading', { name: 'The catalogue' }).click();
  await page
    .getByLabel(/Open a(nother)? file/)
    .setInputFiles([
      sheet('rates.csv', 'work,label,hours,perHour,parts\nbolt,Bolt it on,2,$120,15\n'),
      sheet(
        'accessories.csv',
        'id,label,weight,sits,fittedBy,work\nbox,Box behind,40,tail,our shop,bolt\nstep,Step,heavy,axle,,\n',
      ),
      sheet('loads.csv', 'name,list,label,weight,ahead\nfishing,trailer.cargo,Boat,80,-2\n'),
    ]);
  const arrived = page.locator('.arrived-file');
  await expect(arrived).toContainText('1 work of the rate book was read from rates.csv');
  await page.getByRole('button', { name: 'Keep this 1 work of the rate book' }).click();
  await expect(arrived).toContainText('1 accessory was read from accessories.csv; 1 row was not');
  await expect(arrived).toContainText(/Line 3: .*heavy/);
  await page.getByRole('button', { name: 'Keep this 1 accessory' }).click();
  await page.getByRole('button', { name: 'Keep this 1 load' }).click();
  await expect(page.getByText('Your accessories, from accessories.csv')).toBeVisible();

  await page.getByRole('heading', { name: 'Fitted afterwards' }).click();
  const fitted = page.locator('yard-accessories');
  await expect(fitted.getByLabel('What is fitted')).toHaveText('Box behind');
  await expect(fitted).toContainText(
    '$255: 2 h at $120 an hour and $15 of parts, by the rate book of the house',
  );
  await expect(fitted).not.toContainText('Invented');
  expect(await objections(page)).toEqual([]);

  await fact(page, 'vehicle.maxTrailerWeight').fill('3,500');
  await page.getByRole('button', { name: 'fishing' }).click();
  await expect(said(page).first()).toContainText('packed for fishing');

  await page.getByRole('button', { name: 'Go back to the invented accessories' }).click();
  await expect(fitted).toContainText('Invented: the accessories.');
});

test('loads under other column names: what is needed is told, and which column is which is said', async ({
  page,
}) => {
  await page.goto('/#/yard');
  await page.getByRole('heading', { name: 'The catalogue' }).click();
  const text = 'Packge,In,Stuff,Weigt\nfishing,trailer,Boat,80\n';
  const file = page.getByLabel(/Open a(nother)? file/);
  await file.setInputFiles(sheet('our stuff.csv', text));
  await expect(page.getByRole('alert')).toContainText('Nobody can tell what stands in our stuff');
  await page.getByLabel('In our stuff.csv stand').selectOption('loads');
  const arrived = page.locator('.arrived-file');
  await expect(arrived).toContainText(
    'It has the columns “Packge”, “In”, “Stuff” and “Weigt”; it needs a name, a list and a weight. “Weigt” may be the weight.',
  );
  for (const [theirs, ours] of [
    ['Packge', 'name'],
    ['In', 'list'],
    ['Stuff', 'label'],
    ['Weigt', 'weight'],
  ] as const) {
    await arrived.getByLabel(`“${theirs}” is`).selectOption(ours);
    await expect(arrived.getByLabel(`“${theirs}” is`)).toHaveValue(ours);
  }
  await expect(arrived).toContainText('1 load was read from our stuff.csv');
  expect(await objections(page)).toEqual([]);
  await page.getByRole('button', { name: 'Keep this 1 load' }).click();
  await expect(page.getByRole('button', { name: 'fishing', exact: true })).toBeVisible();
  // What was said is remembered for the next file.
  await file.setInputFiles(sheet('loads.csv', text.replace('fishing', 'camping')));
  await expect(arrived).toContainText('1 load was read from loads.csv');
});

test('from Today and from a case to the yard, with what was told', async ({ page }) => {
  await page.goto('/#/today');
  // As the buyer says it: four words of it are of other topics, and none is of this one.
  await page
    .getByLabel('What did they say?')
    .fill('I have a hybrid rated 3,500, we are four: which, and what do I look up?');
  await page.getByRole('button', { name: 'Which of ours can they take?' }).click();
  await expect(fact(page, 'vehicle.maxTrailerWeight')).toHaveValue('3,500');
  await expect(said(page)).toContainText(/Of 30 trailers, \d+ may fit/);
  await expect(said(page)).toContainText(/\d of these \d+ sleeps? 4: Hurdle 9 Folding/);

  await page.goto('/#/today');
  await page.getByRole('button', { name: 'Clear' }).click();
  await expect(page.getByRole('button', { name: 'Which of ours can they take?' })).toHaveCount(0);
  await page.getByLabel('What did they say?').fill('hybrid rated 3500, payload 1180, four of us');
  await page.getByRole('button', { name: 'Which of ours can they take?' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Yard');
  await expect(fact(page, 'vehicle.maxTrailerWeight')).toHaveValue('3,500');
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,180');
  await expect(said(page)).toContainText(/Of 30 trailers, /);
  await expect(said(page)).toContainText('Counted as in the case: Driver');

  await page.goto('/#/case/tow-fit/crossover-and-single-axle');
  await page.getByRole('button', { name: 'Which of ours can they take?' }).click();
  await expect(said(page)).toContainText(/Of 30 trailers, /);
  await expect(page.locator('yard-told')).toContainText('Also from the case: ');
  expect(await objections(page)).toEqual([]);
  await page.getByRole('button', { name: 'Leave this out' }).click();
  await expect(page.locator('yard-told')).not.toContainText('Also from the case: ');
  await page.getByRole('button', { name: 'One adult more' }).click();
  await expect(said(page)).toContainText(/Counted: \d at 150 lb/);
});
