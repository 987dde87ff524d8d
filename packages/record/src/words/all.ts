import { livingWords } from './living';
import { paperWords } from './papers';
import { rigWords } from './rig';
import type { WordsOfFacts } from './shapes';

const parts: readonly WordsOfFacts[] = [rigWords, livingWords, paperWords];

const together = <T>(part: (words: WordsOfFacts) => Readonly<Record<string, T>> | undefined) =>
  Object.fromEntries(parts.flatMap((each) => Object.entries(part(each) ?? {})));

/** What people say of facts, whichever topic asks them. */
export const wordsOfFacts: Required<WordsOfFacts> = {
  facts: together(({ facts }) => facts),
  options: together(({ options }) => options),
  units: together(({ units }) => units),
};
