import type { Topic } from '@tarebook/rules/engine';
import { askingIn } from './asking';

/** Begins as the other half of what was asked before. */
const opens = /^(?:and|also|or|plus|oh and|and also|so|then)\b/iu;
/** Points back at what was spoken of. */
const pointsBack =
  /(?<!\p{L})(?:(?:for|with|on|to|behind|at|like) (?:that|this|it|them|those)|(?:get|have|order|pull|tow|take|use|buy|carry|run|fit) (?:it|that|one|them))(?!\p{L})/iu;

/**
 * Whether a question goes on about what the one before was about: it says so, points back, and is about
 * nothing else, or about what the topic before is asked in just these words.
 */
export function goesOn(text: string, before: Topic, own: Topic | undefined): boolean {
  if (!pointsBack.test(text)) return false;
  if (own?.id === before.id) return true;
  return own === undefined ? opens.test(text) : askingIn(before, text).asking !== undefined;
}
