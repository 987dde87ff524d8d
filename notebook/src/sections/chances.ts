import { html, nothing } from 'lit';
import { whenAnswered } from './case-view';

let asked = false;

/** Read when the first case with a range is shown. */
function read(): void {
  if (asked) return;
  asked = true;
  import('../elements/chance-list').catch(() => {
    asked = false;
  });
}

/** How likely each limit is gone over; a case without ranges has nothing to draw. */
export const chances = whenAnswered(({ doc, answer, current, system }) => {
  const limits = answer.limits.filter(({ state }) => state !== 'not-asked');
  const moves = limits.some(({ used, limit }) =>
    [used, limit].some(({ lo, hi }) => lo < hi && Number.isFinite(lo) && Number.isFinite(hi)),
  );
  if (!moves) return nothing;
  read();
  return html`<h2>How likely</h2>
    <chance-list .doc=${current ? doc : undefined} .limits=${limits} .system=${system}></chance-list>`;
});
