import { caseOf } from '../class/class-cases';
import { questionOf } from '../class/predict';
import type { Walked } from '../class/record';
import { filedOf } from '../state/filed';
import { judge } from '../state/judged';
import type { Exercise } from '../state/practice';
import { seeded, shuffled } from './seeded';
import { taskOf } from './task';
import { variantOf } from './variant';

/** An exercise that is on: a case with fresh figures where it has any that may move. */
export type Made = Walked & {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
};

type From = { readonly topic: string; readonly name: string; readonly text: string };

function madeFrom(kind: Exercise, { topic, name, text }: From, seed: number): Made | undefined {
  const filed = judge(text);
  if (!filed.answer || !filed.current) return undefined;
  const variant = variantOf(filed.doc, filed.answer, seed);
  for (const { doc, answer } of [
    ...(variant ? [variant] : []),
    { doc: filed.doc, answer: filed.answer },
  ]) {
    const task = taskOf(kind, doc, answer, seed);
    const title = filed.doc.front.title;
    if (task) return { topic, name, title, task, doc, answer, question: questionOf(doc, answer) };
  }
  return undefined;
}

/** So many cases of a topic are tried before it is said that it has none for this. */
const mostTried = 15;
const pause = (): Promise<void> => new Promise((done) => setTimeout(done));

/** An exercise of a topic, another one for another seed; undefined where its cases have none. */
export async function makeAny(
  kind: Exercise,
  topic: string,
  seed: number,
): Promise<Made | undefined> {
  const all = shuffled(seeded(seed), await filedOf(topic));
  for (const each of all.slice(0, mostTried)) {
    await pause();
    const made = madeFrom(kind, each, seed);
    if (made) return made;
  }
  return undefined;
}

/** An exercise of one case, with other figures than the last time; undefined where it has none. */
export async function makeOf(
  kind: Exercise,
  of: { readonly topic: string; readonly name: string; readonly title: string },
  seed: number,
): Promise<Made | undefined> {
  const found = await caseOf(of);
  return found && madeFrom(kind, found, seed);
}
