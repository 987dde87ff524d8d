import { type Asked, isAsked } from '../state/questions';

const place = 'tarebook.taken-out';
/** Where this window keeps nothing, it stands here as long as the page does. */
let here: readonly Asked[] = [];

/** What was taken out last in this window; a page that is loaded anew still has it. */
export function outKept(): readonly Asked[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(place) ?? '[]');
    const found = Array.isArray(kept) ? kept.filter(isAsked) : [];
    return found.length > 0 ? found : here;
  } catch {
    return here;
  }
}

export function keepOut(out: readonly Asked[]): void {
  here = out;
  try {
    sessionStorage.setItem(place, JSON.stringify(out));
  } catch {
    try {
      // What was taken out before is not this.
      sessionStorage.removeItem(place);
    } catch {
      // It stands in this window alone.
    }
  }
}
