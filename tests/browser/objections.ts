import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

const colors = 'color-contrast';

/** What stands for all that looks like it is marked so while axe looks at its colors. */
const mark = 'data-stands-for-all-like-it';

const near = createRequire(createRequire(import.meta.url).resolve('@axe-core/playwright'));
const axeSource = `${readFileSync(near.resolve('axe-core'), 'utf8')}
axe.configure({ rules: [{ id: '${colors}', selector: '[${mark}]' }] });`;

/**
 * Marks one of all elements with words of their own that look the same: same color, size and weight
 * of type, same names and grounds from the element up to the page, through every shadow root. Their
 * contrast is the same, and a page of ninety formulas has fifteen thousand elements and a hundred looks.
 */
const markLooks = (page: Page) =>
  page.evaluate((name) => {
    const numbers = new Map<string, number>();
    const numberOf = (look: string): number => {
      const known = numbers.get(look) ?? numbers.size;
      numbers.set(look, known);
      return known;
    };
    const seen = new Set<string>();
    const walk = (at: Element, above: number): void => {
      const style = getComputedStyle(at);
      const { backgroundColor, backgroundImage, opacity, position, visibility, filter } = style;
      const names = [at.localName, at.getAttribute('class'), at.getAttribute('style')];
      const ground = [backgroundColor, backgroundImage, opacity, position, visibility, filter];
      const disabled = at.matches(':disabled, [aria-disabled="true"]');
      const look = numberOf([above, ...names, ...ground, disabled].join('|'));
      const { color, fontSize, fontWeight, textShadow } = style;
      const type = [look, color, fontSize, fontWeight, textShadow].join('|');
      const words = [...at.childNodes].some(
        (each) => each.nodeType === Node.TEXT_NODE && each.textContent?.trim(),
      );
      // What is painted nowhere cannot stand for what is.
      const stands = words || 'value' in at;
      if (stands && !seen.has(type) && at.checkVisibility({ visibilityProperty: true })) {
        seen.add(type);
        at.setAttribute(name, '');
      }
      for (const child of at.shadowRoot?.children ?? []) walk(child, look);
      for (const child of at.children) walk(child, look);
    };
    walk(document.documentElement, 0);
  }, mark);

const unmark = (page: Page) =>
  page.evaluate((name) => {
    const walk = (at: Element | ShadowRoot): void => {
      if (at instanceof Element) at.removeAttribute(name);
      for (const child of at.children) walk(child);
      if (at instanceof Element && at.shadowRoot) walk(at.shadowRoot);
    };
    walk(document.documentElement);
  }, mark);

/**
 * What axe objects to: one line a rule broken, with the first place. Colors do not hang on the
 * width: they are looked at on the wide page, in light and in dark, once for each look.
 * Frames of other origins are what axe's quick way leaves out, and there are none.
 */
export async function objections(page: Page): Promise<readonly string[]> {
  const narrow = (page.viewportSize()?.width ?? 0) < 600;
  const all: string[] = [];
  for (const colorScheme of narrow ? (['light'] as const) : (['light', 'dark'] as const)) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    if (!narrow) await markLooks(page);
    const rules = colorScheme === 'dark' ? { runOnly: [colors] } : {};
    const axe = new AxeBuilder({ page, axeSource })
      .setLegacyMode(true)
      .options({ resultTypes: ['violations'], preload: false, selectors: false, ...rules });
    const { violations } = await (narrow ? axe.disableRules(colors) : axe).analyze();
    all.push(...violations.map(({ id, nodes }) => `${colorScheme} ${id}: ${nodes[0]?.html}`));
    if (!narrow) await unmark(page);
  }
  return all;
}
