import { type CaseDocument, setFact } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import { judge } from '../state/judged';
import { levelOf } from '../state/level';
import { readDocument } from '../state/reading';

/** A fact that is hidden, to be asked for. */
export type Hidden = {
  readonly id: string;
  readonly label: string;
  readonly ask: string;
  readonly value: string;
};

/** A case of which the learner asks for what is hidden until the verdict is settled. */
export type Asking = {
  /** With all of `hidden` unknown. */
  readonly text: string;
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
function toldBy({ topic, blocks }: CaseDocument): readonly Hidden[] {
  return blocks.flatMap((block) =>
    block.kind === 'facts'
      ? block.rows.flatMap(({ id, value }): Hidden[] => {
          const fact = topic?.facts[id];
          const known = value !== '' && value !== 'unknown';
          return fact && known ? [{ id, label: fact.label, ask: fact.ask, value }] : [];
        })
      : [],
  );
}

const isSettled = ({ doc, answer }: { doc: CaseDocument; answer: Answer }, outcome: string) =>
  doc.topic !== undefined &&
  answer.outcome === outcome &&
  levelOf(doc.topic.outcomes, answer.outcome) !== 'unknown';

/** Which facts the rules ask for, one after another, until the verdict is settled. */
function inOrder(
  start: string,
  all: readonly Hidden[],
  outcome: string,
): readonly string[] | undefined {
  const asked: string[] = [];
  let text = start;
  for (;;) {
    const { doc, answer } = judge(text);
    if (!answer) return undefined;
    if (isSettled({ doc, answer }, outcome)) return asked;
    const next = answer.missing.find(({ fact }) =>
      all.some(({ id }) => id === fact && !asked.includes(id)),
    );
    const told = all.find(({ id }) => id === next?.fact);
    if (!told) return undefined;
    asked.push(told.id);
    text = withFact(text, told.id, told.value);
  }
}

/**
 * Hides what a case tells, so that the verdict is open, and finds in which order the rules would ask.
 *
 * @returns undefined where nothing needs to be asked, or where asking alone settles nothing
 */
export function askingOf(doc: CaseDocument, answer: Answer): Asking | undefined {
  const { topic } = doc;
  const { outcome } = answer;
  if (!topic || levelOf(topic.outcomes, outcome) === 'unknown') return undefined;
  const all = toldBy(doc);
  const hide = (told: readonly Hidden[]) =>
    told.reduce((text, { id }) => withFact(text, id, 'unknown'), doc.text);
  const order = inOrder(hide(all), all, outcome);
  if (!order || order.length === 0) return undefined;
  const before = new Set(order.slice(0, Math.max(0, order.length - mostAsked)));
  const hidden = all.filter(({ id }) => !before.has(id));
  const text = hide(hidden);
  const best = inOrder(text, hidden, outcome);
  return best && best.length > 0 && hidden.length > best.length
    ? { text, hidden, outcome, best }
    : undefined;
}

/** How an exercise stands after some questions. */
export type Standing = {
  readonly text: string;
  readonly settled: boolean;
  readonly asked: readonly Hidden[];
  /** The fact that the rules would ask for next, of those still hidden. */
  readonly next: Hidden | undefined;
};

export function standing({ text, hidden, outcome }: Asking, asked: readonly string[]): Standing {
  const told = asked.flatMap((id) => hidden.find((each) => each.id === id) ?? []);
  const now = told.reduce((so, { id, value }) => withFact(so, id, value), text);
  const { doc, answer } = judge(now);
  const left = hidden.filter(({ id }) => !asked.includes(id));
  const first = answer?.missing.find(({ fact }) => left.some(({ id }) => id === fact));
  return {
    text: now,
    settled: answer !== undefined && isSettled({ doc, answer }, outcome),
    asked: told,
    next: left.find(({ id }) => id === first?.fact),
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
