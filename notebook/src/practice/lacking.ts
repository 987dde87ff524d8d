import { judge } from '../state/judged';
import { levelOf } from '../state/level';
import { type Exercise, exercises } from '../state/practice';
import { taskOf } from './task';

/** The exercises that a case has nothing for, each with the reason in a few words. */
export type Lacking = Partial<Readonly<Record<Exercise, string>>>;

const unread = 'the case cannot be judged yet; open it and mend what is marked there';
const none = {
  ask: 'too little in it can be hidden and asked for',
  spot: 'its working has too few sums to hide a wrong one among',
  predict: unread,
  say: unread,
} as const satisfies Record<Exercise, string>;
const staysOpen = 'its verdict stays open whatever is asked';

/** What learners cannot do with a case. Its topic must have been opened. */
export function lackingIn(text: string): Lacking {
  const { doc, answer, current } = judge(text);
  if (!answer || !current || !doc.topic)
    return Object.fromEntries(exercises.map((each) => [each, unread]));
  const isOpen = levelOf(doc.topic.outcomes, answer.outcome) === 'unknown';
  return Object.fromEntries(
    exercises
      .filter((each) => !taskOf(each, doc, answer, 1))
      .map((each) => [each, each === 'ask' && isOpen ? staysOpen : none[each]]),
  );
}
