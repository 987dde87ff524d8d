import type { CaseDocument } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import type { Exercise } from '../state/practice';
import { type Asking, askingOf } from './ask-next';
import { type WrongFigure, wrongFigureOf } from './wrong-figure';

/** What a learner has to do with a case, and what it needs beside the case. */
export type Task =
  | { readonly kind: 'predict' }
  | { readonly kind: 'say' }
  | { readonly kind: 'ask'; readonly asking: Asking }
  | { readonly kind: 'spot'; readonly wrong: WrongFigure };

/** The wrong figure of a case is the same in every window of a class. */
export const spotSeed = 1;

/** @returns undefined where the case has nothing to ask for, or too few lines to hide a wrong one among */
export function taskOf(
  kind: Exercise,
  doc: CaseDocument,
  answer: Answer,
  seed: number,
): Task | undefined {
  if (kind === 'ask') {
    const asking = askingOf(doc, answer);
    return asking && { kind, asking };
  }
  if (kind === 'spot') {
    const wrong = wrongFigureOf(answer, seed);
    return wrong && { kind, wrong };
  }
  return kind === 'say' ? { kind } : { kind: 'predict' };
}
