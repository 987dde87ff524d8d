import { distance } from 'fastest-levenshtein';

/** The nearest known name, when one is close enough to be what was meant. */
export function nearest(name: string, known: Iterable<string>): string | undefined {
  const wanted = name.slice(0, 80).toLowerCase();
  let best: string | undefined;
  let least = Math.max(2, Math.floor(wanted.length / 3)) + 1;
  for (const each of known) {
    const away = distance(wanted, each.toLowerCase());
    if (away < least) {
      least = away;
      best = each;
    }
  }
  return best;
}

/** The same as data of a problem; nothing where no name is close. */
export function meant(name: string, known: Iterable<string>): { readonly near?: string } {
  const near = nearest(name, known);
  return near === undefined || near === name ? {} : { near };
}
