import { expect, test } from './page';
import { textOfPdf } from './pdf-text';

const cases = ['The label nobody has read', 'Two facts, both from the brochure'];

test('worksheets and key print every case on a sheet of its own, with room to write, and nothing of the page around them', {
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
  const sheets = await printed('Print worksheets');
  // A long table leaves the room to write to a second sheet.
  expect(sheets.pages).toBeGreaterThanOrEqual(cases.length);
  expect(sheets.pages).toBeLessThanOrEqual(cases.length + 1);
  expect(sheets.text).toContain('Afterward, what I had not seen');
  expect(sheets.text).not.toContain('What came out');
  expect(sheets.text).not.toContain('Who takes part');
  expect(sheets.text).not.toContain('So ask him to ring her');
  const key = await printed('Print the key');
  expect(key.pages).toBeLessThanOrEqual(cases.length + 1);
  expect(key.text).toContain('So ask him to ring her');
  expect(key.text).not.toContain('Who takes part');
});
