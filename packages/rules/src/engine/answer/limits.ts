import { divide, type Interval, isClosed, rounded, roundedEnds, subtract } from '../../quantity';
import type { State } from '../define/shapes';
import { careName, fullName, roomName } from '../define/topic';
import type { Compiled } from '../formula/compile';
import { restsOnKnown } from '../formula/reckon';
import type { Run } from '../formula/run';
import { type Say, text } from '../words/value';
import type { Rooms } from './listed';
import { endsOf } from './named';
import { isIdle } from './room';
import type { Ends, LimitAnswer } from './shapes';

function roomUsed(compiled: Compiled, run: Run, id: string, used: Ends, limit: Ends): Interval {
  if (isIdle(used, limit)) return { lo: 0, hi: 0 };
  const room = endsOf(compiled, run, roomName(id));
  const full = endsOf(compiled, run, fullName(id));
  return { lo: room.hi <= 0 ? Infinity : full.lo, hi: room.lo <= 0 ? Infinity : full.hi };
}

/** Every limit of the topic, asked or not, in the order of its declaration. */
export function limitAnswers(
  compiled: Compiled,
  run: Run,
  states: ReadonlyMap<string, State>,
  say: Say,
  rooms: Rooms,
): readonly LimitAnswer[] {
  return Object.entries(compiled.topic.limits).map(([id, limit]) => {
    const used = endsOf(compiled, run, limit.used);
    const rating = endsOf(compiled, run, limit.limit);
    const state = states.get(`limit.${id}`) ?? 'unknown';
    const plain = subtract(rating, used);
    const left = state === 'not-asked' ? plain : (rooms(limit) ?? plain);
    const { askedBy } = limit;
    const isRated = askedBy === undefined || askedBy.some(run.given);
    const careAt = limit.margin ? endsOf(compiled, run, careName(id)) : undefined;
    return {
      id,
      label: say(text(limit.label)),
      used,
      limit: rating,
      headroom: { ...roundedEnds(left), unit: rating.unit },
      share: roundedEnds(divide(used, rating)),
      state,
      ...(state === 'not-asked' && isRated && { uncalledFor: true }),
      ...(careAt && { careAt }),
      roomUsed: roomUsed(compiled, run, id, used, rating),
      source: limit.source,
    };
  });
}

/**
 * The asked limit whose room above empty is most used up; over ranges the upper end counts. Limits
 * with an open end, or resting on an unknown rating, are left aside; a load that nobody told and that
 * the rules bound is a range like any other.
 */
export function bindingLimit(
  compiled: Compiled,
  run: Run,
  limits: readonly LimitAnswer[],
): LimitAnswer | null {
  let binding: LimitAnswer | null = null;
  for (const each of limits) {
    const { used, limit } = compiled.topic.limits[each.id] ?? {};
    if (each.state === 'not-asked' || used === undefined || limit === undefined) continue;
    if (!restsOnKnown(run.value(limit), run.isOpen) || !isClosed(endsOf(compiled, run, used)))
      continue;
    if (!binding || rounded(each.roomUsed.hi) > rounded(binding.roomUsed.hi)) binding = each;
  }
  return binding;
}
