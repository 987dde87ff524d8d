import { isKept, type Kept } from './kept';
import { type Exercise, isExercise } from './practice';
import { dropRecord, everyRecord, hasFields, putRecord } from './shelf';

/** A case of a lesson, by its address, so that a later change of the case counts. */
export type LessonItem = {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  readonly minutes: number;
  /** What the trainer wants to remember to say. */
  readonly note: string;
  /** What the learners do with the case; absent: predict. */
  readonly exercise?: Exercise;
};

/** A lesson as a trainer prepares it. */
export type Lesson = {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
  readonly items: readonly LessonItem[];
  /** One on a line, as typed. */
  readonly learners: string;
};

/** What a case takes where nobody says otherwise (a house choice). */
export const usualMinutes = 8;
export const mostMinutes = 240;
const mostItems = 200;
const longest = 10_000;

function isItem(value: unknown): value is LessonItem {
  const texts = { topic: 'string', name: 'string', title: 'string', note: 'string' } as const;
  if (!hasFields(value, { ...texts, minutes: 'number' })) return false;
  const exercise: unknown = Object.getOwnPropertyDescriptor(value, 'exercise')?.value;
  return exercise === undefined || isExercise(exercise);
}

/** Whether a stored record is a lesson, whole. */
export function isLesson(value: unknown): value is Lesson {
  if (!hasFields(value, { id: 'string', name: 'string', changed: 'number', learners: 'string' })) {
    return false;
  }
  const items: unknown = Object.getOwnPropertyDescriptor(value, 'items')?.value;
  return Array.isArray(items) && items.length <= mostItems && items.every(isItem);
}

export const newLesson = (now: number): Lesson => {
  const id = `${now.toString(36)}-${Math.random().toString(36).slice(2, 8)}`;
  return { id, name: '', changed: now, items: [], learners: '' };
};

export const minutesOf = ({ items }: Lesson): number =>
  items.reduce((sum, { minutes }) => sum + minutes, 0);

const keyOf = ({ topic, name }: Pick<LessonItem, 'topic' | 'name'>): string => `${topic}/${name}`;

/** The lesson with a case put in at the end, or taken out where it is in. */
export function toggled(lesson: Lesson, item: LessonItem): Lesson {
  const without = lesson.items.filter((each) => keyOf(each) !== keyOf(item));
  const items = without.length < lesson.items.length ? without : [...lesson.items, item];
  return { ...lesson, items };
}

/** The lesson with the case at `from` standing at `to`. */
export function moved(lesson: Lesson, from: number, to: number): Lesson {
  const item = lesson.items[from];
  if (!item || to < 0 || to >= lesson.items.length) return lesson;
  return { ...lesson, items: lesson.items.toSpliced(from, 1).toSpliced(to, 0, item) };
}

/** What is wrong with minutes as typed, or the minutes. */
export function readMinutes(typed: string): number | string {
  const minutes = Number(typed.trim());
  return typed.trim() !== '' && Number.isInteger(minutes) && minutes >= 1 && minutes <= mostMinutes
    ? minutes
    : `“${typed.slice(0, 20)}” is no number of minutes; write a whole number from 1 to ${mostMinutes}.`;
}

export const allLessons = (): Promise<readonly Lesson[]> => everyRecord('lessons', isLesson);
export const keepLesson = (lesson: Lesson): Promise<void> =>
  putRecord('lessons', lesson.id, lesson);
export const dropLesson = (id: string): Promise<void> => dropRecord('lessons', id);

/** A lesson to pass on: with it the cases of one's own that it walks. Learners' names stay here. */
export type LessonFile = {
  readonly kind: 'tarebook-lesson';
  readonly version: 1;
  readonly lesson: Lesson;
  readonly cases: readonly Kept[];
};

export function lessonFile(lesson: Lesson, kept: readonly Kept[]): LessonFile {
  const walked = new Set(lesson.items.map(keyOf));
  const cases = kept.filter((each) => walked.has(keyOf(each)));
  return { kind: 'tarebook-lesson', version: 1, lesson: { ...lesson, learners: '' }, cases };
}

/** What a file holds as a lesson, or why it is none, in one sentence. */
export function readLessonFile(file: string, text: string): LessonFile | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return `${file} is no lesson: it cannot be read as JSON; choose one that was saved here.`;
  }
  const told = (key: string): unknown =>
    typeof value === 'object' && value !== null
      ? Object.getOwnPropertyDescriptor(value, key)?.value
      : undefined;
  if (told('kind') === 'tarebook-everything') {
    return `${file} is no lesson; it holds everything of a page, so open it at the foot of this one, under “Open such a file”.`;
  }
  if (told('kind') !== 'tarebook-lesson') {
    return `${file} is no lesson; choose one that was saved here with “Save as a file”.`;
  }
  if (told('version') !== 1) {
    return `${file} is of version ${String(told('version')).slice(0, 20)} and this page reads version 1; open it with a newer page.`;
  }
  const [lesson, cases] = [told('lesson'), told('cases')];
  if (!isLesson(lesson) || lesson.items.some(({ note }) => note.length > longest)) {
    return `${file} holds a lesson that cannot be read whole, so nothing of it was taken in.`;
  }
  if (!Array.isArray(cases) || !cases.every(isKept)) {
    return `${file} holds cases that cannot be read whole, so nothing of it was taken in.`;
  }
  return { kind: 'tarebook-lesson', version: 1, lesson, cases };
}
