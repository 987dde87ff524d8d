/** Everything a number may be, both ends within it; an open end is ±Infinity (null in JSON). */
export type Interval = { readonly lo: number; readonly hi: number };

export const point = (value: number): Interval => ({ lo: value, hi: value });
export const anything: Interval = { lo: -Infinity, hi: Infinity };
export const zeroUp: Interval = { lo: 0, hi: Infinity };

export const isPoint = (a: Interval): boolean => a.lo === a.hi;
export const isClosed = (a: Interval): boolean => Number.isFinite(a.lo) && Number.isFinite(a.hi);

export function hull(a: Interval, b: Interval): Interval {
  return { lo: Math.min(a.lo, b.lo), hi: Math.max(a.hi, b.hi) };
}

/** What two sound answers to the same question have in common. */
export function common(a: Interval, b: Interval): Interval {
  const lo = Math.max(a.lo, b.lo);
  const hi = Math.min(a.hi, b.hi);
  return lo <= hi ? { lo, hi } : a;
}

export const add = (a: Interval, b: Interval): Interval => ({ lo: a.lo + b.lo, hi: a.hi + b.hi });
export const negate = (a: Interval): Interval => ({ lo: -a.hi, hi: -a.lo });
export const subtract = (a: Interval, b: Interval): Interval => add(a, negate(b));

/** Zero times an open end is zero: the end is never reached, so the product never leaves zero. */
const times = (a: number, b: number): number => (a === 0 || b === 0 ? 0 : a * b);

export function multiply(a: Interval, b: Interval): Interval {
  const p = times(a.lo, b.lo);
  const q = times(a.lo, b.hi);
  const r = times(a.hi, b.lo);
  const s = times(a.hi, b.hi);
  return { lo: Math.min(p, q, r, s), hi: Math.max(p, q, r, s) };
}

/** A divisor that may be zero gives an open end, or anything at all when zero lies inside it. */
export function reciprocal(a: Interval): Interval {
  if (a.lo > 0 || a.hi < 0) return { lo: 1 / a.hi, hi: 1 / a.lo };
  if (a.lo === 0 && a.hi > 0) return { lo: 1 / a.hi, hi: Infinity };
  if (a.hi === 0 && a.lo < 0) return { lo: -Infinity, hi: 1 / a.lo };
  return anything;
}

/**
 * For two numbers the quotient itself, so that nothing is lost by the reciprocal's rounding. What is
 * divided by no limit at all is nothing, also where its own end is open and so never reached.
 */
export function divide(a: Interval, b: Interval): Interval {
  if (isPoint(b) && !Number.isFinite(b.lo)) return point(0);
  if (isPoint(a) && isPoint(b) && b.lo !== 0) return point(a.lo / b.lo);
  if (isPoint(b) && b.lo !== 0) {
    const ends: Interval = { lo: a.lo / b.lo, hi: a.hi / b.lo };
    return b.lo > 0 ? ends : { lo: ends.hi, hi: ends.lo };
  }
  return multiply(a, reciprocal(b));
}

export const least = (a: Interval, b: Interval): Interval => ({
  lo: Math.min(a.lo, b.lo),
  hi: Math.min(a.hi, b.hi),
});

export const most = (a: Interval, b: Interval): Interval => ({
  lo: Math.max(a.lo, b.lo),
  hi: Math.max(a.hi, b.hi),
});

/** To a millionth, the step below which two numbers count as equal. */
export function rounded(value: number): number {
  if (!Number.isFinite(value)) return value;
  const whole = Math.round(value * 1e6) / 1e6;
  return whole === 0 ? 0 : whole;
}

export const roundedEnds = (a: Interval): Interval => ({ lo: rounded(a.lo), hi: rounded(a.hi) });
