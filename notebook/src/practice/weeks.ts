import { compared } from '../class/predict';
import { walkedCase } from '../class/record';
import type { Group } from '../state/group';
import type { Attempt, Exercise } from '../state/practice';
import { isMistake, type Mistake, mistakeOf } from './mistakes';

/** One thing a learner did, in a class or alone. */
export type Done = {
  readonly learner: string;
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  readonly exercise: Exercise;
  readonly at: number;
  readonly met: boolean;
  readonly mistake?: Mistake;
  /** The learner was certain of it; practice alone does not always ask. */
  readonly isCertain?: true;
};

/** What was predicted in classes, of the cases whose working was opened. */
export function doneInClass(group: Group): readonly Done[] {
  return group.opened.flatMap((at) => {
    const each = group.cases[at];
    const walked = each && walkedCase(each);
    if (!each || !walked) return [];
    const { topic, name, title, exercise = 'predict' } = each;
    return group.commitments
      .filter((made) => made.case === at)
      .map(({ learner, said, sure, at: when }): Done => {
        const { met } = compared(said, walked.question, 'us');
        const mistake =
          exercise === 'predict' ? mistakeOf(walked.doc, walked.question, said) : undefined;
        const done = { learner, topic, name, title, exercise, at: when, met };
        const isCertain = sure === 'certain' && { isCertain: true as const };
        return { ...done, ...(mistake && { mistake }), ...isCertain };
      });
  });
}

export function doneAlone({ mistake, ...attempt }: Attempt): Done {
  return { ...attempt, ...(isMistake(mistake) && { mistake }) };
}

const day = 24 * 60 * 60 * 1000;
/** After a miss it comes back the next day, then ever later; after three in a row it is learned. A house choice. */
export const comesBackAfter = [1, 3, 7] as const;

/** What a learner missed, and when it comes back. */
export type Due = Pick<Done, 'learner' | 'topic' | 'name' | 'title' | 'exercise'> & {
  readonly due: number;
};

/** In the order in which they were met first. */
function grouped<T>(all: readonly T[], keyOf: (each: T) => string): ReadonlyMap<string, T[]> {
  const by = new Map<string, T[]>();
  for (const each of all) {
    const key = keyOf(each);
    const same = by.get(key);
    if (same) same.push(each);
    else by.set(key, [each]);
  }
  return by;
}

const keyOf = ({ learner, topic, name, exercise }: Done): string =>
  [learner, topic, name, exercise].join('\n');

/** What was missed and has not been met three times in a row since; what comes back first stands first. */
export function comingBack(done: readonly Done[]): readonly Due[] {
  const by = grouped(
    done.toSorted((a, b) => a.at - b.at),
    keyOf,
  );
  return [...by.values()]
    .flatMap((all): Due[] => {
      const missed = all.findLastIndex(({ met }) => !met);
      const last = all.at(-1);
      const wait = comesBackAfter[all.length - 1 - missed];
      if (missed < 0 || !last || wait === undefined) return [];
      const { learner, topic, name, title, exercise } = last;
      return [{ learner, topic, name, title, exercise, due: last.at + wait * day }];
    })
    .toSorted((a, b) => a.due - b.due);
}

/** Of each learner: how much was met, and how often each mistake was made. */
export type Sum = {
  readonly learner: string;
  readonly of: number;
  readonly met: number;
  /** How often it was not met, and the learner certain. */
  readonly misled: number;
  readonly mistakes: Readonly<Partial<Record<Mistake, number>>>;
};

export function sumsOf(done: readonly Done[]): readonly Sum[] {
  const by = grouped(done, ({ learner }) => learner);
  return [...by]
    .map(([learner, all]): Sum => {
      const made: Partial<Record<Mistake, number>> = {};
      for (const { mistake } of all) if (mistake) made[mistake] = (made[mistake] ?? 0) + 1;
      const met = all.filter((each) => each.met).length;
      const misled = all.filter((each) => !each.met && each.isCertain).length;
      return { learner, of: all.length, met, misled, mistakes: made };
    })
    .toSorted((a, b) => a.learner.localeCompare(b.learner, 'en'));
}
