import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { saveAs } from '../state/files';
import { committed, type Group } from '../state/group';
import { compared } from './predict';
import { metBy, recordAsCsv, togetherSaid, walkedCase } from './record';
import { SheetsWanted } from './sheets-wanted';
import { Walks, walking } from './walks';

/** What a group predicted, case by case, and how much of it was met. */
export class ClassTally extends PlainElement {
  static override properties = { group: { attribute: false } };
  declare group: Group;
  private readonly walks = new Walks(this);

  private cell(learner: string, at: number) {
    const { group } = this;
    const made = committed(group, learner, at);
    const each = group.cases[at];
    const walked = each && walkedCase(each);
    if (!made || !walked) return html`<td class="soft">–</td>`;
    const { met, says } = compared(made.said, walked.question, 'us');
    // Of a choice the difference says nothing that the choice does not.
    const off = walked.question.kind === 'word' ? '' : `; ${says}`;
    return html`<td>${met ? 'met' : 'not met'}<br /><span class="small soft">said: ${made.said}${made.sure ? `, ${made.sure}` : ''}${off}${made.why ? html`<br />“${made.why}”` : nothing}</span></td>`;
  }

  private total(learner: string) {
    const { met, of } = metBy(this.group, learner);
    return html`<td class="num">${of === 0 ? '–' : `${met} of ${of}`}</td>`;
  }

  /** On paper once more: the very cases that were walked. */
  private sheets(sheets: 'worksheets' | 'key'): void {
    const { cases, learners } = this.group;
    this.dispatchEvent(new SheetsWanted(sheets, cases, sheets === 'key' ? [] : learners));
  }

  protected override render() {
    const { group } = this;
    const opened = group.opened.toSorted((a, b) => a - b);
    const day = new Date(group.started).toISOString().slice(0, 10);
    const all = opened.flatMap((at) => group.cases[at] ?? []);
    if (all.some((each) => this.walks.of(each) === 'coming')) {
      return html`<h2 tabindex="-1">Tally of ${day}</h2>${walking}`;
    }
    const save = () => saveAs(`class-${day}.csv`, recordAsCsv(group), 'text/csv');
    return html`
      <h2 tabindex="-1">Tally of ${day}</h2>
      <p>${togetherSaid(group)}</p>
      <div class="tally" tabindex="0" role="group" aria-label="Tally by learner and case">
        <table>
          <thead><tr>
            <th scope="col">Learner</th>
            ${opened.map((at) => html`<th scope="col">${group.cases[at]?.title ?? nothing}</th>`)}
            <th scope="col">Met</th>
          </tr></thead>
          <tbody>${group.learners.map(
            (learner) =>
              html`<tr><th scope="row">${learner}</th>${opened.map((at) => this.cell(learner, at))}${this.total(learner)}</tr>`,
          )}</tbody>
        </table>
      </div>
      <div class="acts">
        <button @click=${save}>Save the record as CSV</button>
        <button @click=${() => print()}>Print the tally</button>
        <button @click=${() => this.sheets('worksheets')}>Print worksheets</button>
        <button @click=${() => this.sheets('key')}>Print the key</button>
      </div>
      <p class="noprint"><a href="#/class/weeks">Over weeks</a>: who falls for what, and what comes back after days.</p>
    `;
  }
}

customElements.define('class-tally', ClassTally);
