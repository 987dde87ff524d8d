import type { Answer, LimitAnswer, Missing, State, Topic } from '@tarebook/rules/engine';
import { beneathWord, leftOf, levels, overOf, sayAnswer, urgentOf } from '@tarebook/rules/engine';
import { marginParts, type Shown, showParts, type UnitSystem } from '@tarebook/rules/quantity';
import type { Judged } from './judged';
import { type Refused, refusedIn } from './refused';

/** One large figure: the number, its unit, and what it is a figure of. */
export type TicketFigure = Shown & { readonly of: 'left' | 'over' | 'asked' };

/** What the answer comes to, for a person who looks for a second. */
export type Ticket =
  /** Entries that cannot be taken: there is no verdict until they are mended. */
  | { readonly kind: 'unread'; readonly refused: readonly Refused[] }
  | {
      readonly kind: 'verdict';
      readonly level: State;
      readonly word: string;
      readonly figure?: TicketFigure;
      readonly sentence: string;
      /** What to ask, where it cannot be said. */
      readonly ask?: Missing;
      /** It cannot be said, and what to ask first is still to be found: figures shown are of before. */
      readonly coming?: true;
    };

/** Whether it has but its word yet. */
export const isComing = (ticket: Ticket | undefined): boolean =>
  ticket?.kind === 'verdict' && ticket.coming === true;

const levelOf = ({ outcomes }: Topic, id: string): State =>
  levels.find((level) => outcomes[level].id === id) ?? 'unknown';

const isClosed = ({ lo, hi }: { lo: number; hi: number }): boolean =>
  Number.isFinite(lo) && Number.isFinite(hi);

function leftOver(limit: LimitAnswer, system: UnitSystem): TicketFigure | undefined {
  const { headroom } = limit;
  if (!isClosed(headroom) || (headroom.lo < 0 && headroom.hi > 0)) return undefined;
  const over = headroom.hi < 0;
  const told = over ? overOf(limit) : leftOf(limit);
  return { ...marginParts(told, told.unit, system), of: over ? 'over' : 'left' };
}

function figureOf(
  { topic, answer, level }: Standing,
  system: UnitSystem,
): TicketFigure | undefined {
  if (urgentOf(topic, answer.findings)) return undefined;
  if (level === 'unknown') {
    const tips = answer.missing[0]?.tips;
    if (!tips || typeof tips === 'string' || !isClosed(tips)) return undefined;
    return { ...showParts(tips, tips.unit, system), of: 'asked' };
  }
  const over = answer.limits
    .filter(({ state }) => state === 'stop')
    .toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi)[0];
  // What stops it is not a limit, so what a limit leaves would only reassure.
  if (level === 'stop' && !over) return undefined;
  const limit = over ?? answer.limits.find(({ id }) => id === answer.binding);
  return limit && leftOver(limit, system);
}

type Standing = { readonly topic: Topic; readonly answer: Answer; readonly level: State };

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/**
 * Where it cannot be said, the word alone, which is known at once; what decides takes many times as
 * long to find. The question asked before stands meanwhile, for want of another.
 */
export function wordAlone({ doc, answer, current }: Judged, before?: Ticket): Ticket | undefined {
  if (!doc.topic || !current || !answer) return undefined;
  const level = levelOf(doc.topic, answer.outcome);
  if (level !== 'unknown') return undefined;
  const { figure, ask } = before?.kind === 'verdict' && before.level === level ? before : {};
  return {
    ...{ kind: 'verdict', level, word: capital(answer.words), coming: true },
    sentence: 'Looking …',
    ...(figure && { figure }),
    ...(ask && { ask }),
  };
}

/** The ticket of a case as it stands; undefined where there is nothing to say yet. */
export function ticketOf({ doc, answer, current }: Judged, system: UnitSystem): Ticket | undefined {
  const { topic } = doc;
  if (!topic) return undefined;
  if (!current || !answer) return { kind: 'unread', refused: refusedIn(doc) };
  const level = levelOf(topic, answer.outcome);
  const figure = figureOf({ topic, answer, level }, system);
  const ask = level === 'unknown' ? answer.missing[0] : undefined;
  return {
    kind: 'verdict',
    level,
    word: capital(answer.words),
    // The word stands over it, and a screen reader says both.
    sentence: sayAnswer(beneathWord(topic, answer), { units: system }),
    ...(figure && { figure }),
    ...(ask && { ask }),
  };
}
