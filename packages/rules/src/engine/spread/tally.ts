import { rounded } from '../../quantity';
import type { Ends } from '../answer/shapes';
import type { Truths, Words } from '../value/lanes';
import type { Verdict } from './decide';
import type { Chance, Density, Quantile } from './shapes';
import { chanceOf, quantilesOf, shares } from './statistics';

/** What is counted over all blocks; `take` reads the lanes of one. */
export type Tally<T> = {
  readonly take: (count: number, done: number) => void;
  readonly result: (draws: number) => T;
};

/** In how many draws a limit is gone over; null where some draw cannot say. */
export function chanceTally(known: boolean, stop: Verdict | undefined): Tally<Chance | null> {
  let over = 0;
  let unsure = 0;
  const take = (count: number): void => {
    for (let i = 0; i < count; i += 1) {
      if (stop?.certain[i] === 1) over += 1;
      else if (stop?.possible[i] === 1) unsure += 1;
    }
  };
  return { take, result: (draws) => (known && unsure === 0 ? chanceOf(over, draws) : null) };
}

const bins = 40;

/** Counts values into equal steps between ends that no value leaves. */
export function densityTally(ends: Ends, from: Float64Array): Tally<Density> {
  const counts = new Array<number>(bins).fill(0);
  const scale = bins / (ends.hi - ends.lo);
  const take = (count: number): void => {
    for (let i = 0; i < count; i += 1) {
      const bin = Math.floor(((from[i] ?? 0) - ends.lo) * scale);
      const at = Math.min(bins - 1, Math.max(0, bin));
      counts[at] = (counts[at] ?? 0) + 1;
    }
  };
  return { take, result: () => ({ ...ends, counts }) };
}

/** Keeps every value, for its quantiles. */
export function quantileTally(from: Float64Array, draws: number): Tally<readonly Quantile[]> {
  const all = new Float64Array(draws);
  return {
    take: (count, done) => all.set(from.subarray(0, count), done),
    result: () => quantilesOf(all).map(({ share, value }) => ({ share, value: rounded(value) })),
  };
}

/** The same value in every draw. */
export const fixedQuantiles = (value: number): Tally<readonly Quantile[]> => ({
  take: () => undefined,
  result: () => shares.map((share) => ({ share, value })),
});

/** What each lane comes to, in one word. */
function wordIn(lanes: Words | Truths, lane: number): string {
  if (lanes.kind === 'words') {
    const [only, more] = lanes.options[lane] ?? [];
    return only !== undefined && more === undefined ? only : 'unknown';
  }
  const [yes, no] = [lanes.yes[lane] === 1, lanes.no[lane] === 1];
  return yes === no ? 'unknown' : yes ? 'yes' : 'no';
}

/** In how many draws a result that is a choice came to which of its options. */
export function choiceTally(lanes: Words | Truths): Tally<Readonly<Record<string, Chance>>> {
  const counts = new Map<string, number>();
  const take = (count: number): void => {
    for (let i = 0; i < count; i += 1) {
      const word = wordIn(lanes, i);
      counts.set(word, (counts.get(word) ?? 0) + 1);
    }
  };
  const result = (draws: number) =>
    Object.fromEntries([...counts].map(([word, count]) => [word, chanceOf(count, draws)]));
  return { take, result };
}

/** How many draws came to each of the levels, by its rank. */
export function rankTally(ranks: Uint8Array): Tally<readonly number[]> {
  const counts: number[] = [];
  const take = (count: number): void => {
    for (let i = 0; i < count; i += 1) {
      const rank = ranks[i] ?? 0;
      counts[rank] = (counts[rank] ?? 0) + 1;
    }
  };
  return { take, result: () => counts };
}
