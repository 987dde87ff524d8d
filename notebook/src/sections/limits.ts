import type { LimitAnswer } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import '../elements/limit-rows';
import type { LimitRow } from '../elements/limit-rows';
import { findingList, missingList } from '../elements/told-list';
import { type AnsweredView, whenAnswered } from './case-view';

/** What to find out before anything else can be said. */
export const missing = whenAnswered(({ answer, system }) => missingList(answer, system));

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

/** How close to each limit; where none was asked there is no such section. */
export const limits = whenAnswered((view) => {
  const { answer, system } = view;
  if (answer.limits.every(({ state }) => state === 'not-asked')) return nothing;
  return html`
    <h2>How close to each limit</h2>
    <aside class="side">
      A bar is the room between empty and the limit, the solid line. The dashed notch is the margin kept below it. A margin moves no limit.
    </aside>
    <limit-rows .rows=${answer.limits.map((each) => rowOf(view, each))} .system=${system}></limit-rows>`;
});

/** What is said beside the limits. */
export const findings = whenAnswered(({ answer, system }) => findingList(answer, system));
