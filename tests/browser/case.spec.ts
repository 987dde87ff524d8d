import type { Page } from '@playwright/test';
import { expect, fact, objections, openCase, test, verdict } from './page';

const crossover = 'crossover-and-single-axle';

test('an edited fact changes the verdict at once, and undo brings it back', async ({ page }) => {
  await openCase(page, crossover);
  await expect(verdict(page)).toHaveText('Fits with care');
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(page.locator('.verdict')).toContainText('over by 108 lb');
  await expect(page.getByText('as filed: 1,260 lb')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(verdict(page)).toHaveText('Fits with care');
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260 lb');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(verdict(page)).toHaveText('Does not fit');
});

test('unknown and ranges are understood, and what to find out is said', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, 'vehicle.placardPayload').fill('unknown');
  await expect(verdict(page)).toHaveText('Cannot say');
  await expect(page.getByRole('heading', { name: 'Find out first' })).toBeVisible();
  await fact(page, 'vehicle.placardPayload').fill('1,300–1,400 lb');
  await expect(verdict(page)).toHaveText('Fits with care');
  await expect(page.locator('limit-rows')).toContainText('1,208 lb of 1,300–1,400 lb');
});

test('a mistake is told beside its field, and the last verdict stands marked as such', async ({
  page,
}) => {
  await openCase(page, crossover);
  const field = fact(page, 'vehicle.maxTongueCarried');
  await field.fill('500');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('#error-vehicle\\.maxTongueCarried')).toContainText('has no unit');
  await expect(page.locator('.verdict')).toContainText('before the entry marked below');
  await expect(verdict(page)).toHaveText('Fits with care');
  await field.fill('400 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
});

