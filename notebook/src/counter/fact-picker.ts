import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { CaseView } from '../sections/case-view';
import { edits } from '../state/editing';
import { rowsOf } from '../state/people';

/** A fact more, of those that the case says nothing of; it comes once the verdict is drawn. */
export class FactPicker extends PlainElement {
  static override properties = { view: { attribute: false } };
  declare view: CaseView;

  private add = (event: Event): void => {
    if (!(event.target instanceof HTMLSelectElement) || event.target.value === '') return;
    const id = event.target.value;
    event.target.value = '';
    const { topic, edit } = this.view;
    const fact = topic?.facts[id];
    if (fact?.kind === 'rows') {
      const cells = Object.keys(fact.columns).filter((column) => fact.columns[column]?.required);
      const unknown = Object.fromEntries(cells.map((column) => [column, 'unknown']));
      edit((now) => edits().addRow(now, id, 'Not named yet', unknown), id);
    } else edit((now) => edits().setFact(now, id, 'unknown'), id);
  };

  protected override render() {
    const { doc, topic } = this.view;
    if (!topic) return nothing;
    const told = new Set(Object.keys(doc.facts));
    const absent = Object.entries(topic.facts).filter(
      ([id]) => !told.has(id) && rowsOf(doc, id).length === 0,
    );
    return html`<p class="another-fact noprint">
      <label>Another fact
        <select @change=${this.add}>
          <option value="">choose …</option>
          ${absent.map(([id, fact]) => html`<option value=${id}>${fact.label}</option>`)}
        </select>
      </label>
    </p>`;
  }
}

customElements.define('fact-picker', FactPicker);
