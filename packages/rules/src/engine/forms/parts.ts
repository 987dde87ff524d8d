import type { FindingAnswer } from '../answer/shapes';
import type { Sayable } from '../words/value';
import { following, may, must, type Part, unlessSaid } from './length';
import { decidingLimit, limitSaid } from './limit';
import { isAnythingTold, type Matter } from './matter';
import { dangersTold, levelOf, partsOf } from './verdict';

/** The limit that decides; where it has room and the verdict turns on something else, it is no news. */
export function limitOf(matter: Matter): readonly Sayable[] {
  const limit = decidingLimit(matter);
  if (!limit) return [];
  // Over only as long as nobody uses the rig another way: that is told by what is open.
  if (limit.state === 'unknown' && limit.headroom.hi < 0) return [];
  const isNews = limit.state !== 'ok' || levelOf(matter) === 'ok';
  return isNews ? limitSaid(matter, limit.id) : [];
}

/** How the deciding limit stands; nothing where that is not known. */
function decidingSaid(matter: Matter): readonly Sayable[] {
  const limit = decidingLimit(matter);
  return limit ? limitSaid(matter, limit.id) : [];
}

/** So little was told that no limit can be said to be near or far: the rule is the answer. */
export const isRuleWanted = (matter: Matter): boolean =>
  levelOf(matter) === 'unknown' && (!isAnythingTold(matter) || decidingSaid(matter).length === 0);

/** A further list waits until it has been said what to do. */
export const isListed = (each: Sayable): boolean => 'code' in each && each.code === 'list-short';

export const all = (of: readonly Sayable[], as: (each: Sayable) => Part): readonly Part[] =>
  of.map(as);

/** What is wrong, where there is room for what to do as well. */
export const besideDo = (
  wrong: Sayable | undefined,
  todo: Sayable | undefined,
  rank: number,
): readonly Part[] =>
  wrong && todo
    ? [{ ...may(wrong, rank), besides: todo }, following(may(todo, rank + 0.005), wrong)]
    : [];

/** What else was found, at the end; that something is not known is said only with what to do about it. */
export function besideSaid({ level, messages }: FindingAnswer): readonly Part[] {
  const { wrong, do: todo } = messages;
  if (level !== 'unknown' && level !== 'if') return [may(wrong, 4)];
  return besideDo(wrong, todo, 4);
}

/**
 * Dangers, each with what to do. They come right after the answer, and before rules and figures; so
 * many of them must be said, and the others as far as there is room.
 */
export const dangersSaid = (
  matter: Matter,
  mostMust: number,
  { isBrief = false, from = 0.1 } = {},
): readonly Part[] =>
  dangersTold(matter).flatMap((each, place) => {
    const [wrong, todo] = partsOf(each);
    // What to do about one comes before the next.
    const rank = from + place / 100;
    const isMust = place < mostMust;
    if (isMust) {
      // Of a second one, beside what was asked, what to do about it says the danger too.
      const isDoOnly = isBrief && place > 0 && todo !== undefined;
      const told = all(wrong && !isDoOnly ? [wrong] : [], (of) => unlessSaid(must(of)));
      return [...told, ...all(todo ? [todo] : [], must)];
    }
    // Of what is not known, only what to do about it is any help.
    if (each.level !== 'care' && !todo) return [];
    // Where there is no room for both, what to do says the danger too.
    return [
      ...(wrong ? [unlessSaid({ ...may(wrong, rank), besides: todo })] : []),
      ...(todo ? [may(todo, rank + 0.005)] : []),
    ];
  });
