import type { QuestionPart, Urgency } from '@tarebook/record';
import type { AnswerForm } from './answer-shapes';

/** What is urgent, in words. */
export const urgentWords: Readonly<Record<Urgency, string>> = {
  gas: 'gas',
  alarm: 'an alarm, or people feel sick',
  smoke: 'smoke or fire',
  heat: 'something is hot or melted',
  shock: 'an electric shock',
  frost: 'frost is near',
  wheel: 'a wheel or a tire',
  brakes: 'the brakes',
  coupling: 'the coupling',
  sway: 'it sways now',
  lift: 'it may roll or fall',
  doubt: 'somebody doubts that it is safe',
};

export const formWords: Readonly<Record<AnswerForm, string>> = {
  short: 'In short',
  post: 'To this one',
  everybody: 'To everybody',
  askBack: 'Ask back',
  spoken: 'On the phone',
  letter: 'With the working',
  slip: 'To hand on',
};

/** A stretch of a question: plain, read as facts, or personal. */
export type Stretch = {
  readonly text: string;
  readonly kind: 'plain' | 'fact' | 'personal';
  /** The facts that were read there, as “fact: value”. */
  readonly facts: readonly string[];
};

export const factText = (fact: string, value: string): string => `${fact}: ${value}`;

/** The words of a question cut where a fact was read, or where somebody is named by a number. */
export function stretches(
  { text, facts, words }: Pick<QuestionPart, 'text' | 'facts' | 'words'>,
  personal: readonly string[],
): readonly Stretch[] {
  type Place = { from: number; to: number; kind: 'fact' | 'personal'; facts: string[] };
  const places: Place[] = [];
  const add = (said: string, kind: Place['kind'], fact: string[]): void => {
    const from = text.indexOf(said);
    if (said === '' || from < 0) return;
    const to = from + said.length;
    const over = places.find((each) => each.from < to && from < each.to);
    if (!over) places.push({ from, to, kind, facts: fact });
    else if (over.kind === 'fact') over.facts.push(...fact);
  };
  for (const each of personal) add(each, 'personal', []);
  for (const [fact, said] of Object.entries(words)) {
    add(said, 'fact', [factText(fact, facts[fact] ?? '')]);
  }
  const found: Stretch[] = [];
  let at = 0;
  for (const { from, to, kind, facts: told } of places.toSorted((a, b) => a.from - b.from)) {
    if (from > at) found.push({ text: text.slice(at, from), kind: 'plain', facts: [] });
    found.push({ text: text.slice(from, to), kind, facts: told });
    at = to;
  }
  if (at < text.length) found.push({ text: text.slice(at), kind: 'plain', facts: [] });
  return found;
}
