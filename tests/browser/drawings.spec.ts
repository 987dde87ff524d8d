import type { Page } from '@playwright/test';
import { expect, fact, openCase, test } from './page';

const bars = 'rear-axle-with-bars';
/** The drawing on the page; the printed sheet has one of its own. */
const here = 'article > case-figures rig-drawing';
const rig = (page: Page) => page.locator(`${here} svg`);

/** Centres of the wheels from left to right, in pixels of the drawing. */
const wheels = async (page: Page): Promise<number[]> => {
  await expect(rig(page)).toBeVisible();
  const all = page.locator(`${here} .wheel`);
  return all.evaluateAll((each) => each.map((one) => Number(one.getAttribute('cx'))));
};

/** How long a path is from top to bottom. */
const tall = async (page: Page, selector: string): Promise<number> =>
  page
    .locator(selector)
    .evaluate((path) => (path instanceof SVGGraphicsElement ? path.getBBox().height : 0));

test('the rig stands to scale: wheelbase against ball to axles as they were measured', async ({
  page,
}) => {
  await openCase(page, bars);
  const [rear = 0, front = 0, first = 0, second = 0] = (await wheels(page)).toSorted(
    (a, b) => a - b,
  );
  const wheelbase = front - rear;
  const fromRearToTrailer = (first + second) / 2 - front;
  // 145 in of wheelbase; 50 in to the ball and 17 ft from there to the axles.
  expect(fromRearToTrailer / wheelbase).toBeCloseTo((50 + 17 * 12) / 145, 2);
  await expect(page.locator(`${here} figcaption`)).toContainText('Drawn to scale');
  await fact(page, 'vehicle.wheelbase').fill('160 in');
  await expect(page.locator(`${here} figcaption`)).toContainText('Drawn to scale');
  const [a = 0, b = 0, c = 0, d = 0] = (await wheels(page)).toSorted((x, y) => x - y);
  expect(((c + d) / 2 - b) / (b - a)).toBeCloseTo((50 + 17 * 12) / 160, 2);
});

test('without the distances it is drawn plainly and says that it is not to scale', async ({
  page,
}) => {
  await openCase(page, 'crossover-and-single-axle');
  await expect(page.locator(`${here} figcaption`)).toContainText(
    'Not to scale: the wheelbase, rear axle to ball and ball to trailer axles are not known.',
  );
});

test('arrows are as long as the loads, and grow with them', async ({ page }) => {
  await openCase(page, bars);
  await expect(rig(page)).toBeVisible();
  const rear = await tall(page, `${here} .load >> nth=1 >> .is`);
  const trailer = await tall(page, `${here} .load >> nth=2 >> .is`);
  expect(rear / trailer).toBeCloseTo(3_860.4 / 5_641.6, 1);
  const limit = await tall(page, `${here} .load >> nth=1 >> .may`);
  expect(limit / rear).toBeCloseTo(3_900 / 3_860.4, 1);
});

test('the drawing is told in words, and these follow the facts and the units', async ({ page }) => {
  await openCase(page, bars);
  await expect(rig(page)).toHaveAttribute('role', 'img');
  await expect(rig(page)).toHaveAttribute('aria-label', /Rear axle 3,860\.4 lb of 3,900 lb\./);
  await expect(rig(page)).toHaveAttribute('aria-label', /The bars are tight\./);
  await fact(page, 'hitch.restored').fill('0 %');
  await expect(rig(page)).toHaveAttribute('aria-label', /The bars hang slack\./);
  await expect(page.locator(`${here} .bars.slack`)).toBeVisible();
  await fact(page, 'hitch.restored').fill('unknown');
  await expect(rig(page)).toHaveAttribute('aria-label', /How tight the bars are is not known\./);
  await page.getByRole('button', { name: 'Show metric' }).click();
  await expect(rig(page)).toHaveAttribute('aria-label', /Ball .* kg of .* kg\./);
});

test('a range is drawn as a range', async ({ page }) => {
  await openCase(page, bars);
  await fact(page, 'trailer.measuredTongueWeight').fill('600–800 lb');
  await expect(page.locator(`${here} .unsure`).first()).toBeVisible();
  await expect(page.locator('article > limit-rows .range').first()).toBeAttached();
});

