import { idle } from '../elements/idle';

/** Time for a case to be drawn, and for its drawing to be fetched, before anything else is. */
const after = 300;

/** Sent when a part of the page could not be had; whoever frames the page says so. */
export const partMissing = 'part-missing';

/** What loads a script when it is first asked for, and again where that failed. */
export function onceAsked(load: () => Promise<unknown>): () => void {
  let asked = false;
  return () => {
    if (asked) return;
    asked = true;
    load().catch(() => {
      asked = false;
      document.dispatchEvent(new Event(partMissing));
    });
  };
}

/** What loads a script for what stands below a verdict: once that is drawn, and at once then. */
export const onceDrawn = (load: () => Promise<unknown>): (() => void) =>
  onceAsked(async () => {
    await new Promise((done) => setTimeout(done));
    await load();
  });

/** What loads a script that no first sight of a case needs: once, and again where that failed. */
export function onceShown(load: () => Promise<unknown>): () => void {
  let asked = false;
  return () => {
    if (asked) return;
    asked = true;
    const fetch = () =>
      load().catch(() => {
        asked = false;
        document.dispatchEvent(new Event(partMissing));
      });
    setTimeout(() => idle().then(fetch), after);
  };
}
