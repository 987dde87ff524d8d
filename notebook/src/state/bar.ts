import type { Ends, LimitAnswer } from '@tarebook/rules/engine';

/** One limit as one bar is drawn: everything as a share of the limit, from zero up. */
export type Bar = {
  /** What stands on it before anything is loaded. */
  readonly empty: number;
  /** What is loaded ends here for sure, and here at the most; undefined: nobody knows. */
  readonly used: { readonly from: number; readonly to: number } | undefined;
  /** Where the margin begins that is kept below the limit. */
  readonly careFrom: number | undefined;
};

/** How far beyond its limit a bar is drawn; farther over looks the same and is told in figures. */
export const drawnTo = 1.25;

const isClosed = ({ lo, hi }: { lo: number; hi: number }): boolean =>
  Number.isFinite(lo) && Number.isFinite(hi);

/**
 * @param empty in the unit of the limit
 * @param most how far beyond the limit it is drawn; farther where a larger one sets the scale
 */
export function barOf(
  { share, limit, careAt }: LimitAnswer,
  empty: Ends | undefined,
  most: number = drawnTo,
): Bar {
  const within = (of: number): number => Math.min(most, Math.max(0, of));
  const per = limit.hi > 0 && isClosed(limit) ? limit.hi : undefined;
  const bare = per !== undefined && empty && isClosed(empty) ? within(empty.hi / per) : 0;
  // “1,140 lb or more” is drawn as far as it is sure; of what may be nothing there is no bar.
  const isTold = Number.isFinite(share.lo) && (share.lo > 0 || Number.isFinite(share.hi));
  if (!isTold) return { empty: bare, used: undefined, careFrom: undefined };
  const used = { from: within(share.lo), to: within(share.hi) };
  const careFrom = careAt && per !== undefined && isClosed(careAt) ? careAt.hi / per : undefined;
  return {
    empty: Math.min(bare, used.from),
    used,
    careFrom: careFrom !== undefined && careFrom > 0 && careFrom < 1 ? careFrom : undefined,
  };
}
