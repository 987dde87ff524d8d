import { show, type UnitSystem } from '../../quantity';
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

/** What stands against a limit, in words. */
export function againstOf({ used, limit }: LimitAnswer, system: UnitSystem = 'us'): Against {
  const word = (says: string): Against => ({ used: says, of: '', says });
  if (isIdle(used, limit)) return word('none asked');
  const [stands, of] = [show(used, used.unit, system), show(limit, limit.unit, system)];
  return stands === of && of === 'unknown'
    ? word('unknown')
    : { used: stands, of, says: `${stands} of ${of}` };
}
