import { type Answer, beneathWord, sayAnswer, type Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';

/** What is said under the word of a verdict: without the opening, which says that word once more. */
export const sentenceBeneath = (
  topic: Topic | undefined,
  answer: Answer,
  system: UnitSystem = 'us',
): string => (topic ? sayAnswer(beneathWord(topic, answer), { units: system }) : answer.sentence);
