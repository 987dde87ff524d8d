import {
  type Answer,
  type Asked,
  type LimitTrials,
  limitTrials,
  type Topic,
} from '@tarebook/rules/engine';

/** What an unknown figure must come to: at the least, or at the most. */
export type Need = {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly unit: string;
};

type Open = Answer['limits'][number];

/** What is left falls nearly evenly: so often it is looked where it would come to nothing. */
const mostGuesses = 4;

/** The greatest whole number, from one that holds to one that does not, of which it still holds. */
function lastOf(
  from: number,
  to: number,
  holds: (value: number) => boolean,
  left: (value: number) => number,
): number {
  let [good, bad] = [Math.ceil(from), Math.floor(to)];
  const look = (at: number): void => {
    if (at <= good || at >= bad) return;
    if (holds(at)) good = at;
    else bad = at;
  };
  for (let i = 0; i < mostGuesses && bad - good > 1; i += 1) {
    const [most, least] = [left(good), left(bad)];
    if (!(most >= 0 && least < 0) || !Number.isFinite(most - least)) break;
    const guess = Math.floor(good + (most / (most - least)) * (bad - good));
    look(guess);
    look(guess + 1);
    look(guess - 1);
  }
  while (bad - good > 1) look(Math.floor((good + bad) / 2));
  return good;
}

/** The figure at which a limit that is open turns, with the fact that turns it by itself. */
function needFor(
  topic: Topic,
  { open, at, left }: LimitTrials,
  { id, used }: Open,
): readonly [string, Need] | undefined {
  for (const fact of open(id)) {
    const declared = topic.facts[fact];
    if (declared?.kind !== 'quantity') continue;
    const { unit, least, most } = declared;
    /** Whether it is kept, margins aside. */
    const isKept = (value: number): boolean => ['ok', 'care'].includes(at(id, fact, value));
    const { lo, hi } = used;
    // A rating must come to what is used at the most.
    if (Number.isFinite(hi) && lo >= 0) {
      const enough = Math.ceil(hi);
      if (isKept(enough) && !isKept(Math.max(0, enough - 2))) {
        return [fact, { atLeast: enough, unit }];
      }
    }
    // A weight must not come to more than the rest leaves.
    if (at(id, fact, most) !== 'stop' || !isKept(least)) continue;
    const last = lastOf(least, most, isKept, (value) => left(id, fact, value));
    if (last > 0) return [fact, { atMost: last, unit }];
  }
  return undefined;
}

/**
 * What each unknown must be so that nothing is exceeded, by an estimate nor where that comes out heavy
 * but common; margins are said and not demanded. A limit that hangs on several unknowns at once has no
 * need of its own.
 */
export function needsOf(
  topic: Topic,
  asked: Asked,
  answer: Answer,
): Readonly<Record<string, Need>> {
  const needs: Record<string, Need> = {};
  const unknown = answer.limits.filter(({ state }) => state === 'unknown');
  if (unknown.length === 0) return needs;
  const trials = limitTrials(topic, asked, answer);
  for (const open of unknown) {
    const found = needFor(topic, trials, open);
    if (!found) continue;
    const [fact, need] = found;
    const before = needs[fact];
    const cautious = need.atLeast === undefined ? undefined : trials.cautious(open.id)?.hi;
    const heavy = cautious !== undefined && Number.isFinite(cautious) ? Math.ceil(cautious) : 0;
    const atLeast = Math.max(before?.atLeast ?? 0, need.atLeast ?? 0, heavy);
    const atMost = Math.min(before?.atMost ?? Infinity, need.atMost ?? Infinity);
    needs[fact] = {
      ...(atLeast > 0 && { atLeast }),
      ...(atMost < Infinity && { atMost }),
      unit: need.unit,
    };
  }
  return needs;
}
