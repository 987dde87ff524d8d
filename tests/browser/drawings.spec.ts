import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, fact, openCase as openPage, test, unfold } from './page';

const bars = 'rear-axle-with-bars';
/** The drawing on the page; the printed sheet has one of its own. */
const here = 'case-fold case-figures rig-drawing';

const openCase = async (page: Page, name: string): Promise<void> => {
  await openPage(page, name);
  await unfold(page, 'The picture');
};

const rig = (page: Page) => page.locator(`${here} svg`);

/** Centers of the wheels from left to right, in pixels of the drawing. */
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

test('the drawing is told in words, and these follow the facts and the units', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, bars);
  await expect(rig(page)).toHaveAttribute('role', 'img');
  await expect(rig(page)).toHaveAttribute('aria-label', /Rear axle 3,860\.4 lb of 3,900 lb\./);
  await expect(rig(page)).toHaveAttribute('aria-label', /The bars are tight\./);
  await fact(page, 'hitch.restored').fill('0 %');
  await expect(rig(page)).toHaveAttribute('aria-label', /The bars hang slack\./);
  await expect(page.locator(`${here} .bars.slack`)).toBeVisible();
  await fact(page, 'hitch.restored').fill('unknown');
  await expect(rig(page)).toHaveAttribute('aria-label', /How tight the bars are is not known\./);
  await page.getByRole('button', { name: 'Show kg' }).click();
  await expect(rig(page)).toHaveAttribute('aria-label', /Ball .* kg of .* kg\./);
});

test('a range is drawn as a range', async ({ page }) => {
  await openCase(page, bars);
  await fact(page, 'trailer.measuredTongueWeight').fill('600–800 lb');
  await expect(page.locator(`${here} .unsure`).first()).toBeVisible();
  await unfold(page, 'How close to each limit');
  await expect(page.locator('limit-rows rect.may-be').first()).toBeAttached();
});

