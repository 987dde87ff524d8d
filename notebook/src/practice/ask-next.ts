import { askedIn, type CaseDocument, setFact } from '@tarebook/casebook';
import {
  type Answer,
  type Asked,
  answerTraced,
  type FactGiven,
  type Topic,
} from '@tarebook/rules/engine';
import { topicHere } from '../state/house';
import { levelOf } from '../state/level';
import { readDocument } from '../state/reading';

/** A fact that is hidden, to be asked for. */
export type Hidden = {
  readonly id: string;
  readonly label: string;
  readonly ask: string;
  /** As it is written, and as it was read. */
  readonly value: string;
  readonly given: FactGiven;
};

/** A case of which the learner asks for what is hidden until the verdict is settled. */
export type Asking = {
  /** With all of `hidden` unknown, as a document and as what is judged. */
  readonly text: string;
  readonly asks: Asked;
  readonly topic: Topic;
  readonly hidden: readonly Hidden[];
  /** The outcome once all is told, which a settled verdict has. */
  readonly outcome: string;
  /** The facts in the order in which the rules themselves would ask; its length is what is aimed at. */
  readonly best: readonly string[];
};

/** More than so many questions are no exercise any more; the first are answered beforehand. */
const mostAsked = 4;

const withFact = (text: string, id: string, value: string): string =>
  setFact(readDocument(text), id, value);

/** A figure or a choice that a case tells as known; lists stay as they are. */
function toldBy({ topic, blocks, facts }: CaseDocument): readonly Hidden[] {
  return blocks.flatMap((block) =>
    block.kind === 'facts'
      ? block.rows.flatMap(({ id, value }): Hidden[] => {
          const fact = topic?.facts[id];
          const given = facts[id];
          const known = value !== '' && value !== 'unknown' && given !== undefined;
          return fact && known ? [{ id, label: fact.label, ask: fact.ask, value, given }] : [];
        })
      : [],
  );
}

/** The same asked with some facts told, or taken away. */
const asking = (asks: Asked, told: readonly Hidden[], unknown: readonly Hidden[]): Asked => ({
  ...asks,
  facts: {
    ...asks.facts,
    ...Object.fromEntries(unknown.map(({ id }) => [id, 'unknown'])),
    ...Object.fromEntries(told.map(({ id, given }) => [id, given])),
  },
});

const isSettled = (topic: Topic, answer: Answer, outcome: string): boolean =>
  answer.outcome === outcome && levelOf(topic.outcomes, answer.outcome) !== 'unknown';

/** The fact that the rules would ask for next, of those still hidden. */
const nextOf = ({ missing }: Answer, left: readonly Hidden[]): Hidden | undefined => {
  const first = missing.find(({ fact }) => left.some(({ id }) => id === fact));
  return left.find(({ id }) => id === first?.fact);
};

/** Which facts the rules ask for, one after another, until the verdict is settled. */
function inOrder(
  topic: Topic,
  start: Asked,
  all: readonly Hidden[],
  outcome: string,
): readonly Hidden[] | undefined {
  const asked: Hidden[] = [];
  for (;;) {
    const answer = answerTraced(topic, asking(start, asked, []));
    if (isSettled(topic, answer, outcome)) return asked;
    const next = nextOf(
      answer,
      all.filter((each) => !asked.includes(each)),
    );
    if (!next) return undefined;
    asked.push(next);
  }
}

/**
 * Hides what a case tells, so that the verdict is open, and finds in which order the rules would ask.
 * What they would ask first is told beforehand, so the last of their questions are the exercise.
 *
 * @returns undefined where nothing needs to be asked, or where asking alone settles nothing
 */
export function askingOf(doc: CaseDocument, answer: Answer): Asking | undefined {
  const { outcome } = answer;
  if (!doc.topic || levelOf(doc.topic.outcomes, outcome) === 'unknown') return undefined;
  const topic = topicHere(doc.topic);
  const all = toldBy(doc);
  const order = inOrder(topic, asking(askedIn(doc), [], all), all, outcome);
  if (!order || order.length === 0) return undefined;
  const best = order.slice(-mostAsked);
  const hidden = all.filter((each) => best.includes(each) || !order.includes(each));
  if (hidden.length <= best.length) return undefined;
  const text = hidden.reduce((so, { id }) => withFact(so, id, 'unknown'), doc.text);
  const asks = asking(askedIn(doc), [], hidden);
  return { text, asks, topic, hidden, outcome, best: best.map(({ id }) => id) };
}

/** How an exercise stands after some questions. */
export type Standing = {
  readonly text: string;
  readonly settled: boolean;
  readonly asked: readonly Hidden[];
  /** The fact that the rules would ask for next, of those still hidden; found when it is read. */
  readonly next: Hidden | undefined;
};

export function standing(exercise: Asking, asked: readonly string[]): Standing {
  const { text, asks, topic, hidden, outcome } = exercise;
  const told = asked.flatMap((id) => hidden.find((each) => each.id === id) ?? []);
  const left = hidden.filter(({ id }) => !asked.includes(id));
  const answer = answerTraced(topic, asking(asks, told, []));
  return {
    text: told.reduce((so, { id, value }) => withFact(so, id, value), text),
    settled: isSettled(topic, answer, outcome),
    asked: told,
    get next() {
      return nextOf(answer, left);
    },
  };
}

/** The score in one sentence; met: with no more questions than the rules themselves need. */
export function scored({ best }: Asking, asked: number): { met: boolean; says: string } {
  const questions = (n: number): string => `${n} question${n === 1 ? '' : 's'}`;
  const over = asked - best.length;
  if (over <= 0)
    return {
      met: true,
      says: `Settled with ${questions(asked)}; the rules’ own order takes ${best.length}.`,
    };
  return {
    met: false,
    says: `Settled with ${questions(asked)}; ${best.length} would have been enough, so ${over} settled nothing.`,
  };
}
