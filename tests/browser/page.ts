import { test as base, expect, type Page } from '@playwright/test';

/** A page that fails its test on any policy violation, script error or call to elsewhere. */
export const test = base.extend<{ page: Page }>({
  page: async ({ page, baseURL }, use) => {
    const wrong: string[] = [];
    page.on('pageerror', (problem) => wrong.push(`error: ${problem.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') wrong.push(`console: ${message.text()}`);
    });
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(baseURL ?? '') && !url.startsWith('data:') && !url.startsWith('blob:')) {
        wrong.push(`called ${url}`);
      }
    });
    await page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', (event) => {
        console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    await use(page);
    expect(wrong).toEqual([]);
  },
});

export { expect };

export const openCase = async (page: Page, name: string): Promise<void> => {
  await page.goto(`/#/case/tow-fit/${name}`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
};

/** From the face that a link opens to the one with every figure. */
export const allFigures = (page: Page) =>
  page.getByRole('button', { name: 'All figures and the working' }).click();

export const ticket = (page: Page) => page.getByRole('region', { name: 'Verdict' });
export const verdict = (page: Page) => page.locator('.ticket .word');
/** The field of a fact, in its own row where the next question asks for it too; of a choice, the field that is chosen. */
export const fact = (page: Page, id: string) => page.locator(`input[data-fact="${id}"]`).last();

/** Chooses one of a few options that stand side by side. */
export const choose = (page: Page, id: string, option: string) =>
  page.locator(`input[data-fact="${id}"][value="${option}"]`).check();

/** Opens what is folded to one line; what is open stays so. */
export async function unfold(page: Page, heading: string | RegExp) {
  const all = page
    .locator('case-fold')
    .filter({ has: page.getByRole('heading', { name: heading }) });
  const shut = all.locator('details:not([open]) > summary');
  await expect(all.first()).toBeVisible();
  if ((await shut.count()) > 0) await shut.first().click();
  return all.first();
}
