import { everyRecord, hasFields, putRecord } from './shelf';

/** What is practiced. */
export const exercises = ['predict', 'ask', 'say', 'spot'] as const;
export type Exercise = (typeof exercises)[number];

/** One exercise of one learner, done. It stays on this device. */
export type Attempt = {
  readonly id: string;
  readonly learner: string;
  readonly topic: string;
  /** The case whose figures it had, or that it was made from. */
  readonly name: string;
  readonly title: string;
  readonly exercise: Exercise;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly met: boolean;
  readonly said: string;
  /** Which mistake the answer looks like; see `practice/mistakes`. */
  readonly mistake?: string;
};

export const isExercise = (value: unknown): value is Exercise =>
  exercises.some((each) => each === value);

export function isAttempt(value: unknown): value is Attempt {
  const fields = { id: 'string', learner: 'string', topic: 'string', name: 'string' } as const;
  if (!hasFields(value, { ...fields, title: 'string', said: 'string', at: 'number' })) return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const mistake = held('mistake');
  return (
    typeof held('met') === 'boolean' &&
    isExercise(held('exercise')) &&
    (mistake === undefined || typeof mistake === 'string')
  );
}

export const allAttempts = (): Promise<readonly Attempt[]> => everyRecord('practice', isAttempt);
export const keepAttempt = (attempt: Attempt): Promise<void> =>
  putRecord('practice', attempt.id, attempt);

/** Takes in what learners practiced elsewhere, and says so; what is here already is the same. */
export async function takeInPractice(attempts: readonly Attempt[]): Promise<string> {
  for (const each of attempts) await keepAttempt(each);
  return attempts.length === 0 ? '' : 'What learners practiced came with them.';
}

export function newAttempt(done: Omit<Attempt, 'id' | 'at'>, now: number): Attempt {
  return { ...done, id: `${now.toString(36)}-${Math.random().toString(36).slice(2, 8)}`, at: now };
}
