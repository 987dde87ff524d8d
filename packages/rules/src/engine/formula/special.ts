import { hull, type Interval, multiply, point } from '../../quantity';
import { blend, eitherSlopes, type NumberValue, noSlopes, type Slopes } from './values';

/** Functions of numbers beyond the four kinds of arithmetic, over ranges and with their slopes. */
export const made = (range: Interval, slopes: Slopes): NumberValue => ({
  kind: 'number',
  lo: range.lo,
  hi: range.hi,
  slopes,
});

/** An open end stays open; zero to no power is left to the arithmetic of the machine. */
const raised = (base: number, exponent: number): number => Math.max(0, base) ** exponent;

/**
 * base ** exponent for a base that is never below zero. It moves one way with the base and one way
 * with the exponent, so its ends stand at corners of the two ranges.
 */
export function power(base: NumberValue, exponent: NumberValue): NumberValue {
  const corners = [base.lo, base.hi].flatMap((b) =>
    [exponent.lo, exponent.hi].map((e) => raised(b, e)),
  );
  const range = { lo: Math.min(...corners), hi: Math.max(...corners) };
  if (base.slopes.size === 0 && exponent.slopes.size === 0) return made(range, noSlopes);
  const below = [base.lo, base.hi].flatMap((b) =>
    [exponent.lo, exponent.hi].map((e) => (b <= 0 ? Infinity : b ** (e - 1))),
  );
  const inner = { lo: Math.min(...below), hi: Math.max(...below) };
  const byBase = base.lo <= 0 ? { lo: 0, hi: Infinity } : multiply(inner, exponent);
  const logs = { lo: Math.log(Math.max(0, base.lo)), hi: Math.log(Math.max(0, base.hi)) };
  return made(range, blend(base.slopes, byBase, exponent.slopes, multiply(range, logs)));
}

/** Anything from one to the other; each place between them moves as the two ends do. */
export function between(a: NumberValue, b: NumberValue): NumberValue {
  return made(hull(a, b), eitherSlopes(a.slopes, b.slopes));
}

/** Rounded down; within one step it is flat, and from step to step it may jump. */
export function whole(of: NumberValue): NumberValue {
  // A count that arithmetic left a hair under a whole number is that number.
  const down = (value: number) => Math.floor(value + 1e-9);
  const range = { lo: down(of.lo), hi: down(of.hi) };
  if (range.lo === range.hi) return made(range, noSlopes);
  return made(range, blend(of.slopes, { lo: 0, hi: Infinity }, noSlopes, point(1)));
}
