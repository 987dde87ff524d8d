import type { Locator, Page } from '@playwright/test';
import jsQR from 'jsqr';
import { PNG } from 'pngjs';
import { expect } from './page';

export const crossover = 'crossover-and-single-axle';

export const caution = 'The labels and the manual of that very vehicle win over any brochure';

export const post = (page: Page) => page.getByLabel('A short post', { exact: true });
export const share = (page: Page) => page.locator('share-case');

/** The dialog by which an answer leaves; `shut` closes whichever is open. */
export async function openSend(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Send', exact: true }).click();
  await expect(page.getByRole('dialog', { name: 'Send it' })).toBeVisible();
}

export async function openSay(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Say', exact: true }).click();
  await expect(page.getByRole('dialog', { name: 'Say it' })).toBeVisible();
}

export async function shut(page: Page): Promise<void> {
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
}

export const grant = (page: Page) =>
  page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
export const clipboard = (page: Page) => page.evaluate(() => navigator.clipboard.readText());

/** What a scanner reads from the code as it is painted; like a person's, it looks until it reads. */
export async function scanned(code: Locator): Promise<string> {
  let read = '';
  await expect(async () => {
    const { data, width, height } = PNG.sync.read(await code.screenshot());
    read = jsQR(Uint8ClampedArray.from(data), width, height)?.data ?? '';
    expect(read).not.toBe('');
  }).toPass({ timeout: 20_000 });
  return read;
}

export const linkOf = async (page: Page): Promise<string> => {
  await grant(page);
  await openSend(page);
  await share(page).getByRole('button', { name: 'Copy a link to this case' }).click();
  await expect(share(page).getByRole('status')).toContainText('Link copied.');
  const link = await clipboard(page);
  await shut(page);
  return link;
};

export const drop = (page: Page, files: readonly { name: string; text: string }[]) =>
  page.evaluate((given) => {
    const dataTransfer = new DataTransfer();
    for (const { name, text } of given) dataTransfer.items.add(new File([text], name));
    const at = document.querySelector('main') ?? document.body;
    const send = (type: string) =>
      at.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
    send('dragover');
    return new Promise<string>((done) => {
      requestAnimationFrame(() => {
        const hint = document.querySelector('.drop-hint')?.textContent ?? '';
        send('drop');
        done(hint);
      });
    });
  }, files);
