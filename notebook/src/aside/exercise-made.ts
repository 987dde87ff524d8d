import { type From, type MadeTold, madeFrom } from '../practice/made';
import { readHouses } from '../state/house';
import type { Exercise } from '../state/practice';
import { openReader, openYaml } from '../state/reading';
import { openTopic } from '../state/topics';

/** An exercise that is wanted, of the first of these cases that has something for it. */
export type ExerciseWanted = {
  readonly exercise: Exercise;
  readonly from: readonly From[];
  readonly seed: number;
};

/** Makes an exercise under the dealer's numbers; `tried` hears how many cases had nothing for it. */
export async function exerciseMade(
  { exercise, from, seed }: ExerciseWanted,
  tried: (count: number) => void,
): Promise<MadeTold | undefined> {
  const topics = new Set(from.map(({ topic }) => topic));
  await Promise.all([...[...topics].map(openTopic), openReader(), openYaml(), readHouses()]);
  for (const [at, each] of from.entries()) {
    if (at > 0) tried(at);
    const made = madeFrom(exercise, each, seed);
    if (made) return made;
  }
  return undefined;
}
