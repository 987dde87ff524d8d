import type { UnitSystem } from '@tarebook/rules/quantity';
import { committed, type Group, type Sureness, surenesses } from '../state/group';
import { compared, leftOpen, type Question } from './predict';
import { countedSeveral } from './several';

/** A guess without a name: what may be shown to everybody once the working is open. */
export type Guess = { readonly said: string; readonly sure?: Sureness };

/** The guesses of the present case, in no order that tells who made which. */
export const guessesOf = (group: Group): readonly Guess[] =>
  group.learners
    .flatMap((learner) => {
      const made = committed(group, learner);
      return made ? [{ said: made.said, ...(made.sure && { sure: made.sure }) }] : [];
    })
    .toSorted((a, b) => a.said.localeCompare(b.said, 'en', { numeric: true }));

/** Of each choice, or of the figures, how many said it. */
export type Counted = {
  readonly word: string;
  readonly count: number;
  readonly met: boolean;
};

/** How many said what: every choice of a word question; of figures those met, under, over, left open. */
export function counted(
  guesses: readonly Guess[],
  question: Question,
  system: UnitSystem,
): readonly Counted[] {
  if (question.kind === 'word') {
    return question.words.map((word) => {
      const count = guesses.filter(({ said }) => said === word).length;
      return { word, count, met: word === question.found };
    });
  }
  if (question.kind === 'several') {
    return countedSeveral(
      guesses.map(({ said }) => said),
      question,
    );
  }
  const each = guesses.map(({ said }) => ({ said, ...compared(said, question, system) }));
  const open = each.filter(({ said }) => said === leftOpen);
  const figures = each.filter(({ said }) => said !== leftOpen);
  const rows: readonly Counted[] = [
    { word: 'near enough', count: figures.filter(({ met }) => met).length, met: true },
    {
      word: 'too low',
      count: figures.filter((g) => !g.met && (g.off ?? 0) < 0).length,
      met: false,
    },
    {
      word: 'too high',
      count: figures.filter((g) => !g.met && (g.off ?? 0) > 0).length,
      met: false,
    },
    { word: leftOpen, count: open.length, met: open.some(({ met }) => met) },
  ];
  return rows.filter(({ word, count }) => word !== leftOpen || count > 0);
}

/** In one sentence: how many were right, and how many were certain and wrong. */
export function guessesSay(
  guesses: readonly Guess[],
  question: Question,
  system: UnitSystem,
): string {
  if (guesses.length === 0) return 'Nobody made a guess.';
  const met = guesses.filter(({ said }) => compared(said, question, system).met);
  const certain = surenesses[surenesses.length - 1];
  const misled = guesses.filter((g) => g.sure === certain && !met.includes(g)).length;
  const right = `${met.length} of ${guesses.length} ${met.length === 1 && guesses.length === 1 ? 'was' : 'were'} right`;
  return misled === 0
    ? `${right}.`
    : `${right}; ${misled} ${misled === 1 ? 'was' : 'were'} certain of something else.`;
}
