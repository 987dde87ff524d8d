import { type TaskTold, taskHere } from '../practice/made';
import { spotSeed, taskOf } from '../practice/task';
import { committed, type Group, type GroupCase } from '../state/group';
import { judge } from '../state/judged';
import { compared, foundWords } from './predict';
import { taskQuestion } from './task-question';
import type { Walked } from './walked';

export type { Walked } from './walked';

const walked = new Map<string, Walked | undefined>();

export type ToWalk = Pick<GroupCase, 'text' | 'exercise'>;

const keyOf = ({ text, exercise = 'predict' }: ToWalk): string => `${exercise} ${text}`;

/** Whether it is there, or takes no longer than a verdict: which questions settle one takes many of them. */
export const isWalked = (each: ToWalk): boolean =>
  each.exercise !== 'ask' || walked.has(keyOf(each));

/** Takes in what was worked out beside the page. */
export function noteTask(each: ToWalk, told: TaskTold | undefined): void {
  const { doc, answer } = judge(each.text);
  const task = told && doc.topic && taskHere(told, doc.topic);
  const made = answer && task && { doc, answer, task, question: taskQuestion(task, doc, answer) };
  walked.set(keyOf(each), made);
}

/**
 * The reading of a case; undefined when it cannot be judged, or has nothing for its exercise. What is
 * not `isWalked` is worked out here and holds the page meanwhile; see `walk-aside.ts`.
 */
export function walkedCase(each: ToWalk): Walked | undefined {
  const key = keyOf(each);
  if (walked.has(key)) return walked.get(key);
  const { text, exercise = 'predict' } = each;
  const { doc, answer, current } = judge(text);
  const task = answer && current ? taskOf(exercise, doc, answer, spotSeed) : undefined;
  const made = answer && task && { doc, answer, task, question: taskQuestion(task, doc, answer) };
  walked.set(key, made);
  return made;
}

/** The columns of a record, one row for each learner and case. */
const columns = [
  'started',
  'topic',
  'case',
  'title',
  'asked',
  'learner',
  'prediction',
  'came_out',
  'difference',
  'unit',
  'met',
  'verdict',
  'rules',
] as const;

/**
 * A field of a CSV record (RFC 4180). A word that a spreadsheet would take for a formula is held
 * back with an apostrophe; a number with a sign is left as it is.
 */
function field(text: string): string {
  const harmless = /^[=+\-@\t\r]/.test(text) && !/^[-+]?[\d.,]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** The class as CSV: every opened case, every learner; an empty prediction where none was made. */
export function recordAsCsv(group: Group): string {
  const rows = group.opened
    .toSorted((a, b) => a - b)
    .flatMap((at) => {
      const each = group.cases[at];
      const found = each && walkedCase(each);
      if (!each || !found) return [];
      const { question, answer } = found;
      return group.learners.map((learner) => {
        const said = committed(group, learner, at)?.said ?? '';
        const met = said === '' ? undefined : compared(said, question, 'us');
        return [
          new Date(group.started).toISOString(),
          each.topic,
          each.name,
          each.title,
          question.result,
          learner,
          said,
          foundWords(question, 'us'),
          met?.off === undefined ? '' : String(Math.round(met.off * 1000) / 1000),
          question.kind === 'number' ? question.found.unit : '',
          met === undefined ? '' : met.met ? 'yes' : 'no',
          answer.words,
          `${answer.topic} ${answer.rules}`,
        ];
      });
    });
  return [columns, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

/** How many of a learner's predictions were met, of those whose working was opened. */
export function metBy(
  group: Group,
  learner: string,
): { readonly met: number; readonly of: number } {
  const said = group.opened.flatMap((at) => {
    const each = group.cases[at];
    const found = each && walkedCase(each);
    const made = committed(group, learner, at);
    return found && made ? [compared(made.said, found.question, 'us').met] : [];
  });
  return { met: said.filter(Boolean).length, of: said.length };
}

/** What all of them came to, without a name. */
export function togetherSaid(group: Group): string {
  const all = group.learners.map((learner) => metBy(group, learner));
  const met = all.reduce((sum, each) => sum + each.met, 0);
  const of = all.reduce((sum, each) => sum + each.of, 0);
  return of === 0 ? 'Nobody predicted anything.' : `Together: ${met} of ${of} predictions met.`;
}
