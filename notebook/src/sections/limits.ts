import { html, nothing } from 'lit';
import '../elements/limit-rows';
import { findingList, missingList } from '../elements/told-list';
import { whenAnswered } from './case-view';

/** What to find out before anything else can be said. */
export const missing = whenAnswered(({ answer }) => missingList(answer.missing));

/** How close to each limit; a topic without limits has no such section. */
export const limits = whenAnswered(({ answer, system }) =>
  answer.limits.length === 0
    ? nothing
    : html`
      <h2>How close to each limit</h2>
      <aside class="side">
        The dashed notch is the margin this dealer keeps; the solid line is the maker’s rating, and it is never moved.
      </aside>
      <limit-rows .limits=${answer.limits} .system=${system}></limit-rows>`,
);

/** What is said beside the limits. */
export const findings = whenAnswered(({ answer }) => findingList(answer.findings));
