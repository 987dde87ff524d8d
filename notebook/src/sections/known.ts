import { addRow, setFact } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html } from 'lit';
import { drawBlocks } from './blocks';
import type { CaseView, Section } from './case-view';
import { partsOf } from './parts';

/** The question, as its author wrote it. */
export const question: Section = (view) =>
  html`${drawBlocks(view, partsOf(view.doc.blocks).question)}`;

function picker(view: CaseView, topic: Topic) {
  const { doc } = view;
  const absent = Object.entries(topic.facts).filter(([id]) => doc.facts[id] === undefined);
  const add = (event: Event): void => {
    if (!(event.target instanceof HTMLSelectElement) || event.target.value === '') return;
    const id = event.target.value;
    event.target.value = '';
    const fact = topic.facts[id];
    if (fact?.kind === 'rows') {
      const cells = Object.keys(fact.columns).filter((column) => fact.columns[column]?.required);
      const unknown = Object.fromEntries(cells.map((column) => [column, 'unknown']));
      view.edit((now) => addRow(now, id, 'Not named yet', unknown), id);
    } else view.edit((now) => setFact(now, id, 'unknown'), id);
  };
  return html`<p class="noprint">
    <label>Another fact
      <select @change=${add}>
        <option value="">choose …</option>
        ${absent.map(([id, fact]) => html`<option value=${id}>${fact.label}</option>`)}
      </select>
    </label>
  </p>`;
}

/** What is known, open to change where it stands. */
export const known: Section = (view) => html`
  <h2>What we know</h2>
  <aside class="side">
    Write a number with its unit, a range such as 4,900–5,100 lb, 560 ± 20 lb, or unknown.
  </aside>
  ${drawBlocks(view, partsOf(view.doc.blocks).known)}
  ${view.topic ? picker(view, view.topic) : ''}
`;