test('choices and the rows of lists can be changed, added and left out', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, 'vehicle.brakeController').selectOption('no');
  await expect(verdict(page)).toHaveText('Does not fit');
  await fact(page, 'vehicle.brakeController').selectOption('yes');
  const cargo = page.locator('load-list').filter({ hasText: 'Cargo in the vehicle' });
  await cargo.getByLabel('what else').fill('Generator');
  await cargo.getByLabel('New row: Weight').fill('90 lb');
  await cargo.getByRole('button', { name: 'Add a row' }).click();
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(page.locator('.verdict')).toContainText('over by 38 lb');
  await cargo.getByRole('button', { name: 'Leave out: Generator' }).click();
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('what was typed is kept on the device, and can be put back as filed', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.waitForTimeout(600);
  await page.reload();
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.getByRole('button', { name: 'Put back as filed' }).click();
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('a change of verdict is announced once it has settled, not at every key', async ({ page }) => {
  await openCase(page, crossover);
  const spoken = page.locator('[aria-live="polite"]');
  await expect(spoken).toContainText('fits with care');
  await fact(page, 'vehicle.placardPayload').pressSequentially('0', { delay: 20 });
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(spoken).toContainText('fits with care');
  await expect(spoken).toContainText('does not fit', { timeout: 4000 });
});

test('the whole job is done by keyboard alone', async ({ page }) => {
  await page.goto('/#/cases');
  await expect(page.getByRole('link', { name: /crossover/i }).first()).toBeVisible({
    timeout: 15_000,
  });
  const reach = async (name: RegExp): Promise<void> => {
    for (let i = 0; i < 600; i += 1) {
      await page.keyboard.press('Tab');
      const label = await page.evaluate(() => {
        const at = document.activeElement;
        const said = at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : undefined;
        return `${at?.tagName} ${at?.getAttribute('aria-label') ?? said ?? at?.textContent ?? ''}`;
      });
      if (name.test(label)) return;
    }
    throw new Error(`${name} was not reached by Tab.`);
  };
  await reach(/^A .*crossover/i);
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toHaveText('Fits with care');
  await reach(/^INPUT Payload$/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toHaveText('Fits with care');
});

test('the working opens step by step down to where a fact was read', async ({ page }) => {
  await openCase(page, crossover);
  const steps = page.locator('working-steps');
  await steps.getByText('Payload used').first().click();
  await expect(steps).toContainText('People and animals');
  await steps.getByText('Tongue weight, loaded').first().click();
  await expect(steps).toContainText('read from: brochure');
  await expect(steps).toContainText('common practice');
});

test('metric values are shown at a touch, and the verdict stays', async ({ page }) => {
  await openCase(page, crossover);
  const word = await verdict(page).textContent();
  await page.getByRole('button', { name: 'Show metric' }).click();
  await expect(page.locator('limit-rows')).toContainText('kg');
  // 52 lb and 1,260 lb, at 0.45359237 kg.
  await expect(page.locator('.verdict')).toContainText('23.6 kg left of 571.5 kg');
  await expect(verdict(page)).toHaveText(word ?? '');
});

test('the verdict stays in sight while facts far below it are changed', async ({ page }) => {
  await openCase(page, crossover);
  await fact(page, 'hitch.hardwareWeight').scrollIntoViewIfNeeded();
  await fact(page, 'hitch.hardwareWeight').fill('200 lb');
  const strip = page.locator('.strip');
  await expect(strip).toBeInViewport();
  await expect(strip).toContainText('does not fit');
  await strip.getByRole('button').click();
  await expect(page.getByRole('region', { name: 'Verdict' })).toBeFocused();
  await expect(verdict(page)).toBeInViewport();
});

test('what moved against the case as filed is shown: the fact, the limit, the verdict', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(page.locator('.moved')).toHaveCount(0);
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(page.locator('fact-table .moved')).toHaveText('as filed: 1,260 lb');
  await expect(
    page.locator('limit-rows li', { hasText: 'Payload' }).locator('.moved'),
  ).toContainText('as filed: 52lb left');
  await expect(page.locator('.verdict .moved')).toContainText('as filed: fits with care');
  await fact(page, 'vehicle.placardPayload').fill('1,260 lb');
  await expect(page.locator('.moved')).toHaveCount(0);
});

test('what would change the verdict can be tried, and taken back', async ({ page }) => {
  await openCase(page, 'rear-axle-without-bars');
  await expect(verdict(page)).toHaveText('Does not fit');
  const first = page.locator('change-list li').first();
  await expect(first).toContainText('Then:', { timeout: 30_000 });
  const promised = /Then: ([^.]+)\./.exec((await first.textContent()) ?? '')?.[1] ?? '';
  await first.getByRole('button', { name: 'Try it' }).click();
  await expect(verdict(page)).toHaveText(promised, { ignoreCase: true });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(verdict(page)).toHaveText('Does not fit');
});

test('a blank case asks one question at a time, and the verdict sharpens', async ({ page }) => {
  await page.goto('/#/cases');
  await page.getByRole('button', { name: 'Start a blank case' }).click();
  await expect(verdict(page)).toHaveText('Cannot say');
  const ask = page.locator('ask-one');
  const answers: readonly (readonly [RegExp, string])[] = [
    [/trailer weigh empty/, '3,300 lb'],
    [/may pull/, '5,000 lb'],
    [/tongue weigh empty/, '350 lb'],
    [/rest on the ball/, '600 lb'],
    [/label in the driver/, '1,300 lb'],
    [/gross rating/, '4,400 lb'],
  ];
  for (let i = 0; i < answers.length; i += 1) {
    const question = (await ask.locator('label').textContent()) ?? '';
    const [, value = ''] = answers.find(([pattern]) => pattern.test(question)) ?? [];
    expect(value, question).not.toBe('');
    await ask.getByRole('textbox').fill(value);
    await ask.getByRole('button', { name: 'Next question' }).click();
  }
  await expect(ask.locator('form')).toHaveCount(0);
  await expect(verdict(page)).toHaveText('Fits');
});

test('a question may be left for later, and a wrong entry is told beside it', async ({ page }) => {
  await page.goto('/#/cases');
  await page.getByRole('button', { name: 'Start a blank case' }).click();
  const ask = page.locator('ask-one');
  const first = (await ask.locator('label').textContent()) ?? '';
  await ask.getByRole('textbox').fill('900');
  await expect(ask.locator('.error')).toContainText('has no unit');
  await ask.getByRole('textbox').fill('');
  await ask.getByRole('button', { name: 'Not known yet' }).click();
  await expect(ask.locator('label')).not.toHaveText(first);
});

test('a case is started from a vehicle and a trailer of the catalogue', async ({ page }) => {
  await page.goto('/#/cases');
  await page.getByLabel('Vehicle of the catalogue').selectOption('Corrie');
  await page.getByLabel('Trailer of the catalogue').selectOption('Rushlight 12 Galley');
  await page.getByRole('button', { name: 'Start with these' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Corrie');
  await expect(fact(page, 'trailer.dryWeight')).toHaveValue('1320 lb');
  await expect(verdict(page)).toHaveText('Fits');
  await expect(page.locator('article > case-figures rig-drawing')).toBeVisible();
  await page.getByRole('button', { name: /^Add: People/ }).click();
  await expect(verdict(page)).toHaveText('Cannot say');
});

test('a copy of a case is a case of its own; the first stays as it was', async ({ page }) => {
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Make a copy' }).click();
  await expect.poll(() => page.url()).toContain('-copy-');
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.waitForTimeout(600);
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260 lb');
  await expect(verdict(page)).toHaveText('Fits with care');
});

const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'as filed': (page) => openCase(page, crossover),
  'with a mistake in it': async (page) => {
    await openCase(page, crossover);
    await fact(page, 'vehicle.maxTongueCarried').fill('500');
    await expect(page.locator('#error-vehicle\\.maxTongueCarried')).toBeVisible();
  },
  'with something unknown': async (page) => {
    await openCase(page, crossover);
    await fact(page, 'vehicle.placardPayload').fill('unknown');
    await expect(verdict(page)).toHaveText('Cannot say');
  },
  'with bars and changes, in metric': async (page) => {
    await openCase(page, 'rear-axle-with-bars');
    await page.getByRole('button', { name: 'Show metric' }).click();
    await page.locator('working-steps summary').first().click();
    await expect(page.locator('change-list li').first()).toBeVisible({ timeout: 30_000 });
  },
  'just started': async (page) => {
    await page.goto('/#/cases');
    await page.getByRole('button', { name: 'Start a blank case' }).click();
    await expect(page.locator('ask-one label')).toBeVisible();
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
