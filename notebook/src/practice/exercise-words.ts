import type { Exercise } from '../state/practice';

/** How each exercise is called. */
export const exerciseWords: Readonly<Record<Exercise, string>> = {
  predict: 'Predict',
  ask: 'What do you ask next?',
  say: 'Say it aloud',
  spot: 'Find the wrong figure',
};
