import { PNG } from 'pngjs';
import { caution, crossover, drop, openSend, scanned, share } from './leaving';
import { expect, openCase, test, verdict } from './page';
import { textOfPdf } from './pdf-text';

const printed = [crossover, 'payload-not-known', 'rear-axle-with-bars', 'wrong-ball-size'];
/** Of other topics, those that are longest on paper. */
const longest = [
  'gas-supply/empty-by-the-scale',
  'electric-tow-range/one-stop-at-a-stall',
  'spares-kit/minimal-one-fact-one-axle',
  'cold-weather/insulated-says-the-brochure',
];

test.describe('on paper', () => {
  // A printer sets many more points than a screen.
  test.use({ deviceScaleFactor: 4 });

  for (const format of ['Letter', 'A4'] as const) {
    test(`a case prints on one sheet of ${format}, with verdict, cautions, rules and a code that opens it`, async ({
      page,
    }) => {
      for (const name of printed) {
        await openCase(page, name);
        const word = await verdict(page).textContent();
        const code = page.locator('print-sheet svg.code');
        await expect(code).toBeAttached({ timeout: 10_000 });
        const pdf = await page.pdf({ format });
        const { pages, text } = textOfPdf(pdf);
        expect(pages, name).toBe(1);
        for (const part of [
          word ?? '?',
          caution,
          'rules tow-fit',
          'as of 2026-',
          'of the 23 limits',
        ]) {
          expect(text.replace(/\s+/g, ''), `${name}: ${part}`).toContain(part.replace(/\s+/g, ''));
        }
        await page.emulateMedia({ media: 'print' });
        const link = await scanned(code);
        await page.emulateMedia({ media: null });
        expect(link, name).toContain(`#/case/tow-fit/${name}/`);
        expect(link.length).toBeLessThanOrEqual(1200);
        await page.goto(link);
        await expect(verdict(page)).toHaveText(word ?? '?');
      }
    });
  }
});

test('the longest cases keep to one sheet of Letter, and say what is left out', async ({
  page,
}) => {
  for (const name of longest) {
    await page.goto(`/#/case/${name}`);
    await expect(verdict(page)).toBeVisible();
    await expect(page.locator('print-sheet svg.code')).toBeAttached({ timeout: 10_000 });
    const { pages, text } = textOfPdf(await page.pdf({ format: 'Letter' }));
    expect(pages, name).toBe(1);
    expect(text.replace(/\s+/g, '')).toContain('Tokeeptoonesheet');
  }
});

test('paper has no color, and none of what is for the screen', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  await openCase(page, crossover);
  await expect(page.locator('print-sheet svg.code')).toBeVisible({ timeout: 10_000 });
  for (const part of ['.masthead', '.ticket', '.fold', 'fact-row', 'page-foot']) {
    await expect(page.locator(part).first()).toBeHidden();
  }
  const { data } = PNG.sync.read(await page.locator('print-sheet').screenshot());
  let colored = 0;
  for (let i = 0; i < data.length; i += 4) {
    const [r = 0, g = 0, b = 0] = [data[i], data[i + 1], data[i + 2]];
    if (Math.max(r, g, b) - Math.min(r, g, b) > 8) colored += 1;
  }
  expect(colored).toBe(0);
});

/** Words of no sense, so that nothing makes them shorter. */
const labels = (i: number): string =>
  [7919, 104_729, 15_485_863, 32_452_843, 49_979_687]
    .map((prime) => ((i + 11) * prime * 2_654_435_761).toString(36).slice(0, 10))
    .join(' ');

test('a case too long for a code prints without one and says why', async ({ page }) => {
  const rows = Array.from({ length: 100 }, (_, i) => `| Box ${labels(i)} | ${(i % 9) + 1} lb |`);
  await page.goto('/#/rules');
  await expect(page.locator('drop-cases [role="status"]')).toBeAttached();
  await drop(page, [
    {
      name: 'boxes.md',
      text: `---\ntitle: Boxes\ntopic: tow-fit\n---\n\n| Fact | Value |\n| --- | --- |\n| \`trailer.gvwr\` | 5,000 lb |\n\n| \`trailer.cargo\` | Weight |\n| --- | --- |\n${rows.join('\n')}\n`,
    },
  ]);
  await expect(verdict(page)).toBeVisible();
  await expect(page.locator('.sheet-code')).toContainText('too long for one');
  await openSend(page);
  await share(page).getByRole('button', { name: 'Show a code to scan' }).click();
  await expect(share(page)).toContainText('too long for a code');
});
