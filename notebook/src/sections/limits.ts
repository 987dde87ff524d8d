import type { LimitAnswer } from '@tarebook/rules/engine';
import type { LimitRow } from '../elements/limit-rows';
import type { AnsweredView } from './case-view';

const sameRoom = (a: LimitAnswer, b: LimitAnswer): boolean =>
  a.state === b.state && a.headroom.lo === b.headroom.lo && a.headroom.hi === b.headroom.hi;

function rowOf({ topic, answer, filed }: AnsweredView, limit: LimitAnswer): LimitRow {
  const name = topic.limits[limit.id]?.empty;
  const empty = name === undefined ? undefined : answer.values[name];
  const before = filed?.answer?.limits.find(({ id }) => id === limit.id);
  return {
    limit,
    ...(empty && Number.isFinite(empty.lo) && Number.isFinite(empty.hi) && { empty }),
    ...(before && !sameRoom(before, limit) && { before }),
  };
}

/** How close to each limit, with what stands on it empty, and how it stood as filed. */
export const limitRowsOf = (view: AnsweredView): readonly LimitRow[] =>
  view.answer.limits.map((each) => rowOf(view, each));
