import { exerciseWords } from '../practice/exercise-words';
import { filedCase } from '../state/filed';
import { frontLine } from '../state/front-line';
import type { GroupCase } from '../state/group';
import { keptCase } from '../state/kept';
import type { LessonItem } from '../state/lesson';
import { walkedCase } from './record';
import { walker } from './walk-aside';

const pause = (): Promise<void> => new Promise((done) => setTimeout(done));

/** A case as it stands on this device, else as it came; undefined where there is none any more. */
export async function caseOf({
  topic,
  name,
  title,
  exercise,
}: Pick<LessonItem, 'topic' | 'name' | 'title' | 'exercise'>): Promise<GroupCase | undefined> {
  const kept = await keptCase(topic, name).catch(() => undefined);
  const text = kept?.text ?? (await filedCase(topic, name));
  if (text === undefined) return undefined;
  const found = { topic, name, text, title: frontLine(text, 'title') || title };
  return { ...found, ...(exercise && { exercise }) };
}

/** Told of what was ended before it was done. */
export const stopped = 'Stopped; nothing was begun.';

const ended = (signal: AbortSignal): Promise<void> =>
  new Promise((done) => signal.addEventListener('abort', () => done(), { once: true }));

/**
 * The cases of a lesson, read and judged once, the page left free between them.
 * @returns the cases, or the first that cannot be walked, in one sentence
 */
export async function casesOf(
  items: readonly LessonItem[],
  tell: (done: number) => void,
  signal: AbortSignal,
): Promise<readonly GroupCase[] | string> {
  const aside = walker();
  try {
    return await walkedAll(items, tell, signal, (each) =>
      Promise.race([aside.walk(each), ended(signal)]),
    );
  } finally {
    aside.end();
  }
}

async function walkedAll(
  items: readonly LessonItem[],
  tell: (done: number) => void,
  signal: AbortSignal,
  walk: (each: GroupCase) => Promise<void>,
): Promise<readonly GroupCase[] | string> {
  const cases: GroupCase[] = [];
  for (const item of items) {
    const found = await caseOf(item);
    if (!found) {
      return `“${item.title}” is not here any more; take it out of the lesson.`;
    }
    await pause();
    if (!walkedCase({ text: found.text })) {
      return `“${found.title}” cannot be judged yet; open it and mend what is marked there, or leave it out.`;
    }
    await walk(found);
    if (signal.aborted) return stopped;
    if (!walkedCase(found)) {
      return `“${found.title}” has nothing for “${exerciseWords[found.exercise ?? 'predict']}”; choose another exercise for it.`;
    }
    const { minutes, note } = item;
    cases.push({ ...found, minutes, ...(note !== '' && { note }) });
    tell(cases.length);
    await pause();
  }
  return cases;
}
