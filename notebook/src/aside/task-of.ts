import { type TaskTold, toldOf } from '../practice/made';
import { spotSeed, taskOf } from '../practice/task';
import { readHouses } from '../state/house';
import { judge } from '../state/judged';
import type { Exercise } from '../state/practice';
import { openReadersFor } from '../state/reading';
import { openTopic } from '../state/topics';

/** A case of a class, and what learners do with it. */
export type TaskAsked = {
  readonly topic: string;
  readonly text: string;
  readonly exercise: Exercise;
};

/** What the exercise needs beside the case, under the dealer's numbers; undefined where it has nothing for it. */
export async function taskAside({
  topic,
  text,
  exercise,
}: TaskAsked): Promise<TaskTold | undefined> {
  await Promise.all([openTopic(topic), openReadersFor([text]), readHouses()]);
  const { doc, answer, current } = judge(text);
  const task = answer && current ? taskOf(exercise, doc, answer, spotSeed) : undefined;
  return task && toldOf(task);
}
