import { asksInGeneral } from './asked';

/** Somebody asks what a thing costs, or whether it is to be had. */
const priced =
  /\b(?:price|pricing|prices|costs?|how much (?:is|are|for|do|does|would|to)|quote|for sale|do you (?:guys )?(?:sell|carry|stock|have any)|in stock|part number|part no|trade[- ]in|come with|deals?|do your)\b/i;
/** Somebody tells what is long past, or mended. */
const past =
  /\b(?:last (?:year|season|summer|fall|spring)|years? (?:ago|back)|months? ago|used to|(?:was|were|got|been|have|had) (?:it |them |that )?(?:fixed|repaired|replaced)|already (?:fixed|replaced)|put (?:it|that) right|stolen|theft|thief|thieves|nobody rolls)\b|\bin (?:19\d\d|['’]\d\d)\b/i;
const present = /\b(?:still|now|today|tonight|tonite|keeps?|rn)\b/i;

export type Calm = 'priced' | 'past' | 'asked' | undefined;

/** A sentence is asked for by itself and within its text. */
const known = new Map<string, Calm>();
const mostKnown = 500;

/** Whether a sentence speaks of a danger only as something to buy, or as long mended. */
export function calmOf(sentence: string): Calm {
  if (known.has(sentence)) return known.get(sentence);
  const calm = calmIn(sentence);
  if (known.size >= mostKnown) known.clear();
  known.set(sentence, calm);
  return calm;
}

function calmIn(sentence: string): Calm {
  if (past.test(sentence) && !present.test(sentence)) return 'past';
  if (priced.test(sentence)) return 'priced';
  return asksInGeneral(sentence) ? 'asked' : undefined;
}
