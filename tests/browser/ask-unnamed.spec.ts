import { expect, test } from './page';
import { textOfPdf } from './pdf-text';

const first = 'The label nobody has read';
const telling = 'Two twenties and four cold nights';

test('what do you ask next: until it is open a case has a number and the customer’s words, and no title', async ({
  page,
}) => {
  await page.goto('/#/class');
  for (const title of [telling, first]) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  await page
    .getByLabel(`What they do with ${telling}`)
    .selectOption({ label: 'What do you ask next?' });
  await page.evaluate(() => {
    window.print = () => {
      const view = document.querySelector('trainer-view');
      const paper: unknown = view && Reflect.get(view, 'paper');
      if (!view) return;
      setTimeout(() => {
        Reflect.set(view, 'paper', paper);
        document.documentElement.dataset.printed = 'yes';
      }, 100);
    };
  });
  await page.getByRole('button', { name: 'Print worksheets and key' }).click();
  // The sheets stand there once they have been read and the print was asked for.
  await expect(page.locator('html[data-printed]')).toHaveCount(1);
  const { text } = textOfPdf(await page.pdf({ format: 'Letter' }));
  const [written = '', key = ''] = text.split(/· key/);
  expect(written).not.toContain(telling);
  expect(key).toContain(telling);
  await page.evaluate(() => {
    const view = document.querySelector('trainer-view');
    if (view) Reflect.set(view, 'paper', undefined);
  });
  await page.locator('#learners').fill('Ada');
  await page.getByRole('button', { name: /^Begin with/ }).click();
  const trainer = page.locator('class-case');
  await expect(trainer.locator('.asks button').first()).toBeVisible();
  await expect(trainer.getByRole('heading', { name: 'Case 1', exact: true })).toBeVisible();
  await expect(trainer).not.toContainText(telling);
  const wall = await page.context().newPage();
  await wall.goto('/#/class/learners');
  await expect(wall.getByRole('heading', { level: 1 })).toHaveText(/^Case 1 /);
  await expect(wall.locator('.told')).toContainText('“Is that plenty?”');
  await page.getByText('Learners’ phones, by codes read out or scanned').click();
  const href = await page.getByRole('link', { name: /The link that opens/ }).getAttribute('href');
  const phone = await page.context().newPage();
  await phone.goto(href ?? '');
  await phone.getByRole('button', { name: 'Ada' }).click();
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('Case 1');
  await page.locator('.open-working').click();
  await expect(trainer.getByRole('heading', { name: telling })).toBeVisible();
  await expect(wall.getByRole('heading', { level: 1 })).toContainText(telling);
});

test('practice: what is asked next has its title once it is answered', async ({ page }) => {
  await page.goto('/#/class/practice/Ada/ask/tow-fit/payload-before-rating/7');
  const head = page.getByRole('heading', { level: 2 });
  await expect(head).toHaveText('What do you ask next?');
  const asks = page.locator('.asks button');
  for (let left = await asks.count(); left > 0; left = await asks.count())
    await asks.last().click();
  await page.getByLabel('The verdict is').selectOption('fits');
  await page.getByRole('button', { name: 'That is my answer' }).click();
  await expect(head).toContainText('What do you ask next? · ');
});
