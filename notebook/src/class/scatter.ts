import { showNumber, type UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { surenesses } from '../state/group';
import type { Counted, Guess } from './guesses';
import { askedUnit, guessedMiddle, leftOpen, type Question } from './predict';
import { countedSeveral } from './several';

/** So many bars at most carry the figures of a class. */
const bars = 4;

/** Figures in steps of even width, so that the scatter is seen and nobody's own figure stands there. */
function inSteps(figures: readonly number[], unit: string): readonly Counted[] {
  if (figures.length === 0) return [];
  const [low, high] = [Math.min(...figures), Math.max(...figures)];
  // Where all said the same there is still a step around it.
  const around = low === high ? Math.max(Math.abs(low) * 0.05, 0.5) : 0;
  const ticks = scaleLinear([low - around, high + around], [0, 1])
    .nice(bars)
    .ticks(bars);
  return ticks.slice(1).map((to, at) => {
    const from = ticks[at] ?? to;
    const isLast = at === ticks.length - 2;
    const count = figures.filter((each) => each >= from && (each < to || (isLast && each <= to)));
    const word = `${showNumber(from, 2)} to ${showNumber(to, 2)} ${unit}`.trim();
    return { word, count: count.length, met: false };
  });
}

/** How many said what, with nothing that tells what came out. */
export function scattered(
  guesses: readonly Guess[],
  question: Question,
  system: UnitSystem,
): readonly Counted[] {
  const all = guesses.map(({ said }) => said);
  switch (question.kind) {
    case 'word':
      return question.words.map((word) => {
        return { word, count: all.filter((said) => said === word).length, met: false };
      });
    case 'several':
      // How few questions would do is what comes out.
      return countedSeveral(all, question).flatMap((row) =>
        question.result === 'ask' && row.count === 0 ? [] : { ...row, met: false },
      );
    case 'number': {
      const figures = all.flatMap((said) => guessedMiddle(said, question, system) ?? []);
      const open = all.filter((said) => said === leftOpen).length;
      return [
        ...inSteps(figures, askedUnit(question, system)),
        ...(open > 0 ? [{ word: leftOpen, count: open, met: false }] : []),
      ];
    }
  }
}

/** How many answered, and how many of them were certain. */
export function scatterSays(guesses: readonly Guess[]): string {
  if (guesses.length === 0) return 'Nobody made a guess.';
  const certain = guesses.filter(({ sure }) => sure === surenesses.at(-1)).length;
  const many = `${guesses.length} ${guesses.length === 1 ? 'answer' : 'answers'}`;
  return certain === 0 ? `${many}.` : `${many}; ${certain} of them certain.`;
}
