import { atMost, isNothing, leftOf, overOf, sideOf } from '../answer/room';
import type { LimitAnswer } from '../answer/shapes';
import { message } from '../words/message';
import { type Quantity, type Sayable, text } from '../words/value';
import { wordsIn } from './length';
import type { Matter } from './matter';
import { levelOf } from './verdict';

/** Whether as good as anything is possible: of what may be over, nothing may be used. */
const isOpenWide = ({ used }: LimitAnswer): boolean => used.lo <= 0;

/** So many further limits are named as over too, and in no more words. */
const mostNamed = 2;
const mostNamedWords = 9;

/** A name of more words than these has no room for a figure. */
const mostRated = 5;

/** A rating that is exceeded, with its figure. */
function ratedAt(
  { limit: { lo, hi }, headroom: { unit } }: LimitAnswer,
  { short, exceeded = false }: { readonly short: string; readonly exceeded?: boolean },
): Sayable {
  const isLong = wordsIn(short) > mostRated;
  if (!exceeded || isLong || lo !== hi || !Number.isFinite(lo)) return text(short);
  return message('rated-at', { short: text(short), of: { lo, hi, unit, style: 'round' as const } });
}

/** By how much a supply falls short, which others do too, and what is over beside it. */
const shortSaid = (
  { short, plural = false }: { readonly short: string; readonly plural?: boolean },
  by: Quantity,
  beside: {
    readonly same?: readonly Sayable[];
    readonly over?: readonly Sayable[];
    readonly exceeded?: readonly Sayable[];
  } = {},
): Sayable =>
  message('falls-short', {
    short: text(short),
    several: plural,
    by,
    same: beside.same ?? [],
    over: beside.over ?? [],
    exceeded: beside.exceeded ?? [],
  });

/**
 * By how much something is over or short is no help to whoever does not know of what: with what there
 * is and what may be, where both are figures that anybody counts out.
 */
function withBoth(answer: LimitAnswer, supply: boolean, said: Sayable): Sayable {
  const { used, limit, headroom } = answer;
  const ends = [used.lo, used.hi, limit.lo, limit.hi];
  const isKnown = ends.every((each) => Number.isFinite(each) && each > 0);
  // A share of a share, and volts lost on the way, are nothing that anybody counts.
  if (!isKnown || ['%', '1', 'V', 'h', 'd'].includes(headroom.unit)) return said;
  return message('with-both', {
    said,
    supply,
    used: sideOf(answer, used),
    of: sideOf(answer, limit),
  });
}

/** Which of several limits is over by how much, and which are over as well. */
export function overSaid({ topic }: Matter, limits: readonly LimitAnswer[]): readonly Sayable[] {
  const [first, ...rest] = limits.flatMap((limit) => {
    const declared = topic.limits[limit.id];
    return declared ? [{ ...limit, declared }] : [];
  });
  if (!first) return [];
  const isExceeded = ({ declared }: typeof first): boolean => declared.exceeded ?? false;
  let words = 0;
  const named = rest.slice(0, mostNamed).filter(({ declared }) => {
    words += wordsIn(declared.short);
    return words <= mostNamedWords;
  });
  const shortOf = ({ declared }: typeof first): Sayable => text(declared.short);
  // What is short is not over, whatever is said beside it.
  const supplies = named.filter(({ declared }) => declared.supply).map(shortOf);
  const loads = named.filter(({ declared }) => !declared.supply);
  const same = loads.filter((each) => isExceeded(each) === isExceeded(first));
  const other = loads.filter((each) => !same.includes(each));
  if (first.declared.supply) {
    const by = overOf(first);
    const over = loads.filter((each) => !isExceeded(each)).map(shortOf);
    const exceeded = loads.filter(isExceeded).map(shortOf);
    const said = shortSaid(first.declared, by, { same: supplies, over, exceeded });
    return [named.length > 0 ? said : withBoth(first, true, said)];
  }
  const areSeveral = (all: readonly (typeof first)[]): boolean =>
    all.length !== 1 || all.some(({ declared }) => declared.plural ?? false);
  const said = message('limits-over', {
    short: named.length > 1 ? text(first.declared.short) : ratedAt(first, first.declared),
    several: first.declared.plural ?? false,
    exceeded: isExceeded(first),
    by: overOf(first),
    same: same.map(shortOf),
    sameSeveral: areSeveral(same),
    other: other.map(shortOf),
    otherSeveral: areSeveral(other),
  });
  if (supplies.length > 0) return [message('over-and-short', { said, of: supplies })];
  return [named.length > 0 || isExceeded(first) ? said : withBoth(first, false, said)];
}

/** How a limit stands, in one sentence; nothing where that is not known. */
export function limitSaid(matter: Matter, id: string): readonly Sayable[] {
  const { topic, answer } = matter;
  const limit = answer.limits.find((each) => each.id === id);
  const declared = topic.limits[id];
  if (!limit || !declared || limit.state === 'not-asked') return [];
  // Of what nobody told that anything is used, nothing is left; and what is not needed is never enough.
  if (isNothing(limit.used) && (levelOf(matter) !== 'ok' || declared.supply)) return [];
  const { lo, hi, unit } = limit.headroom;
  const short = text(declared.short);
  const { plural: several = false, exceeded = false } = declared;
  if (hi < 0) {
    const by = overOf(limit);
    if (declared.supply) return [withBoth(limit, true, shortSaid(declared, by))];
    const none = { same: [], sameSeveral: true, other: [], otherSeveral: true } as const;
    const rated = ratedAt(limit, declared);
    const said = message('limits-over', { short: rated, several, exceeded, by, ...none });
    return [exceeded ? said : withBoth(limit, false, said)];
  }
  if (!Number.isFinite(lo) || !Number.isFinite(hi)) return [];
  if (lo < 0) {
    if (isOpenWide(limit)) return [];
    const [over, left] = [atMost(overOf(limit)), atMost(leftOf(limit))];
    if (declared.supply) return [message('may-fall-short', { short, by: over, left })];
    return [message('straddling', { short, exceeded, over, left })];
  }
  // A share left of a share is a figure that nobody makes anything of.
  if (unit === '%' || unit === '1') return [];
  const left = hi === 0 ? null : leftOf(limit);
  if (declared.supply) {
    const of = { used: sideOf(limit, limit.used), of: sideOf(limit, limit.limit) };
    const said = message('limit-left', { short, several, left, of: of.of });
    return [message('enough', { said, short, several, just: limit.state === 'care', ...of })];
  }
  return [message('limit-left', { short, several, left, of: sideOf(limit, limit.limit) })];
}

const gravity = { stop: 0, unknown: 1, if: 2, care: 3, ok: 4, 'not-asked': 5 } as const;

/** The limits that were asked, the gravest first, and among equals the fullest. */
export const limitsInOrder = ({ answer }: Matter): readonly LimitAnswer[] =>
  answer.limits
    .filter(({ state }) => state !== 'not-asked')
    .toSorted((a, b) => gravity[a.state] - gravity[b.state] || b.roomUsed.hi - a.roomUsed.hi);

/** The limit that the verdict turns on: one that is over, else the fullest that is known. */
export function decidingLimit(matter: Matter): LimitAnswer | undefined {
  const [first] = limitsInOrder(matter);
  if (first?.state === 'stop' || first?.state === 'unknown') return first;
  const { binding } = matter.answer;
  return matter.answer.limits.find(({ id }) => id === binding) ?? first;
}
