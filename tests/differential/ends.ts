/** Simple interval arithmetic, written out by hand for the second derivation. */
export type Ends = { lo: number; hi: number };

export const at = (value: number): Ends => ({ lo: value, hi: value });
export const zeroUp: Ends = { lo: 0, hi: Infinity };

export const plus = (...all: Ends[]): Ends => ({
  lo: all.reduce((sum, each) => sum + each.lo, 0),
  hi: all.reduce((sum, each) => sum + each.hi, 0),
});

export const minus = (a: Ends, b: Ends): Ends => ({ lo: a.lo - b.hi, hi: a.hi - b.lo });

const product = (a: number, b: number): number => (a === 0 || b === 0 ? 0 : a * b);

export function times(a: Ends, b: Ends): Ends {
  const all = [a.lo, a.hi].flatMap((x) => [b.lo, b.hi].map((y) => product(x, y)));
  return { lo: Math.min(...all), hi: Math.max(...all) };
}

/** By something that is never below zero. */
export function over(a: Ends, b: Ends): Ends {
  if (b.lo <= 0) {
    const hi = a.hi > 0 ? Infinity : 0;
    const lo = a.lo < 0 ? -Infinity : 0;
    return b.hi <= 0 ? { lo: -Infinity, hi: Infinity } : { lo, hi };
  }
  const all = [a.lo, a.hi].flatMap((x) => [x / b.lo, b.hi === Infinity ? 0 : x / b.hi]);
  return { lo: Math.min(...all), hi: Math.max(...all) };
}

export const smaller = (a: Ends, b: Ends): Ends => ({
  lo: Math.min(a.lo, b.lo),
  hi: Math.min(a.hi, b.hi),
});

export const larger = (a: Ends, b: Ends): Ends => ({
  lo: Math.max(a.lo, b.lo),
  hi: Math.max(a.hi, b.hi),
});

export const span = (a: Ends, b: Ends): Ends => ({
  lo: Math.min(a.lo, b.lo),
  hi: Math.max(a.hi, b.hi),
});

/** To a millionth, the step below which numbers count as equal. */
export const round = (value: number): number =>
  Number.isFinite(value) ? Math.round(value * 1e6) / 1e6 : value;

export const rounded = (a: Ends): Ends => ({ lo: round(a.lo), hi: round(a.hi) });

export const closed = (a: Ends): boolean => Number.isFinite(a.lo) && Number.isFinite(a.hi);

/** Both are rounded to a millionth: the last one may fall to either side. */
const near = (a: number, b: number): boolean => a === b || Math.abs(a - b) <= 1.01e-6;

export const sameEnds = (a: Ends, b: Ends): boolean => near(a.lo, b.lo) && near(a.hi, b.hi);

export const within = (inner: Ends, outer: Ends): boolean =>
  (inner.lo >= outer.lo || near(inner.lo, outer.lo)) &&
  (inner.hi <= outer.hi || near(inner.hi, outer.hi));
