import { expect, test } from './page';
import { textOfPdf } from './pdf-text';

const cases = ['The label nobody has read', 'Two facts, both from the brochure'];

/** Two of them share a sheet. */
const small = ['Made in 2018, tread like new', 'Fifty where sixty-five belong'];

test('worksheets and key print every case whole, with room to write, and nothing of the page around them', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/class');
  for (const title of cases) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  // Whatever prints looks at the page while it stands so.
  const printed = async (button: string) => {
    await page.evaluate(() => {
      window.print = () => {
        const view = document.querySelector('trainer-view');
        const paper: unknown = view && Reflect.get(view, 'paper');
        if (view) setTimeout(() => Reflect.set(view, 'paper', paper), 100);
      };
    });
    await page.getByRole('button', { name: button }).click();
    await page.waitForTimeout(600);
    const read = textOfPdf(await page.pdf({ format: 'Letter' }));
    await page.evaluate(() => {
      const view = document.querySelector('trainer-view');
      if (view) Reflect.set(view, 'paper', undefined);
    });
    return read;
  };
  // Nobody is named: one set, with a line for the name, and the key behind it.
  const sheets = await printed('Print worksheets and key');
  expect(sheets.pages).toBeLessThanOrEqual(2 * cases.length + 2);
  const [written = '', key = ''] = sheets.text.split('Lesson · case 1 of 2 · 8 min · key');
  expect(written.match(/Afterward, what I had not seen/g)).toHaveLength(cases.length);
  expect(written).not.toContain('What came out');
  expect(written).not.toContain('So ask him to ring her');
  expect(key).toContain('So ask him to ring her');
  // The sums stand on the key alone.
  expect(key).toMatch(/620 lb \+ 396 lb =\s+1,016 lb/);
  expect(written).not.toMatch(/620 lb \+ 396 lb/);
  expect(sheets.text).not.toContain('Who takes part');
  // For a room: everybody's own set, by name.
  await page.getByLabel('First names or numbers, one on a line').fill('Ada\nBen\nCal');
  const all = await printed('Print worksheets and key');
  expect(all.text.match(/Afterward, what I had not seen/g)).toHaveLength(3 * cases.length);
  for (const name of ['Ada', 'Ben', 'Cal']) {
    expect(all.text.match(new RegExp(`Name ${name}`, 'g'))).toHaveLength(cases.length);
  }
  expect(all.text.match(/So ask him to ring her/g)).toHaveLength(1);
  const alone = await printed('Print the key alone');
  expect(alone.pages).toBeLessThanOrEqual(cases.length + 1);
  expect(alone.text).toContain('So ask him to ring her');
  expect(alone.text).not.toContain('Afterward, what I had not seen');
  // Of small ones two share a sheet, and everybody's own begin on a new one.
  for (const title of cases) await page.getByRole('button', { name: `Take out: ${title}` }).click();
  for (const title of small) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  const few = await printed('Print the worksheets alone');
  expect(few.text.match(/Afterward, what I had not seen/g)).toHaveLength(3 * small.length);
  expect(few.pages).toBe(3);
});

test('the key of what to ask next holds what each question is answered, and the worksheet does not', {
  tag: '@once',
}, async ({ page }) => {
  const drift = 'A drift against the wall';
  await page.goto('/#/class');
  await page.getByRole('searchbox').fill(drift);
  await page.getByRole('checkbox', { name: drift }).check();
  await page.getByLabel(`What they do with ${drift}`).selectOption('What do you ask next?');
  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset.printed = document.querySelector('class-paper')?.textContent ?? '';
    };
  });
  await page.getByRole('button', { name: 'Print the key alone' }).click();
  const body = page.locator('body');
  await expect(body).toHaveAttribute('data-printed', /☐ [^☐]*snow[^☐]*\? no/);
  await expect(body).not.toHaveAttribute('data-printed', /unknown/);
  await page.getByRole('button', { name: 'Print the worksheets alone' }).click();
  await expect(body).toHaveAttribute('data-printed', /The verdict:/);
  await expect(body).toHaveAttribute('data-printed', /unknown/);
  await expect(body).not.toHaveAttribute('data-printed', /\? no\b/);
});
