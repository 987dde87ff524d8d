import { expect, type Page } from '@playwright/test';

/** Everything in one of the stores of this device, read past the page itself; empty before there are stores. */
export const stored = (page: Page, store: string) =>
  page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>>((done, failed) => {
        const open = indexedDB.open('tarebook');
        open.onerror = () => failed(new Error('no database'));
        // The page makes its stores itself.
        open.onupgradeneeded = () => open.transaction?.abort();
        open.onsuccess = () => {
          const at = open.result.transaction(name).objectStore(name);
          const [keys, values] = [at.getAllKeys(), at.getAll()];
          at.transaction.oncomplete = () => {
            open.result.close();
            done(Object.fromEntries(keys.result.map((key, i) => [String(key), values.result[i]])));
          };
        };
      }),
    store,
  );

/** Waits until something like it stands in a store, however slow the machine is. */
export const isStored = (page: Page, like: string | RegExp, store = 'cases') =>
  expect
    .poll(async () => JSON.stringify(await stored(page, store).catch(() => ({}))))
    .toMatch(
      like instanceof RegExp ? like : new RegExp(like.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')),
    );
