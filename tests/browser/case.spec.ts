import type { Page } from '@playwright/test';
import { objections } from './objections';
import { choose, expect, fact, openCase, test, ticket, unfold, verdict } from './page';
import { isStored } from './stored';

const crossover = 'crossover-and-single-axle';
const payload = 'vehicle.placardPayload';

test('an edited fact changes the verdict at once, and undo brings it back', async ({ page }) => {
  await openCase(page, crossover);
  await expect(verdict(page)).toHaveText('Fits with care');
  await fact(page, payload).fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(ticket(page)).toContainText('108lb over');
  await expect(page.getByText('as filed: 1,260 lb')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(verdict(page)).toHaveText('Fits with care');
  await expect(fact(page, payload)).toHaveValue('1,260');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(verdict(page)).toHaveText('Does not fit');
});

test('the ticket is in sight without scrolling, and stays so while facts far below are changed', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(ticket(page)).toBeInViewport({ ratio: 1 });
  for (const name of ['Say', 'Copy', 'Send']) {
    await expect(page.getByRole('button', { name, exact: true })).toBeInViewport({ ratio: 1 });
  }
  await fact(page, 'hitch.hardwareWeight').scrollIntoViewIfNeeded();
  await fact(page, 'hitch.hardwareWeight').fill('200');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(verdict(page)).toBeInViewport({ ratio: 1 });
  await expect(fact(page, 'hitch.hardwareWeight')).toBeInViewport({ ratio: 1 });
});

test('a verdict has one large figure: what is left, what is over, or what has to be asked', async ({
  page,
}) => {
  await openCase(page, crossover);
  const big = page.locator('.ticket .big');
  await expect(big).toHaveText('52lb left');
  await fact(page, payload).fill('1100');
  await expect(big).toHaveText('108lb over');
  await fact(page, payload).fill('');
  await expect(verdict(page)).toHaveText('Cannot say');
  await expect(big).toHaveText('1,208lb?');
  await expect(ticket(page)).toContainText('What does the label in the driver’s door say');
  await expect(ticket(page)).not.toContainText('left');
});

test('unknown and ranges are understood, and the one next question is asked', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('unknown');
  await expect(verdict(page)).toHaveText('Cannot say');
  const next = page.getByRole('region', { name: 'Ask next' });
  await expect(next).toContainText('What does the label in the driver’s door say');
  await fact(page, payload).fill('1,300–1,400 lb');
  await expect(verdict(page)).toHaveText('Fits with care');
  await expect(await unfold(page, 'How close to each limit')).toContainText(
    '1,208 lb of 1,300–1,400 lb',
  );
});

