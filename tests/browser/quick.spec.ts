import type { Page } from '@playwright/test';
import { expect, fact, openCase, test, unfold, verdict } from './page';
import { scriptsBefore } from './scripts';

const crossover = 'crossover-and-single-axle';

test('what is typed faster than the page is painted is judged with the next frame, all of it', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(verdict(page).first()).toBeVisible();
  await page.evaluate(() => {
    const type = (id: string, value: string): void => {
      const field = document.querySelector<HTMLInputElement>(`input[data-fact="${id}"]`);
      if (!field) throw new Error(`There is no field for ${id}.`);
      field.value = value;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    };
    return (async () => {
      type('vehicle.placardPayload', '1');
      // The first is on its way to the screen; these come within the same frame.
      await Promise.resolve();
      type('vehicle.placardPayload', '1,3');
      type('trailer.dryWeight', '4,000');
      type('vehicle.placardPayload', '1,300');
    })();
  });
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,300');
  await expect(fact(page, 'trailer.dryWeight')).toHaveValue('4,000');
  const limits = await unfold(page, 'How close to each limit');
  await expect(limits).toContainText('of 1,300 lb');
  await expect(limits).toContainText('4,435 lb of 5,000 lb');
});

test('the verdict is painted first, and all that stands around it follows with a later frame', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  const limits = await unfold(page, 'How close to each limit');
  // What writes into a case has come once something was written.
  await fact(page, 'vehicle.placardPayload').fill('1,250');
  await expect(limits).toContainText('of 1,250 lb');
  const drawn = await page.evaluate(async () => {
    const told = (selector: string) => document.querySelector(selector)?.textContent ?? '';
    const field = document.querySelector<HTMLInputElement>(
      'fact-row input[data-fact="vehicle.placardPayload"]',
    );
    if (!field) throw new Error('There is no field for the payload.');
    const inFrame: Record<string, number> = {};
    let frame = 0;
    const watch = new MutationObserver(() => {
      const seen = {
        ticket: /not fit/i.test(told('.ticket .word')),
        limits: told('limit-rows').includes('of 900 lb'),
      };
      for (const [name, stands] of Object.entries(seen)) {
        if (stands) inFrame[name] ??= frame;
      }
    });
    watch.observe(document, { subtree: true, childList: true, characterData: true });
    const frames = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    field.value = '900';
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    for (; frame < 100 && inFrame.limits === undefined; frame += 1) await frames();
    watch.disconnect();
    return inFrame;
  });
  expect(drawn.ticket).toBe(0);
  expect(drawn.limits).toBeGreaterThan(0);
});

test('a case that is opened shows its verdict with an earlier frame than the facts it stands on', {
  tag: '@once',
}, async ({ page }) => {
  await page.addInitScript(() => {
    const inFrame: Record<string, number> = {};
    let frame = 0;
    const parts = { verdict: '.ticket .word', facts: 'fact-row input', behind: 'case-behind *' };
    const watch = new MutationObserver(() => {
      for (const [name, selector] of Object.entries(parts)) {
        if (document.querySelector(selector)) inFrame[name] ??= frame;
      }
    });
    watch.observe(document, { subtree: true, childList: true });
    const count = (): void => {
      frame += 1;
      requestAnimationFrame(count);
    };
    requestAnimationFrame(count);
    Object.assign(globalThis, { inFrame });
  });
  await openCase(page, crossover);
  await expect(page.locator('case-behind *').first()).toBeVisible();
  const {
    verdict: word,
    facts,
    behind,
  } = await page.evaluate(() => Reflect.get(globalThis, 'inFrame') as Record<string, number>);
  expect(facts).toBeGreaterThan(word ?? Number.POSITIVE_INFINITY);
  expect(behind).toBeGreaterThan(facts ?? Number.POSITIVE_INFINITY);
});

