import type { Page } from '@playwright/test';
import { expect, openCase, test, ticket, verdict } from './page';

/** Every page, and what stands on it once it is drawn. */
const pages = {
  '#/today': 'one-line textarea, one-line input',
  '#/cases': 'cases-page input[type="search"]',
  '#/case/tow-fit/crossover-and-single-axle': '.ticket .word',
  '#/case/note/a-front-window-please': 'note-page h1',
  '#/case/rig/leaving-and-coming-home': 'rig-page h2',
  '#/class': 'case-chooser input[type="checkbox"]',
  '#/class/practice': 'practice-view button',
  '#/class/weeks': 'weeks-view h1',
  '#/class/write': 'author-view button',
  '#/questions': 'questions-page textarea',
  '#/yard': 'yard-told select',
  '#/rules': 'rules-page a[href^="#/rules/"]',
  '#/rules/tow-fit': 'rules-page h2',
} as const;

/** A list of hundreds is walked for so many. */
const most = 70;

type Walked = { readonly missed: readonly string[]; readonly unseen: readonly string[] };

/**
 * Goes through a page by Tab alone, from its top.
 *
 * @returns the controls that Tab does not come to, and those on which nothing shows that it did
 */
async function walked(page: Page): Promise<Walked> {
  const said = await page.evaluate((count) => {
    const all = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button:enabled, input:enabled, select:enabled, textarea:enabled, summary, [tabindex="0"]',
      ),
    ].filter((each) => {
      const isThere = each.checkVisibility({ visibilityProperty: true });
      // Of a group of choices one is come to by Tab, the others by arrows.
      const isOther = each instanceof HTMLInputElement && each.type === 'radio';
      return (
        isThere &&
        !isOther &&
        each.tabIndex >= 0 &&
        !each.closest('[inert], details:not([open]) > :not(summary)')
      );
    });
    const name = (each: HTMLElement): string =>
      `${each.localName} “${(each.getAttribute('aria-label') || each.textContent || each.id).trim().replace(/\s+/g, ' ').slice(0, 40)}”`;
    all.slice(0, count).forEach((each, at) => {
      each.dataset.walk = String(at);
    });
    return all.slice(0, count).map(name);
  }, most);
  expect(said.length).toBeGreaterThan(5);
  const reached = new Set<number>();
  const unseen: string[] = [];
  await page.evaluate(() => {
    const at = document.activeElement;
    if (at instanceof HTMLElement) at.blur();
    getSelection()?.collapse(document.body, 0);
  });
  for (let pressed = 0; pressed < said.length * 2 && reached.size < said.length; pressed += 1) {
    await page.keyboard.press('Tab');
    const here = await page.evaluate(() => {
      const at = document.activeElement;
      if (!(at instanceof HTMLElement) || at === document.body) return undefined;
      // What a field is hidden behind shows it instead.
      const shows = [at, at.parentElement, at.nextElementSibling].some((each) => {
        if (!each) return false;
        const { outlineStyle, outlineWidth } = getComputedStyle(each);
        return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
      });
      return { walk: at.dataset.walk, shows };
    });
    if (here?.walk === undefined) continue;
    reached.add(Number(here.walk));
    if (!here.shows) unseen.push(said[Number(here.walk)] ?? '');
  }
  return { missed: said.filter((_, at) => !reached.has(at)), unseen };
}

for (const [address, stands] of Object.entries(pages)) {
  test(`${address}: Tab comes to every control, and it is seen where it is`, {
    tag: '@once',
  }, async ({ page }) => {
    await page.goto(`/${address}`);
    await expect(page.locator(stands).first()).toBeVisible();
    await expect(page.locator('page-foot footer')).toBeVisible();
    expect(await walked(page)).toEqual({ missed: [], unseen: [] });
  });
}

test('Enter opens what is folded and Space shuts it; a dialog opens by Enter, and Escape shuts it and gives the key back', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, 'crossover-and-single-axle');
  await expect(verdict(page)).toBeVisible();
  const summary = page.locator('case-fold summary').filter({ hasText: 'How close to each limit' });
  await summary.focus();
  const part = summary.locator('..');
  const isOpen = () => part.evaluate((each) => each instanceof HTMLDetailsElement && each.open);
  const before = await isOpen();
  await page.keyboard.press('Enter');
  await expect.poll(isOpen).toBe(!before);
  await page.keyboard.press('Space');
  await expect.poll(isOpen).toBe(before);
  const say = ticket(page).getByRole('button', { name: 'Say' });
  await say.focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  await expect(dialog).toBeVisible();
  await expect(dialog.locator(':focus')).toHaveCount(1);
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(say).toBeFocused();
});
