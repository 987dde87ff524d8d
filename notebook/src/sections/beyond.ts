import type { RankingAnswer, SelectionAnswer } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { decidedIn } from '../state/told-beyond';
import { whenAnswered } from './case-view';

/** What each decision came to that is not told among the findings. */
export const decided = whenAnswered(({ answer, topic }) => {
  const all = decidedIn(answer, topic);
  if (all.length === 0) return nothing;
  return html`<h2>What it comes to</h2>
    <dl>${all.map(
      ({ label, labels, says }) =>
        html`<dt>${label}: <strong>${labels.join(' or ')}</strong></dt>
          ${says.length === 1 ? html`<dd>${says[0]}</dd>` : nothing}`,
    )}</dl>`;
});

function list({ label, items, totals }: SelectionAnswer, system: UnitSystem) {
  const amounts = Object.keys(totals);
  const chosen = items.filter(({ chosen: is }) => is !== 'no');
  if (chosen.length === 0) return nothing;
  return html`<h2>${label}</h2>
    <div class="wide" role="region" aria-label=${label} tabindex="0"><table>
      <thead><tr><th scope="col">What</th>${amounts.map((each) => html`<th scope="col">${each.charAt(0).toUpperCase()}${each.slice(1)}</th>`)}<th scope="col">Why</th></tr></thead>
      <tbody>${chosen.map(
        (item) => html`<tr>
          <td>${item.label}${item.chosen === 'unknown' ? ' (perhaps)' : ''}</td>
          ${amounts.map((each) => {
            const ends = item.amounts[each];
            return html`<td class="num">${ends ? show(ends, ends.unit, system) : ''}</td>`;
          })}
          <td>${item.because}</td>
        </tr>`,
      )}</tbody>
      ${amounts.length === 0 ? nothing : html`<tfoot><tr><th scope="row">In all</th>${Object.values(totals).map((ends) => html`<td class="num">${show(ends, ends.unit, system)}</td>`)}<td></td></tr></tfoot>`}
    </table></div>`;
}

/** Things chosen from a list, each with the reason. */
export const selections = whenAnswered(({ answer, system }) =>
  answer.selections.length === 0
    ? nothing
    : html`${answer.selections.map((each) => list(each, system))}`,
);

function ranking({ label, entries, rest }: RankingAnswer, system: UnitSystem) {
  const inOrder = entries.filter(({ out }) => !out);
  if (inOrder.length === 0) return nothing;
  return html`<h2>${label}</h2>
    <ol>${inOrder.map(
      ({ says, value, apart }) =>
        html`<li>${says}: <strong class="num">${show(value, value.unit, system)}</strong>${apart ? '' : ' – not sure to come before the next'}</li>`,
    )}</ol>
    ${rest === '' ? nothing : html`<p class="small soft">${rest}</p>`}`;
}

/** Results in an order of size. */
export const rankings = whenAnswered(({ answer, system }) =>
  answer.rankings.length === 0
    ? nothing
    : html`${answer.rankings.map((each) => ranking(each, system))}`,
);