test('limits are listed the gravest first, and what runs out first before its equals', async ({
  page,
}) => {
  await openCase(page, bars);
  await unfold(page, 'How close to each limit');
  const rows = page.locator('limit-rows li');
  const order = ['level-stop', 'level-unknown', 'level-if', 'level-care', 'level-ok'];
  const states = await rows.evaluateAll((all) => all.map((row) => row.className));
  expect(states.length).toBeGreaterThan(5);
  expect(states).toEqual(states.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
  const left = await rows.first().locator('.left').textContent();
  await expect(page.locator('.ticket .big')).toHaveText(left?.replace(/\s+/g, ' ').trim() ?? '?');
});

test('a bar begins at zero: its length up to the line is what is used of the limit', async ({
  page,
}) => {
  await openCase(page, 'crossover-and-single-axle');
  await unfold(page, 'How close to each limit');
  const share = (limit: string) =>
    page
      .locator('limit-rows li', { hasText: limit })
      .locator('.bar')
      .evaluate((bar) => {
        const x = (at: string) =>
          Number(/M([\d.]+)/.exec(bar.querySelector(at)?.getAttribute('d') ?? '')?.[1]);
        const of = (at: string) => {
          const part = bar.querySelector(at);
          return {
            from: Number(part?.getAttribute('x') ?? 0),
            long: Number(part?.getAttribute('width') ?? 0),
          };
        };
        const line = x('.line');
        return {
          bare: of('.bare').long / line,
          to: (of('.loaded').from + of('.loaded').long) / line,
          over: of('.over').long / line,
        };
      });
  const filed = await share('Vehicle gross weight');
  // 5,768 lb of 5,820 lb, of which empty 4,560 lb.
  expect(filed.bare).toBeCloseTo(4560 / 5820, 3);
  expect(filed.to).toBeCloseTo(5768 / 5820, 3);
  expect(filed.over).toBe(0);
  await fact(page, 'vehicle.placardPayload').fill('1100');
  await expect(page.locator('.ticket .big')).toHaveText('108lb over');
  const over = await share('Payload');
  expect(over.to).toBeCloseTo(1, 3);
  expect(over.over).toBeCloseTo(1208 / 1100 - 1, 3);
});

/** Opens a case of any topic; its drawings on the page. */
async function curvesOf(page: Page, path: string) {
  await page.goto(`/#/case/${path}`);
  await unfold(page, 'The picture');
  const curves = page.locator('case-fold case-figures curve-drawing');
  await expect(curves.first().locator('svg').first()).toBeVisible();
  return curves;
}

test('a curve has its stop line, where the case stands, its words and its table', async ({
  page,
}) => {
  const curve = (await curvesOf(page, 'house-battery/how-full-is-it')).first();
  const drawing = curve.locator('[role=img]');
  await expect(drawing).toHaveAttribute(
    'aria-label',
    /from 11\.89 V at 0 % to 12\.65 V at 100 %\. Stop line: 12\.24 V\. Here: 63\.1 %, 12\.35 V\./,
  );
  // The stop line lies between empty and full.
  const [stop = 0, empty = 0, full = 0] = await drawing.evaluate((svg) => {
    const heights = [
      ...(svg.querySelector('path.line')?.getAttribute('d') ?? '').matchAll(/,([\d.]+)/g),
    ];
    return [
      Number(svg.querySelector('line.stopping')?.getAttribute('y1')),
      Number(heights[0]?.[1]),
      Number(heights.at(-1)?.[1]),
    ];
  });
  expect(stop).toBeLessThan(empty);
  expect(stop).toBeGreaterThan(full);
  await expect(drawing.locator('circle.here')).toHaveCount(1);
  await curve.locator('summary').click();
  await expect(curve.locator('table')).toContainText('12.65 V');
  // Read as a range it stands somewhere in a band.
  await fact(page, 'battery.voltage').fill('12.2–12.5 V');
  await expect(drawing.locator('.band')).toBeAttached();
  expect((await drawing.locator('.band').boundingBox())?.width).toBeGreaterThan(10);
});

test('a spread has the limit on it and says how many of a hundred are above', async ({ page }) => {
  await openCase(page, 'range-across-the-limit');
  await unfold(page, 'How likely');
  await page.getByRole('button', { name: 'Draw the ranges 100,000 times' }).click();
  const drawing = page.locator('spread-drawing svg');
  await expect(drawing).toHaveAttribute('aria-label', /of a hundred, \d+( to \d+)? are above it/);
  await expect(drawing.locator('.over')).toBeVisible();
  await expect(drawing.locator('line.stopping')).toHaveCount(1);
  await expect(page.locator('spread-drawing figcaption')).toContainText('100,000 draws');
});

test('energy along the route and gas by the day: told, in both units, in print, free of objections', async ({
  page,
}) => {
  const route = (await curvesOf(page, 'electric-tow-range/one-stop-at-a-stall')).first();
  const told = route.locator('[role=img]');
  await expect(told).toHaveAttribute('aria-label', /from 130 kWh at 0 mi to 38\.4 kWh at 125 mi/);
  await expect(told).toHaveAttribute(
    'aria-label',
    /Charged on the way: from 44\.5 kWh to 104 kWh at 70 mi\. Reserve: 19\.5 kWh\./,
  );
  await expect(route.locator('.lift')).toHaveCount(1);
  await expect(route.locator('line.stopping')).toHaveCount(1);
  await page.getByRole('button', { name: 'Show kg' }).click();
  await expect(told).toHaveAttribute('aria-label', /at 112\.7 km\. Reserve: 19\.5 kWh\./);
  await route.locator('summary').click();
  await expect(route.locator('table')).toContainText('To Ketter');
  expect(await objections(page)).toEqual([]);

  const gas = await curvesOf(page, 'gas-supply/near-what-it-boils');
  await expect(gas).toHaveCount(2);
  await expect(gas.first().locator('figcaption')).toContainText('Burned as told it lasts 3.4');
  const cold = gas.last().locator('[role=img]');
  await expect(cold).toHaveAttribute(
    'aria-label',
    /Starves below: −24 °C\. May starve below: −11 °C/,
  );
  await page.getByRole('button', { name: 'Show lb' }).click();
  await expect(cold).toHaveAttribute(
    'aria-label',
    /Starves below: −10 °F\. May starve below: 12 °F/,
  );
  const marks = (await cold.getAttribute('aria-label'))?.replace(/Forecast.*/, '') ?? '';
  // A colder forecast moves the place where it stands and leaves the marks where they are.
  const stands = () => gas.last().locator('.leader').getAttribute('x1');
  const before = Number(await stands());
  await fact(page, 'outside.temperature').fill('-5 °F');
  await expect.poll(async () => Number(await stands())).toBeLessThan(before);
  expect((await cold.getAttribute('aria-label'))?.startsWith(marks)).toBe(true);
  expect(await objections(page)).toEqual([]);

  await page.emulateMedia({ media: 'print' });
  const printed = page.locator('print-sheet curve-drawing').last();
  await expect(printed.locator('[role=img]')).toBeVisible();
  await expect(printed.locator('summary')).toBeHidden();
  const inks = await printed
    .locator('.line, .stopping')
    .evaluateAll((all) =>
      all.map((each) => getComputedStyle(each)[each.matches('text') ? 'fill' : 'stroke']),
    );
  expect(inks.length).toBeGreaterThan(5);
  expect(new Set(inks)).toEqual(new Set(['rgb(0, 0, 0)']));
});

/** Words that stand on each other, or leave their drawing. */
const clashes = (
  page: Page,
  drawings = 'article > case-figures [role=img]',
): Promise<readonly string[]> =>
  page.locator(drawings).evaluateAll((all) =>
    all.flatMap((drawing) => {
      const frame = drawing.getBoundingClientRect();
      const words = [...drawing.querySelectorAll('text')].map(
        (each) => [each.textContent ?? '', each.getBoundingClientRect()] as const,
      );
      const out = words.filter(([, at]) => at.left < frame.left - 1 || at.right > frame.right + 1);
      const on = words.flatMap(([a, one], i) =>
        words
          .slice(i + 1)
          .filter(
            ([, other]) =>
              one.left < other.right - 1 &&
              other.left < one.right - 1 &&
              one.top < other.bottom - 4 &&
              other.top < one.bottom - 4,
          )
          .map(([b]) => `${a} on ${b}`),
      );
      return [...out.map(([a]) => `${a} is cut`), ...on];
    }),
  );

test('no words of a curve stand on each other or are cut', async ({ page }) => {
  for (const path of [
    'electric-tow-range/between-yes-and-no',
    'electric-tow-range/hybrid-on-the-long-grade',
    'gas-supply/near-what-it-boils',
    'gas-supply/starves-in-the-frost',
    'house-battery/how-full-is-it',
    'off-grid-stay/two-cold-nights',
  ]) {
    await curvesOf(page, path);
    await expect.poll(() => clashes(page), path).toEqual([]);
  }
});

test('no words of a rig stand on each other or are cut', async ({ page }) => {
  for (const name of [
    bars,
    'crossover-and-single-axle',
    'fifth-wheel-in-the-bed',
    'range-across-the-limit',
    'in-kilograms',
  ]) {
    await openCase(page, name);
    await expect(rig(page).locator('text').first()).toBeVisible();
    await expect.poll(() => clashes(page, `${here} svg`), name).toEqual([]);
  }
});

test('in print the drawing is black on white and stays on one page', { tag: '@once' }, async ({
  page,
}) => {
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

test('where each pound goes is drawn, and said in a sentence', async ({ page }) => {
  await openPage(page, 'crossover-and-single-axle');
  await unfold(page, /Where each pound goes/);
  const drawn = page.getByRole('img', { name: /rest on its own axles and 473 lb on the ball/ });
  await expect(drawn).toBeVisible();
  await fact(page, 'vehicle.placardPayload').fill('unknown');
  await expect(page.locator('pounds-way path.line')).toHaveCount(0);
  await page.getByRole('button', { name: 'Show kg' }).click();
  await expect(page.locator('pounds-way figcaption')).toContainText('kg');
  await expect(page.locator('pounds-way figcaption')).not.toContainText('lb');
});

test('where a person has chosen the colors, bars and drawings have these and no others', {
  tag: '@once',
}, async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  for (const name of [bars, 'crossover-and-single-axle']) {
    await openCase(page, name);
    await unfold(page, 'How close to each limit');
    await unfold(page, 'The picture');
    await unfold(page, 'Where each pound goes');
    await expect(page.locator('pounds-way svg, pounds-way .way').first()).toBeVisible();
    const others = await page.evaluate(() => {
      const probe = document.body.appendChild(document.createElement('i'));
      const system = ['Canvas', 'CanvasText', 'GrayText', 'Highlight', 'HighlightText', 'LinkText'];
      const known = system.map((each) => {
        probe.style.color = each;
        return getComputedStyle(probe).color;
      });
      probe.remove();
      const shapes = [...document.querySelectorAll('main svg :is(rect, path, circle, line, text)')];
      return shapes
        .filter((at) => at.checkVisibility())
        .flatMap((at) => {
          const { fill, stroke } = getComputedStyle(at);
          const own = [fill, stroke].filter(
            (each) => each !== 'none' && !each.startsWith('url') && !known.includes(each),
          );
          return own.map((each) => `${at.closest('svg')?.classList} ${at.classList}: ${each}`);
        });
    });
    expect([...new Set(others)], name).toEqual([]);
    // What is used of a limit is told from the empty part by its own color.
    const [bar] = await page.locator('limit-rows svg.bar').all();
    const fillOf = (part: string) =>
      bar
        ?.locator(part)
        .first()
        .evaluate((at) => getComputedStyle(at).fill);
    expect(await fillOf('.loaded')).not.toBe(await fillOf('.ground'));
  }
});
