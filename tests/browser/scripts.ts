import { gzipSync } from 'node:zlib';
import type { Page, Response } from '@playwright/test';

/** What a page needed before something stood on it, whatever it asked for after that. */
export type Needed = {
  readonly urls: readonly string[];
  /** Of all of it, as it comes over a wire. */
  readonly kib: number;
};

/**
 * The scripts that were asked for before what a selector finds stood, however late the test looks.
 *
 * @param go opens the page, and waits until it stands
 */
export async function scriptsBefore(
  page: Page,
  selector: string,
  go: () => Promise<void>,
): Promise<Needed> {
  const scripts: Response[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') scripts.push(response);
  });
  await page.addInitScript((wanted) => {
    new MutationObserver((_, watch) => {
      if (!document.querySelector(wanted)) return;
      watch.disconnect();
      performance.mark('stands');
    }).observe(document, { childList: true, subtree: true });
  }, selector);
  await go();
  const urls = await page.evaluate(() => {
    const [stands] = performance.getEntriesByName('stands');
    if (!stands) throw new Error('Nothing was seen to stand.');
    const all = performance.getEntriesByType('resource');
    return all.filter(({ startTime }) => startTime < stands.startTime).map(({ name }) => name);
  });
  const before = scripts.filter((each) => urls.includes(each.url()));
  const bodies = await Promise.all(before.map((each) => each.body()));
  const bytes = bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0);
  return { urls: before.map((each) => each.url()), kib: bytes / 1024 };
}
