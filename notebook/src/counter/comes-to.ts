import type { Answer, RankingAnswer, SelectionAnswer, Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { decidedIn } from '../state/told-beyond';

function list({ label, items, totals }: SelectionAnswer, system: UnitSystem) {
  const amounts = Object.keys(totals);
  const chosen = items.filter(({ chosen: is }) => is !== 'no');
  if (chosen.length === 0) return nothing;
  return html`<h3>${label}</h3>
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

function ranking({ label, entries, rest }: RankingAnswer, system: UnitSystem) {
  const inOrder = entries.filter(({ out }) => !out);
  if (inOrder.length === 0) return nothing;
  return html`<h3>${label}</h3>
    <ol>${inOrder.map(
      ({ says, value, apart }) =>
        html`<li>${says}: <strong class="num">${show(value, value.unit, system)}</strong>${apart ? '' : ' – not sure to come before the next'}</li>`,
    )}</ol>
    ${rest === '' ? nothing : html`<p class="small soft">${rest}</p>`}`;
}

/** What decisions came to that no finding tells, what was chosen and why, and what comes first. */
export class ComesTo extends PlainElement {
  static override properties = {
    answer: { attribute: false },
    topic: { attribute: false },
    system: { attribute: false },
  };
  declare answer: Answer;
  declare topic: Topic;
  declare system: UnitSystem;

  protected override render() {
    const { answer, topic, system } = this;
    const decided = decidedIn(answer, topic);
    return html`
      ${
        decided.length === 0
          ? nothing
          : html`<dl>${decided.map(
              ({ label, labels, says }) =>
                html`<dt>${label}: <strong>${labels.join(' or ')}</strong></dt>
                  ${says.length === 1 ? html`<dd>${says[0]}</dd>` : nothing}`,
            )}</dl>`
      }
      ${answer.selections.map((each) => list(each, system))}
      ${answer.rankings.map((each) => ranking(each, system))}`;
  }
}

customElements.define('comes-to', ComesTo);
