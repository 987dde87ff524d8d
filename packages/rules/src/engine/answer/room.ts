import { isFarApart, show, showRound, type UnitSystem } from '../../quantity';
import type { Quantity } from '../words/value';
import type { Ends, LimitAnswer } from './shapes';

export type Against = {
  readonly used: string;
  /** '' where there is no figure to tell. */
  readonly of: string;
  /** Both in one: `1,159 lb of 1,400 lb`, `none asked`. */
  readonly says: string;
};

/** Whether nothing is asked of a limit that nobody knows: then it is held, whatever it is. */
export const isIdle = (used: Ends, limit: Ends): boolean =>
  used.lo === 0 && used.hi === 0 && limit.hi === Infinity;

/** Tenths are told where the two sides lie so close that they would look alike without. */
export const sideShown = ({ headroom }: LimitAnswer): typeof show =>
  isFarApart(headroom) ? showRound : show;

/** A side of a limit as it is said. */
export const sideOf = ({ headroom }: LimitAnswer, side: Ends): Quantity => ({
  ...side,
  style: isFarApart(headroom) ? 'round' : 'exact',
});

/** What stands against a limit, in words. */
export function againstOf(answer: LimitAnswer, system: UnitSystem = 'us'): Against {
  const { used, limit } = answer;
  const word = (says: string): Against => ({ used: says, of: '', says });
  if (isIdle(used, limit)) return word('none asked');
  const say = sideShown(answer);
  const [stands, rating] = [say(used, used.unit, system), say(limit, limit.unit, system)];
  if (stands === rating && rating === 'unknown') return word('unknown');
  const of = rating === 'unknown' ? 'a limit nobody has read' : rating;
  return { used: stands, of, says: `${stands} of ${of}` };
}
