/** How far the page is kept on this device for use without a network. */
export type Offline =
  | { readonly kind: 'no' | 'getting' | 'ready' }
  /** A newer page waits; `use` puts it to work and opens it. */
  | { readonly kind: 'newer'; readonly use: () => void };

export const offlineWords: Readonly<Record<Offline['kind'], string>> = {
  no: 'Needs the network: this browser keeps no pages.',
  getting: 'Being kept on this device …',
  ready: 'Works without a network.',
  newer: 'A newer page is ready; it will be used when you next open it.',
};

/**
 * Has the browser keep the built files, and reports how that goes. A newer page never takes over by
 * itself: it waits until every window is closed, or until it is asked for.
 */
export async function keepOffline(
  report: (offline: Offline) => void,
  beforeReload: () => Promise<void>,
): Promise<void> {
  if (!('serviceWorker' in navigator)) {
    report({ kind: 'no' });
    return;
  }
  const { serviceWorker } = navigator;
  let asked = false;
  serviceWorker.addEventListener('controllerchange', () => {
    if (asked) location.reload();
  });
  const newer = (waiting: ServiceWorker): void =>
    report({
      kind: 'newer',
      use: async () => {
        await beforeReload();
        asked = true;
        waiting.postMessage({ type: 'SKIP_WAITING' });
      },
    });
  try {
    const found = await serviceWorker.register('./sw.js', { scope: './' });
    const follow = (): void => {
      const { installing } = found;
      installing?.addEventListener('statechange', () => {
        if (installing.state === 'installed' && found.active) newer(installing);
        else if (installing.state === 'activated') report({ kind: 'ready' });
      });
    };
    found.addEventListener('updatefound', follow);
    if (found.waiting && found.active) newer(found.waiting);
    else if (found.active) report({ kind: 'ready' });
    else {
      report({ kind: 'getting' });
      follow();
    }
  } catch {
    report({ kind: 'no' });
  }
}
