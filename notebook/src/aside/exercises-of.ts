import { type Lacking, lackingIn } from '../practice/lacking';
import { readHouses } from '../state/house';
import { openReadersFor } from '../state/reading';
import { openTopic } from '../state/topics';

/** A case of which a lesson wants to know what learners can do with it. */
export type ExercisesAsked = { readonly topic: string; readonly text: string };

/** Which exercises the case lacks, under the dealer's numbers, and why. */
export async function exercisesOf({ topic, text }: ExercisesAsked): Promise<Lacking> {
  await Promise.all([openTopic(topic), openReadersFor([text]), readHouses()]);
  return lackingIn(text);
}
