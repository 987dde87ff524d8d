import { getPosition } from 'suncalc';
import { hull, type Interval, isClosed, point } from '../../quantity';
import { made } from '../value/numbers';
import { blend, type NumberValue } from '../value/values';
import { bring } from './brought';

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
  // Where nobody knows the place or the time, the sun may stand anywhere.
  const isTold = [latitude, dayOfYear, hour].every(isClosed);
  const sine = isTold ? sineOfHeight(middle(latitude), middle(dayOfYear), middle(hour)) : 0;
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

/** Data in which formulas ask for the height of the sun; the code for it comes along. */
export function bringingSun<T>(data: T): T {
  bring({ sunHeight });
  return data;
}
