import { getPosition } from 'suncalc';
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

const newYear = Date.UTC(2025, 0, 1);
const day = 86_400_000;

/** Sine of the sun's height above the horizon, by suncalc, at the meridian of sun time. */
function sineOfHeight(latitude: number, dayOfYear: number, hour: number): number {
  // The day as a whole: a part of one would turn the clock as well.
  const whole = Math.floor(dayOfYear);
  const at = new Date(newYear + (whole - 1) * day + (hour - equationOfTime(whole)) * 3_600_000);
  const { altitude } = getPosition(at, (latitude * 180) / Math.PI, 0);
  return Math.sin((altitude * Math.PI) / 180);
}

/** Hours by which the sun is ahead of the clock's mean; Spencer (1971), good to half a minute. */
function equationOfTime(dayOfYear: number): number {
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  const radians =
    0.000075 +
    0.001868 * Math.cos(b) -
    0.032077 * Math.sin(b) -
    0.014615 * Math.cos(2 * b) -
    0.040849 * Math.sin(2 * b);
  return (radians * 12) / Math.PI;
}

/** How fast the sine may change at the most: a radian of latitude, a day, an hour of sun time. */
const fastest = { latitude: 1, day: 0.0075, hour: Math.PI / 12 } as const;

/** Never below zero: a sun under the horizon gives nothing. Angles in radians. */
export function sunHeight(
  latitude: NumberValue,
  dayOfYear: NumberValue,
  hour: NumberValue,
): NumberValue {
  const middle = (range: Interval) => (range.lo + range.hi) / 2;
  const half = (range: Interval) => (range.hi - range.lo) / 2;
  const sine = sineOfHeight(middle(latitude), middle(dayOfYear), middle(hour));
  const days = dayOfYear.lo === dayOfYear.hi ? 0 : half(dayOfYear) + 1;
  const off = half(latitude) * fastest.latitude + days * fastest.day + half(hour) * fastest.hour;
  const range = { lo: Math.max(0, sine - off), hi: Math.min(1, Math.max(0, sine + off)) };
  const within = (most: number): Interval => hull(point(-most), point(most));
  const byPlace = blend(
    latitude.slopes,
    within(fastest.latitude),
    dayOfYear.slopes,
    within(fastest.day),
  );
  return made(range, blend(byPlace, point(1), hour.slopes, within(fastest.hour)));
}
