/** A page that is never idle still has the rest of it drawn. */
const atLatest = 2000;
const shortly = 30;

/** Once the page has nothing more urgent to do, such as drawing what somebody types. */
export function idle(): Promise<void> {
  return new Promise((done) => {
    // Not every browser tells when it is idle.
    if ('requestIdleCallback' in globalThis) {
      requestIdleCallback(() => done(), { timeout: atLatest });
    } else setTimeout(done, shortly);
  });
}
