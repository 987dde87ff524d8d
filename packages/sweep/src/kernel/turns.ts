/**
 * Where a number turns that is rounded, multiplied or divided before it is held against a limit: the least
 * one of which the comparison holds. Held against that instead, nothing need be done for every pair but
 * the comparison; what comes out is the same to the last bit, since all of these only rise.
 *
 *     limit < round(x)   is   above(limit) ≤ x        limit ≤ x × by   is   fromTimes(limit, by) ≤ x
 *     limit ≤ round(x)   is   from(limit) ≤ x         limit ≤ x / by   is   fromOver(limit, by) ≤ x
 *
 * Of what is no number, of a limit without end and of a factor that is not above zero there is none: NaN.
 */
const nearest = (x: number): number => Math.round(x * 1e6) / 1e6;

const number = new Float64Array(1);
const halves = new Uint32Array(number.buffer);
/** The lower half stands first on nearly whatever runs scripts. */
const lower = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 0 : 1;

/** The next double, upwards or downwards. */
function beside(x: number, isUp: boolean): number {
  if (x === 0) return isUp ? Number.MIN_VALUE : -Number.MIN_VALUE;
  number[0] = x;
  const half = halves[lower] ?? 0;
  const isAway = x > 0 === isUp;
  halves[lower] = isAway ? half + 1 : half - 1;
  const high = halves[1 - lower] ?? 0;
  if (isAway && halves[lower] === 0) halves[1 - lower] = high + 1;
  if (!isAway && half === 0) halves[1 - lower] = high - 1;
  return number[0];
}

/** Whether something holds of a number beside a limit, and maybe another figure. */
type Holds = (x: number, limit: number, by: number) => boolean;

/** Mostly it lies no farther from where it is looked for. */
const nearBy = 8;

/** The least number of which something holds that holds of all above it, from one close by. */
function leastFrom(guess: number, holds: Holds, limit: number, by: number): number {
  let at = guess;
  if (holds(at, limit, by)) {
    for (let i = 0; i < nearBy; i += 1) {
      const below = beside(at, false);
      if (!holds(below, limit, by)) return at;
      at = below;
    }
  } else {
    for (let i = 0; i < nearBy; i += 1) {
      at = beside(at, true);
      if (holds(at, limit, by)) return at;
    }
  }
  return leastAround(at, holds, limit, by);
}

/** The same, looked for farther and farther away, and then in halves. */
function leastAround(guess: number, holds: Holds, limit: number, by: number): number {
  let [low, high] = [guess, guess];
  let far = Math.max(Math.abs(guess) * 2 ** -50, Number.MIN_VALUE);
  if (holds(guess, limit, by)) {
    for (low = guess - far; holds(low, limit, by); low = guess - far) {
      high = low;
      far *= 2;
    }
  } else {
    for (high = guess + far; !holds(high, limit, by); high = guess + far) {
      low = high;
      far *= 2;
    }
  }
  for (;;) {
    const middle = low + (high - low) / 2;
    if (!(middle > low && middle < high)) return high;
    if (holds(middle, limit, by)) high = middle;
    else low = middle;
  }
}

const isFar = (x: number): boolean => !(Math.abs(x) < 1e60);

const isAbove: Holds = (x, limit) => limit < nearest(x);
const isFrom: Holds = (x, limit) => limit <= nearest(x);
const isFromTimes: Holds = (x, limit, by) => limit <= x * by;
const isFromOver: Holds = (x, limit, by) => limit <= x / by;

/** The least number that is rounded to one of which it holds: half a millionth below the first of these. */
function leastRounded(limit: number, holds: Holds, isWithin: boolean): number {
  if (isFar(limit)) return Number.NaN;
  let first = Math.round(limit * 1e6) - 1;
  for (let i = 0; i < 2; i += 1) {
    if (isWithin ? limit <= first / 1e6 : limit < first / 1e6) break;
    first += 1;
  }
  return leastFrom((first - 0.5) / 1e6, holds, limit, 1);
}

/** The least number that is rounded to one above the limit. */
export const aboveOf = (limit: number): number => leastRounded(limit, isAbove, false);

/** The least number that is rounded to the limit or to one above it. */
export const fromOf = (limit: number): number => leastRounded(limit, isFrom, true);

/** The least number that comes to the limit or above it so many times. */
export function fromTimes(limit: number, by: number): number {
  if (isFar(limit) || isFar(by) || !(by > 0)) return Number.NaN;
  return leastFrom(limit / by, isFromTimes, limit, by);
}

/** The least number that comes to the limit or above it divided by another. */
export function fromOver(limit: number, by: number): number {
  if (isFar(limit) || isFar(by) || !(by > 0)) return Number.NaN;
  return leastFrom(limit * by, isFromOver, limit, by);
}
