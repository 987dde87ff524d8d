import { refuseUnlessParts } from '../check/doors';
import { isRecord, same } from './data';

/** One place at which a saved verdict and the same one run again do not agree. */
export type ReplayDifference = {
  /** `limits.payload.used.hi` */
  readonly place: string;
  readonly was: unknown;
  readonly now: unknown;
};

export type Replay = {
  /** What came out: verdict, limits, findings, numbers. */
  readonly differences: readonly ReplayDifference[];
  /** The same result, worded or explained otherwise. */
  readonly reworded: readonly ReplayDifference[];
  /** What the saved verdict holds beside, and was not run again. */
  readonly untouched: readonly string[];
};

/** Texts for people; everything else of an answer is its result. */
const told = new Set([
  ...['label', 'says', 'sentence', 'restsOn', 'words', 'ask', 'where', 'source'],
  ...['cautions', 'assumed', 'why', 'message', 'messages'],
]);

/** Of a step of the reasoning its number is a result; how it is told is not. */
function isResult(path: readonly string[]): boolean {
  if (path[0] === 'values') return true;
  return path[0] === 'trace' ? path.includes('ends') : !path.some((key) => told.has(key));
}

/** What tells the entries of a list apart. */
function keyOf(entry: unknown, i: number): string {
  if (isRecord(entry)) {
    for (const key of ['id', 'fact', 'name']) {
      const id = entry[key];
      if (typeof id === 'string') return id;
    }
  }
  return `#${i + 1}`;
}

function entriesOf(value: unknown): ReadonlyMap<string, unknown> | undefined {
  if (Array.isArray(value)) {
    const named = new Map(value.map((entry, i) => [keyOf(entry, i), entry]));
    return named.size === value.length ? named : new Map(value.map((e, i) => [`#${i + 1}`, e]));
  }
  return isRecord(value) ? new Map(Object.entries(value)) : undefined;
}

/**
 * Compares a saved verdict with the same one run again, both as JSON. Whatever is in both, or in a
 * list or a part of either, must be the same to the last digit.
 *
 * @throws InputError for what is no verdict at all
 */
export function compareSaved(saved: unknown, again: unknown): Replay {
  refuseUnlessParts('saved', saved, {}, 'a verdict as it was saved, read from its JSON');
  refuseUnlessParts('again', again, {}, 'the same verdict run again, as JSON');
  const differences: ReplayDifference[] = [];
  const reworded: ReplayDifference[] = [];
  const note = (path: readonly string[], was: unknown, now: unknown): void => {
    (isResult(path) ? differences : reworded).push({ place: path.join('.'), was, now });
  };
  const walk = (was: unknown, now: unknown, path: readonly string[]): void => {
    const [before, after] = [entriesOf(was), entriesOf(now)];
    if (!before || !after || Array.isArray(was) !== Array.isArray(now)) {
      if (!same(was, now)) note(path, was, now);
      return;
    }
    for (const key of new Set([...before.keys(), ...after.keys()])) {
      walk(before.get(key), after.get(key), [...path, key]);
    }
  };
  const [before, after] = [entriesOf(saved), entriesOf(again)];
  for (const [key, now] of after ?? []) {
    if (before?.has(key)) walk(before.get(key), now, [key]);
  }
  const untouched = [...(before?.keys() ?? [])].filter((key) => !after?.has(key));
  return { differences, reworded, untouched };
}
