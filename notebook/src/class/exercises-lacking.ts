import type { ExercisesAsked } from '../aside/exercises-of';
import { oneByOne } from '../aside/one-by-one';
import type { Lacking } from '../practice/lacking';
import { houseOf } from '../state/house';
import type { LessonItem } from '../state/lesson';
import { caseOf } from './class-cases';

/** A case is given so long, in milliseconds; what takes longer is told when the class begins. */
const most = 30_000;
const untold: Lacking = {};
const ask = oneByOne<{ readonly kind: 'exercises' } & ExercisesAsked, Lacking>({
  most,
  tooLong: untold,
  away: untold,
});
const found = new Map<string, Promise<Lacking>>();

/** Which exercises a case of a lesson lacks; found beside the page, one case after another. */
export async function exercisesLacking(item: LessonItem): Promise<Lacking> {
  const { topic, name, title } = item;
  const { text } = (await caseOf({ topic, name, title }).catch(() => undefined)) ?? {};
  if (text === undefined) return untold;
  const key = JSON.stringify([topic, text, houseOf(topic)]);
  const told = found.get(key) ?? ask({ kind: 'exercises', topic, text }, () => true);
  found.set(key, told);
  if ((await told) === untold) found.delete(key);
  return told;
}