test('where it cannot be said, the word is painted first; no figure of before stands beside it', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/case/house-battery/label-not-read');
  await expect(verdict(page)).toHaveText('Cannot say');
  // A quick machine finds all of it between two keys; the word alone is for a slow one.
  const client = await page.context().newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const field = page.locator('fact-row input[inputmode]').first();
  const was = Number((await field.inputValue()).replace(/[^\d.]/g, ''));
  // What writes into a case has come once something was written.
  await field.fill(String(was + 1));
  await expect(page.locator('.ticket.is-coming')).toHaveCount(0);
  const asks = await page.locator('.ticket .one').textContent();
  expect(asks).toContain('?');
  const drawn = await field.evaluate(
    async (input: HTMLInputElement, value) => {
      const shown = [...document.querySelectorAll('.ticket :is(.big, .one .soft)')];
      input.value = value;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      // What stands as the next frame begins is what it paints; a quick machine has the rest soon after.
      await new Promise(requestAnimationFrame);
      return {
        word: document.querySelector('.ticket .word')?.textContent?.trim(),
        figures: shown.map((each) => getComputedStyle(each).visibility),
        isComing: document.querySelector('.ticket.is-coming') !== null,
      };
    },
    String(was + 2),
  );
  expect(drawn).toMatchObject({ word: 'Cannot say', isComing: true });
  expect(new Set(drawn.figures)).toEqual(new Set(['hidden']));
  await expect(page.locator('.ticket.is-coming')).toHaveCount(0);
  await expect(page.locator('.ticket .one')).toContainText('?');
  await expect(page.locator('.ticket .one .soft')).toBeVisible();
});

test('a first case needs no reader of YAML; one whose title is quoted is judged all the same', {
  tag: '@once',
}, async ({ page }) => {
  const scripts: string[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') scripts.push(response.url());
  });
  await openCase(page, crossover);
  await expect(verdict(page).first()).toBeVisible();
  const before = scripts.length;
  expect(scripts.filter((url) => /yaml/.test(url))).toEqual([]);
  await page.evaluate(async () => {
    const text = [
      '---',
      'title: "Quoted: yes"',
      'topic: tow-fit',
      '---',
      '',
      '| Fact | Value |',
      '| --- | --- |',
      '| `trailer.gvwr` | 5,000 lb |',
      '',
    ].join('\n');
    const file = new File([text], 'quoted.md', { type: 'text/markdown' });
    const data = new DataTransfer();
    data.items.add(file);
    const { promise, resolve } = Promise.withResolvers<void>();
    const look = () => (customElements.get('drop-cases') ? resolve() : setTimeout(look, 50));
    look();
    await promise;
    for (const type of ['dragenter', 'dragover', 'drop']) {
      document.body.dispatchEvent(
        new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer: data }),
      );
    }
  });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Quoted: yes');
  await expect(verdict(page).first()).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Quoted: yes');
  expect(scripts.length).toBeGreaterThan(before);
});

test('a first case comes with at most 120 KiB of script, and without a reader of Markdown', {
  tag: '@once',
}, async ({ page }) => {
  const { urls, kib } = await scriptsBefore(page, '.ticket .word', async () => {
    await openCase(page, crossover);
    await expect(verdict(page).first()).toBeVisible();
  });
  expect(urls.filter((url) => /reader|parse/.test(url))).toEqual([]);
  expect(kib).toBeGreaterThan(50);
  expect(kib).toBeLessThanOrEqual(120);
});

test('a figure typed before the reader of Markdown has come is judged once it has', {
  tag: '@once',
}, async ({ page }) => {
  let letGo = (): void => undefined;
  const gone = new Promise<void>((done) => {
    letGo = done;
  });
  await page.route(/\/reader-[^/]*\.js$/, async (route) => {
    await gone;
    await route.continue();
  });
  await openCase(page, crossover);
  await expect(verdict(page).first()).toBeVisible();
  await fact(page, 'vehicle.placardPayload').fill('1,300');
  await fact(page, 'trailer.dryWeight').fill('4,000');
  letGo();
  const limits = await unfold(page, 'How close to each limit');
  await expect(limits).toContainText('of 1,300 lb');
  await expect(limits).toContainText('4,435 lb of 5,000 lb');
});

test('what stands before the scripts have come is what the page then draws, and where', async ({
  page,
  browser,
  baseURL,
}) => {
  const head = (of: Page) =>
    of
      .locator('.masthead :is(strong, a, button)')
      .evaluateAll((all) =>
        all.map((each) => [each.textContent, { ...each.getBoundingClientRect().toJSON() }]),
      );
  const bare = await browser.newContext({
    baseURL: baseURL ?? '',
    javaScriptEnabled: false,
    viewport: page.viewportSize(),
  });
  const still = await bare.newPage();
  await still.goto('/');
  await openCase(page, crossover);
  await expect(async () => expect(await head(still)).toEqual(await head(page))).toPass();
  expect(await head(page)).toHaveLength(8);
  await bare.close();
});
