import { addRow, type CaseDocument, removeRow, setCell } from '@tarebook/casebook';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import type { CellTyped, RowAdded, RowDropped } from '../counter/row-list';
import { PlainElement } from '../elements/plain-element';
import { judge } from '../state/judged';
import { readDocument } from '../state/reading';
import type { Shown } from './channel';
import { optionSaid } from './choice-said';
import { awaitedIn, type Movable, movableIn } from './movable';
import { movedRead } from './moved-read';
import { asMoved, unitWritten } from './moved-value';
import type { Walked } from './record';
import { whatIfSaid } from './what-if-said';
import { whyRefused } from './why-refused';

export class FactMoved extends CustomEvent<Shown['moved']> {
  constructor(moved: Shown['moved']) {
    super('fact-moved', { detail: moved, bubbles: true });
  }
}

/** Facts and rows of an open case, moved: what comes out then. The case itself stays as it is. */
export class WhatIf extends PlainElement {
  static override properties = {
    walked: { attribute: false },
    system: { attribute: false },
    fact: { state: true },
    wrong: { state: true },
    moved: { state: true },
  };
  declare walked: Walked;
  declare system: UnitSystem;
  declare fact: string;
  declare wrong: string;
  /** The case with all that was moved, and of which case that is. */
  declare moved: { readonly of: string; readonly says: string; readonly text: string } | undefined;

  constructor() {
    super();
    this.fact = '';
    this.wrong = '';
  }

  private get soFar(): WhatIf['moved'] {
    return this.moved?.of === this.walked.doc.text ? this.moved : undefined;
  }

  /** The case as it is moved so far. */
  private get now(): CaseDocument {
    return this.soFar ? readDocument(this.soFar.text) : this.walked.doc;
  }

  /** What can be moved: what was told, and what the verdict waits for. */
  private get told(): readonly Movable[] {
    return [...movableIn(this.now), ...awaitedIn(this.now, this.walked.answer)];
  }

  /** Has it judged and shown, here and on the wall. */
  private put(text: string, unread: string): void {
    const { doc } = this.walked;
    const { answer, current, doc: read } = judge(text, undefined, this.system);
    if (!answer || !current) {
      this.wrong = whyRefused(read) ?? unread;
      return;
    }
    this.wrong = '';
    const says = whatIfSaid(doc, read);
    this.moved = says === undefined ? undefined : { of: doc.text, says, text };
    this.dispatchEvent(new FactMoved(says === undefined ? undefined : { text, says }));
  }

  private move(event: Event): void {
    event.preventDefault();
    const fact = this.told.find(({ key }) => key === this.fact) ?? this.told[0];
    const value =
      this.querySelector<HTMLInputElement | HTMLSelectElement>('#moved-to')?.value.trim() ?? '';
    if (!fact) return;
    if (value === '') {
      this.wrong =
        fact.options.length > 0
          ? `Nothing is chosen for ${fact.label}; choose one of ${fact.options.map(optionSaid).join(', ')}.`
          : `Nothing is written for ${fact.label}; write a value such as ${fact.value || 'the one on the label'}.`;
      return;
    }
    const text = fact.write(this.now, asMoved(value, unitWritten(fact, this.system)));
    this.put(text, `“${value}” cannot be read for ${fact.label}.`);
  }

  private back = (): void => {
    this.moved = undefined;
    this.wrong = '';
    this.dispatchEvent(new FactMoved(undefined));
  };

  private typed = ({ detail: { list, row, column, value } }: CellTyped): void =>
    this.put(setCell(this.now, list, row, column, value), `“${value}” cannot be read.`);

  private added = ({ detail: { list, label, cells } }: RowAdded): void =>
    this.put(addRow(this.now, list, label, cells), `“${label}” cannot be taken in.`);

  private dropped = ({ detail: { list, row } }: RowDropped): void =>
    this.put(removeRow(this.now, list, row), 'It cannot be left out.');

  /** What edits rows at the counter comes when it is asked for. */
  private open = (): void => void import('../counter/row-list');

  /** The rows of every list of the case, to be added to and taken from as at the counter. */
  private rows() {
    const { now, system } = this;
    const { topic } = now;
    if (!topic) return nothing;
    const lists = now.blocks.flatMap((block) => (block.kind === 'list' ? [block] : []));
    const labels = lists.map(({ fact }) => topic.facts[fact]?.label ?? fact);
    if (lists.length === 0) return nothing;
    return html`<details class="noprint moved-rows" @toggle=${this.open} @cell-typed=${this.typed} @row-added=${this.added} @row-dropped=${this.dropped}>
      <summary>Add or leave out: ${labels.join(', ')}</summary>
      ${lists.map(
        ({ fact, columns, rows }, at) => html`<h4>${labels[at]}</h4>
          <row-list .topic=${topic} .fact=${fact} .columns=${columns.filter((each) => each !== '')} .rows=${rows} .system=${system}></row-list>`,
      )}
    </details>`;
  }

  protected override render() {
    const { told, wrong, walked, system, soFar } = this;
    const [first] = told;
    if (!first) return nothing;
    const now = told.find(({ key }) => key === this.fact) ?? first;
    return html`<h3 class="noprint">What if</h3>
      <form class="turn noprint" @submit=${this.move} novalidate>
        <label>Fact
          <select @change=${({ target }: Event) => {
            if (target instanceof HTMLSelectElement) this.fact = target.value;
          }}>${told.map(({ key, label }) => html`<option value=${key} ?selected=${key === now.key}>${label}</option>`)}</select>
        </label>
        <label>were, instead of ${(now.options.length > 0 ? optionSaid(now.value) : now.value) || 'nothing said'}
          ${
            now.options.length > 0
              ? html`<select id="moved-to" aria-invalid=${wrong ? 'true' : 'false'}>
                  <option value="">choose …</option>
                  ${now.options.map((each) => html`<option value=${each}>${optionSaid(each)}</option>`)}
                </select>`
              : html`<input id="moved-to" autocomplete="off" aria-invalid=${wrong ? 'true' : 'false'} />`
          }
        </label>
        <button>See</button>
        ${soFar ? html`<button type="button" @click=${this.back}>Back to the case</button>` : nothing}
        <p class="error" role="alert">${wrong}</p>
      </form>
      ${this.rows()}
      <div role="status">${soFar ? movedRead(soFar, walked, system) : nothing}</div>`;
  }
}

customElements.define('what-if', WhatIf);
