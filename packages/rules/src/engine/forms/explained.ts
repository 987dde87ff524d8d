import type { Language, Term } from '../words/language';
import { wordsIn } from './length';

/** More than these would be a lesson. */
const mostTerms = 2;

/** Where a term is first heard, if nothing said beside it tells what it is. */
function placeOf(lines: readonly string[], { heard, says, unless }: Term): number {
  const all = lines.join(' ');
  if (all.includes(says) || unless?.test(all)) return -1;
  return lines.findIndex((line) => heard.test(line));
}

/** Lines with what terms of the trade are, each right after the line it is first heard in, as far as there is room. */
export function explained(
  lines: readonly string[],
  { terms = [] }: Pick<Language, 'terms'>,
  most: number,
): readonly string[] {
  const after = new Map<number, string>();
  let count = lines.reduce((sum, line) => sum + wordsIn(line), 0);
  for (const term of terms) {
    const place = placeOf(lines, term);
    const length = wordsIn(term.says);
    if (after.size === mostTerms) break;
    // A question that is asked last is remembered; nothing comes after it.
    if (place < 0 || place === lines.length - 1 || after.has(place) || count + length > most)
      continue;
    after.set(place, term.says);
    count += length;
  }
  return lines.flatMap((line, place) => [line, after.get(place) ?? []].flat());
}