test('limits are listed the fullest first within each state', async ({ page }) => {
  await openCase(page, bars);
  const rows = await page.locator('limit-rows li').evaluateAll((all) =>
    all.map((row) => ({
      state: row.className,
      long: Number(row.querySelector('.fill')?.getAttribute('width')),
    })),
  );
  expect(rows.length).toBeGreaterThan(5);
  rows.slice(1).forEach(({ state, long }, i) => {
    const before = rows[i];
    if (before && before.state === state) expect(long).toBeLessThanOrEqual(before.long);
  });
});

/** Puts a drawing that no case has yet onto the page, from the built files. */
async function show(page: Page, kind: 'curve' | 'spread', figure: object): Promise<void> {
  await openCase(page, bars);
  await page.evaluate(
    async ([name, data]) => {
      const scripts = performance.getEntriesByType('resource').map(({ name: url }) => url);
      const main = scripts.find((url) => /\/assets\/index-[^/]+\.js$/.test(url)) ?? '';
      const text = await (await fetch(main)).text();
      const [file] = new RegExp(`${name}-drawing-[\\w-]+\\.js`).exec(text) ?? [];
      await import(new URL(file ?? 'missing', main).href);
      const drawing = Object.assign(document.createElement(`${name}-drawing`), {
        figure: data,
        system: 'us',
      });
      document.querySelector('article')?.prepend(drawing);
    },
    [kind, figure] as const,
  );
}

test('a curve has its stop line, where the case stands, its words and its table', async ({
  page,
}) => {
  await show(page, 'curve', {
    kind: 'curve',
    title: 'Charge left over a night',
    x: { label: 'Hours', unit: 'h' },
    y: { label: 'Charge', unit: '%' },
    lines: [
      {
        label: 'Charge',
        points: [
          [0, 100],
          [6, 70],
          [12, 45],
        ],
      },
    ],
    stop: { label: 'stop at half', along: 'y', at: 50 },
    here: { label: 'until morning', x: { lo: 8, hi: 10 } },
  });
  const drawing = page.locator('curve-drawing svg');
  await expect(drawing).toHaveAttribute('aria-label', /from 100 % at 0 h to 45 % at 12 h/);
  await expect(drawing.locator('line.stopping')).toBeAttached();
  const [stop, top] = await drawing.evaluate((svg) => [
    Number(svg.querySelector('line.stopping')?.getAttribute('y1')),
    Number(
      svg
        .querySelector('path.line')
        ?.getAttribute('d')
        ?.match(/^M[\d.]+,([\d.]+)/)?.[1],
    ),
  ]);
  expect(stop).toBeGreaterThan(top ?? 0);
  const band = await drawing.locator('.band').boundingBox();
  expect(band?.width).toBeGreaterThan(10);
  await page.locator('curve-drawing summary').click();
  await expect(page.locator('curve-drawing table')).toContainText('70 %');
});

test('a spread has the limit on it and says how many of a hundred are above', async ({ page }) => {
  await show(page, 'spread', {
    kind: 'spread',
    title: 'Payload used',
    x: { label: 'Payload used', unit: 'lb' },
    bins: [
      { from: 1_000, to: 1_100, count: 20 },
      { from: 1_100, to: 1_200, count: 50 },
      { from: 1_200, to: 1_300, count: 30 },
    ],
    limit: { label: 'payload available', at: 1_200 },
  });
  const drawing = page.locator('spread-drawing svg');
  await expect(drawing).toHaveAttribute('aria-label', /of a hundred, 30 are above it/);
  await expect(drawing.locator('.over')).toBeVisible();
  await expect(page.locator('spread-drawing figcaption')).toContainText('100 draws');
});

test('in print the drawing is black on white and stays on one page', async ({ page }) => {
  await openCase(page, bars);
  await expect(rig(page)).toBeVisible();
  const printed = page.locator('print-sheet rig-drawing');
  await expect(printed).toHaveCount(1);
  await page.emulateMedia({ media: 'print' });
  await expect(printed.locator('svg')).toBeVisible();
  const ink = await printed
    .locator('.is')
    .first()
    .evaluate((path) => getComputedStyle(path).fill);
  expect(ink).toBe('rgb(0, 0, 0)');
  const kept = await printed
    .locator('figure')
    .evaluate((figure) => getComputedStyle(figure).breakInside);
  expect(kept).toBe('avoid');
});
