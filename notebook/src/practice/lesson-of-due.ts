import { type Lesson, newLesson, usualMinutes } from '../state/lesson';
import type { Due } from './weeks';

const keyOf = ({ topic, name }: Pick<Due, 'topic' | 'name'>): string => `${topic}/${name}`;

/** A lesson of what comes back: each case once, with its first exercise, for whoever missed any of them. */
export function lessonOfDue(due: readonly Due[], now: number): Lesson {
  const cases = new Map<string, Due>();
  for (const each of due) if (!cases.has(keyOf(each))) cases.set(keyOf(each), each);
  return {
    ...newLesson(now),
    name: `What comes back, ${new Date(now).toISOString().slice(0, 10)}`,
    items: [...cases.values()].map(({ topic, name, title, exercise }) => {
      const item = { topic, name, title, minutes: usualMinutes, note: '' };
      return { ...item, ...(exercise !== 'predict' && { exercise }) };
    }),
    learners: [...new Set(due.map(({ learner }) => learner))].join('\n'),
  };
}
