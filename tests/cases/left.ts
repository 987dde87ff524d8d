import { askedOf } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import {
  type Answer,
  type Asked,
  answerTraced,
  type Forms,
  formsOf,
  type Level,
  levels,
  type Topic,
} from '@tarebook/rules/engine';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, refusedFolder } from './files';

/** An answer as it leaves, in every form. */
export type Left = {
  readonly name: string;
  readonly topic: Topic;
  readonly asked: Asked;
  /** The asking that the document names. */
  readonly asking: string | undefined;
  readonly answer: Answer;
  readonly level: Level;
  readonly forms: Forms;
};

/** What is asked with these facts, in every form; what would change it is looked for in none. */
export function leftOf(name: string, topic: Topic, asked: Asked, asking?: string): Left {
  const answer = answerTraced(topic, asked);
  const level = levels.find((each) => topic.outcomes[each].id === answer.outcome) ?? 'unknown';
  // Only a letter and a sheet tell what would change it.
  const changes = { remedies: [] };
  const { forms } = formsOf(topic, asked, { asking, changes });
  return { name, topic, asked, asking, answer, level, forms };
}

const kept = new Map<string, readonly Left[]>();

/** Made once for all files of tests that share a process: several look at the same answers. */
function once(of: string, make: () => readonly Left[]): readonly Left[] {
  const before = kept.get(of);
  if (before) return before;
  const made = make();
  kept.set(of, made);
  return made;
}

/** Every filed case. */
export const filedLeft = (): readonly Left[] =>
  once('filed', () =>
    markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => {
      const doc = readFiled(text);
      const { topic, asked } = askedOf(doc);
      return leftOf(name, topic, asked, doc.front.asking);
    }),
  );

/** Every asking of every topic with nothing told. */
export const untoldLeft = (): readonly Left[] =>
  once('untold', () =>
    Object.values<Topic>(topics).flatMap((topic) =>
      Object.keys(topic.askings ?? {}).map((asking) =>
        leftOf(`${topic.id}: nothing, ${asking}`, topic, { facts: {}, asOf: '2026-11-01' }, asking),
      ),
    ),
  );
