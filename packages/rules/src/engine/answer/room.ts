import { figuresOf, isFarApart, type UnitSystem } from '../../quantity';
import { answerEnglish } from '../words/en-answer';
import { message } from '../words/message';
import { speakerOf } from '../words/speaker';
import type { Quantity, Sayable } from '../words/value';
import type { Ends, LimitAnswer } from './shapes';

export type Against = {
  readonly used: string;
  /** '' where there is no figure to tell. */
  readonly of: string;
  /** Both in one: `1,159 lb of 1,400 lb`, `none asked`. */
  readonly says: string;
};

/** What nothing is asked of is kept, and yet that has shown nothing. */
export const isNothing = (used: Pick<Ends, 'lo' | 'hi'>): boolean => used.lo === 0 && used.hi === 0;

/** Whether nothing is asked of a limit that nobody knows: then it is held, whatever it is. */
export const isIdle = (used: Ends, limit: Ends): boolean =>
  isNothing(used) && limit.hi === Infinity;

const isUnknown = (ends: Ends): boolean => figuresOf(ends, ends.unit).kind === 'unknown';

/** Tenths are told where the two sides lie so close that they would look alike without. */
export const sideOf = ({ headroom }: LimitAnswer, side: Ends): Quantity => ({
  ...side,
  style: isFarApart(headroom) ? 'round' : 'exact',
});

/** What is left of a limit; nothing where it may be over. */
export const leftOf = ({ headroom: { lo, hi, unit }, limit }: LimitAnswer): Quantity => ({
  lo: Math.max(0, lo),
  hi: Math.max(0, hi),
  unit,
  of: limit,
});

/** By how much a limit is over. */
export const overOf = ({ headroom: { lo, hi, unit }, used }: LimitAnswer): Quantity => ({
  lo: -hi,
  hi: -lo,
  unit,
  of: used,
});

/** The same at the most: “over by 20 lb or 30 lb left”. */
export const atMost = (between: Quantity): Quantity => ({ ...between, lo: between.hi });

/** Both sides of a limit; null where there is no figure to tell of the other. */
export function againstSaid(answer: LimitAnswer): {
  readonly used: Sayable;
  readonly of: Sayable | null;
} {
  const { used, limit } = answer;
  if (isIdle(used, limit)) return { used: message('none-asked', {}), of: null };
  const isUnread = isUnknown(limit);
  if (isUnread && isUnknown(used)) return { used: message('not-known', {}), of: null };
  return {
    used: sideOf(answer, used),
    of: isUnread ? message('limit-unread', {}) : sideOf(answer, limit),
  };
}

/** What stands against a limit, in words. */
export function againstOf(answer: LimitAnswer, system: UnitSystem = 'us'): Against {
  const say = speakerOf({ units: system }, answerEnglish);
  const { used, of } = againstSaid(answer);
  if (of === null) return { used: say(used), of: '', says: say(used) };
  return { used: say(used), of: say(of), says: say(message('one-of-other', { used, of })) };
}
