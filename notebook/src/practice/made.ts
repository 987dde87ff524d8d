import type { Topic } from '@tarebook/rules/engine';
import { questionOf } from '../class/predict';
import type { Walked } from '../class/walked';
import { topicHere } from '../state/house';
import { judge } from '../state/judged';
import type { Exercise } from '../state/practice';
import type { Asking } from './ask-next';
import { type Task, taskOf } from './task';
import { variantOf } from './variant';

/** The case that an exercise is made of. */
export type From = {
  readonly topic: string;
  readonly name: string;
  readonly text: string;
};

/** An exercise that is on: a case with fresh figures where it has any that may move. */
export type Made = Walked & {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  /** Whether its figures are its own, and not those of the filed case. */
  readonly isFresh: boolean;
};

/** What a learner has to do, as it is handed over from beside the page. */
export type TaskTold =
  | Exclude<Task, { kind: 'ask' }>
  | { readonly kind: 'ask'; readonly asking: Omit<Asking, 'topic'> };

/** An exercise as it is handed over from beside the page: the text, not yet judged here. */
export type MadeTold = From & Pick<Made, 'title' | 'isFresh'> & { readonly task: TaskTold };

export function toldOf(task: Task): TaskTold {
  if (task.kind !== 'ask') return task;
  const { topic: _, ...asking } = task.asking;
  return { kind: 'ask', asking };
}

/** Makes an exercise of a case; undefined where it has nothing for it. */
export function madeFrom(
  kind: Exercise,
  { topic, name, text }: From,
  seed: number,
): MadeTold | undefined {
  const filed = judge(text);
  if (!filed.answer || !filed.current) return undefined;
  const { title } = filed.doc.front;
  const variant = variantOf(filed.doc, filed.answer, seed);
  const asFiled = { text, doc: filed.doc, answer: filed.answer };
  for (const each of variant ? [variant, asFiled] : [asFiled]) {
    const task = taskOf(kind, each.doc, each.answer, seed);
    if (!task) continue;
    const isFresh = each === variant;
    return { topic, name, title, isFresh, text: each.text, task: toldOf(task) };
  }
  return undefined;
}

/** The same where it is drawn. */
export const taskHere = (task: TaskTold, topic: Topic): Task =>
  task.kind === 'ask' ? { kind: 'ask', asking: { ...task.asking, topic: topicHere(topic) } } : task;

/** The same judged here, where it is drawn. */
export function judgedHere({
  topic,
  name,
  title,
  isFresh,
  text,
  task,
}: MadeTold): Made | undefined {
  const { doc, answer } = judge(text);
  if (!doc.topic || !answer) return undefined;
  const here = taskHere(task, doc.topic);
  return {
    topic,
    name,
    title,
    isFresh,
    doc,
    answer,
    question: questionOf(doc, answer),
    task: here,
  };
}