test('choices and the rows of lists can be changed, added and left out', async ({ page }) => {
  await openCase(page, crossover);
  await choose(page, 'vehicle.brakeController', 'no');
  await expect(verdict(page)).toHaveText('Does not fit');
  await choose(page, 'vehicle.brakeController', 'yes');
  await expect(verdict(page)).toHaveText('Fits with care');
  const cargo = page.locator('.fact-group').filter({ hasText: 'Cargo in the vehicle' });
  await cargo.getByLabel('what else').fill('Generator');
  await cargo.getByRole('button', { name: 'Add' }).click();
  await expect(page.getByLabel('Generator: Weight', { exact: true })).toBeFocused();
  await page.keyboard.type('90');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(page.locator('.ticket .big')).toHaveText('38lb over');
  await cargo.getByRole('button', { name: 'Leave out: Generator' }).click();
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('a fact can be added and left out, and says what it is and where to read it', async ({
  page,
}) => {
  await openCase(page, crossover);
  await page.getByLabel('Another fact').selectOption({ label: 'Curb weight' });
  await fact(page, 'vehicle.curbWeight').fill('4600');
  await expect(await unfold(page, 'How close to each limit')).toContainText('of which empty 4,600');
  await page.getByRole('button', { name: 'About Curb weight' }).click();
  await expect(page.locator('fact-row').filter({ hasText: 'Curb weight' })).toContainText(
    'Read it from',
  );
  await page.getByRole('button', { name: 'Leave out: Curb weight' }).click();
  await expect(fact(page, 'vehicle.curbWeight')).toHaveCount(0);
});

test('what was typed is kept on the device, and can be put back as filed', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, payload).fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await isStored(page, '1,100 lb');
  await page.reload();
  await expect(fact(page, payload)).toHaveValue('1,100');
  await expect(verdict(page)).toHaveText('Does not fit');
  await unfold(page, 'This case');
  await page.getByRole('button', { name: 'Put back as filed' }).click();
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('a change of verdict is announced once it has settled, not at every key', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  const spoken = page.locator('[aria-live="polite"]');
  await expect(spoken).toContainText('Fits with care');
  await fact(page, payload).pressSequentially('0', { delay: 20 });
  await fact(page, payload).fill('1,100 lb');
  await expect(spoken).toContainText('Fits with care');
  await expect(spoken).toContainText('Does not fit', { timeout: 4000 });
});

test('the whole job is done by keyboard alone', { tag: '@once' }, async ({ page }) => {
  await page.goto('/#/cases');
  await expect(page.locator('.topics summary').first()).toBeVisible();
  const reach = async (name: RegExp): Promise<void> => {
    for (let i = 0; i < 600; i += 1) {
      await page.keyboard.press('Tab');
      const label = await page.evaluate(() => {
        const at = document.activeElement;
        return `${at?.tagName} ${at?.getAttribute('aria-label') ?? at?.textContent?.trim() ?? ''}`;
      });
      if (name.test(label)) return;
    }
    throw new Error(`${name} was not reached by Tab.`);
  };
  await reach(/^SUMMARY Tow fit/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: /crossover/i }).first()).toBeVisible();
  await reach(/^A .*crossover/i);
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toHaveText('Fits with care');
  await reach(/^INPUT Payload$/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('1100');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('what is behind the ticket opens in place, and is remembered', async ({ page }) => {
  await openCase(page, crossover);
  const working = page.getByRole('heading', { name: 'The working' });
  await expect(page.locator('working-steps')).toHaveCount(0);
  await working.click();
  const steps = page.locator('working-steps');
  await steps.getByText('Payload used').first().click();
  await expect(steps).toContainText('Load in the vehicle');
  await steps.getByText('Tongue weight, loaded').first().click();
  await expect(steps).toContainText('read from: brochure');
  await expect(steps).toContainText('common practice');
  await page.reload();
  await expect(steps).toBeVisible();
  await working.click();
  await expect(steps).toHaveCount(0);
  await page.reload();
  await expect(verdict(page)).toBeVisible();
  await expect(steps).toHaveCount(0);
});

test('metric values are shown at a touch, and the verdict stays', async ({ page }) => {
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Show kg' }).click();
  // 52 lb and 1,260 lb, at 0.45359237 kg.
  await expect(page.locator('.ticket .big')).toHaveText('24kg left');
  await expect(ticket(page)).toContainText('24 kg left of 572 kg');
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('what moved against the case as filed is shown: the fact and the limit', async ({ page }) => {
  await openCase(page, crossover);
  const limits = await unfold(page, 'How close to each limit');
  await expect(page.locator('.moved')).toHaveCount(0);
  await fact(page, payload).fill('1,100 lb');
  await expect(page.locator('fact-row .moved')).toHaveText('as filed: 1,260 lb');
  await expect(limits.locator('li', { hasText: 'Payload' }).locator('.moved')).toContainText(
    'as filed: 52lb left',
  );
  await fact(page, payload).fill('1,260 lb');
  await expect(page.locator('.moved')).toHaveCount(0);
});

test('what an author wrote stands as the reason only while its facts do', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, crossover);
  const reason = await unfold(page, 'Why');
  await expect(reason).toContainText('So it fits, and it is full');
  await fact(page, payload).fill('1100');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(reason).not.toContainText('So it fits');
  await expect(reason).toContainText('108 lb too much');
  const filed = page.getByRole('heading', { name: 'What was said of the case as filed' });
  await expect(page.getByText('So it fits')).toHaveCount(0);
  await filed.click();
  await expect(page.getByText('So it fits')).toBeVisible();
  await fact(page, payload).fill('1260');
  await expect(filed).toHaveCount(0);
  await expect(reason).toContainText('So it fits, and it is full');
});

test('what would change the verdict can be tried, and taken back', async ({ page }) => {
  await openCase(page, 'rear-axle-without-bars');
  await expect(verdict(page)).toHaveText('Does not fit');
  await unfold(page, 'What would change it');
  const first = page.locator('change-list li').first();
  await expect(first).toContainText('Then:', { timeout: 30_000 });
  const promised = /Then: ([^.]+)\./.exec((await first.textContent()) ?? '')?.[1] ?? '';
  await first.getByRole('button', { name: 'Try it' }).click();
  await expect(verdict(page)).toHaveText(promised, { ignoreCase: true });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(verdict(page)).toHaveText('Does not fit');
});

test('a case is started from a vehicle and a trailer of the catalogue', { tag: '@once' }, async ({
  page,
}) => {
  await page.goto('/#/cases');
  await page.getByRole('button', { name: /of the catalogue/ }).click();
  await page.getByLabel('Vehicle of the catalogue').selectOption('Corrie');
  await page.getByLabel('Trailer of the catalogue').selectOption('Rushlight 12 Galley');
  await page.getByRole('button', { name: 'Start with these' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Corrie');
  await expect(fact(page, 'trailer.dryWeight')).toHaveValue('1320');
  await expect(verdict(page)).toHaveText('Fits if');
  await unfold(page, 'The picture');
  await expect(page.locator('case-fold rig-drawing')).toBeVisible();
});

test('a copy of a case is a case of its own; the first stays as it was', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, crossover);
  await unfold(page, 'This case');
  await page.getByRole('button', { name: 'Make a copy' }).click();
  await expect.poll(() => page.url()).toContain('-copy-');
  await fact(page, payload).fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await isStored(page, '1,100 lb');
  await openCase(page, crossover);
  await expect(fact(page, payload)).toHaveValue('1,260');
  await expect(verdict(page)).toHaveText('Fits with care');
});

const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'as filed': (page) => openCase(page, crossover),
  'with a mistake in it': async (page) => {
    await openCase(page, crossover);
    await fact(page, 'vehicle.maxTongueCarried').fill('5oo');
    await fact(page, 'vehicle.maxTongueCarried').blur();
    await expect(page.locator('quantity-field .error')).toBeVisible();
  },
  'with something unknown': async (page) => {
    await openCase(page, crossover);
    await fact(page, payload).fill('unknown');
    await expect(verdict(page)).toHaveText('Cannot say');
  },
  'all open, in metric': async (page) => {
    await openCase(page, 'rear-axle-with-bars');
    await page.getByRole('button', { name: 'Show kg' }).click();
    const shut = page.locator('details.fold:not([open]) > summary');
    while ((await shut.count()) > 0) await shut.first().click();
    await page.locator('working-steps summary').first().click();
    await expect(page.locator('change-list li').first()).toBeVisible({ timeout: 30_000 });
  },
  'just started': async (page) => {
    await page.goto('/#/cases');
    await page.getByRole('button', { name: 'Start a blank case' }).click();
    await expect(page.getByRole('region', { name: 'Ask next' })).toBeVisible();
  },
};

for (const [state, reach] of Object.entries(states)) {
  test(`a case ${state} has nothing for axe to object to and scrolls in one way only`, async ({
    page,
  }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await reach(page);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
    expect(await objections(page)).toEqual([]);
  });
}
