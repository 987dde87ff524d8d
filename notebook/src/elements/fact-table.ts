import type { FactRow } from '@tarebook/casebook';
import type { Fact, Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { PlainElement } from './plain-element';

/** Something was typed into a fact. */
export class FactTyped extends CustomEvent<{ id: string; value: string }> {
  constructor(id: string, value: string) {
    super('fact-typed', { detail: { id, value }, bubbles: true });
  }
}

export class FactDropped extends CustomEvent<{ id: string }> {
  constructor(id: string) {
    super('fact-dropped', { detail: { id }, bubbles: true });
  }
}

/** What may be chosen of a fact; undefined where it is typed. */
export const optionsOf = (fact: Fact | undefined): readonly string[] | undefined =>
  fact?.kind === 'choice'
    ? [...fact.options, 'unknown']
    : fact?.kind === 'yes-no'
      ? ['yes', 'no', 'unknown']
      : undefined;

/** The text of the field an event came from. */
export const typedIn = (event: Event): string =>
  event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement
    ? event.target.value
    : '';

/** What is known, each fact editable where it stands, with its help and its error beside it. */
export class FactTable extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    rows: { attribute: false },
    errors: { attribute: false },
    moved: { attribute: false },
  };
  declare topic: Topic;
  declare rows: readonly FactRow[];
  /** By the fact's id. */
  declare errors: Readonly<Record<string, string>>;
  /** Facts that differ from the case as filed, with what was filed. */
  declare moved: Readonly<Record<string, string>>;

  private field(row: FactRow) {
    const options = optionsOf(this.topic.facts[row.id]);
    const error = this.errors[row.id];
    const typed = (event: Event) => this.dispatchEvent(new FactTyped(row.id, typedIn(event)));
    if (options && (options.includes(row.value) || row.value === '')) {
      return html`<select id="fact-${row.id}" data-fact=${row.id} @change=${typed}>
        ${row.value === '' ? html`<option value="" selected>choose …</option>` : nothing}
        ${options.map((each) => html`<option ?selected=${each === row.value}>${each}</option>`)}
      </select>`;
    }
    return html`<input
      id="fact-${row.id}"
      aria-invalid=${error ? 'true' : 'false'}
      aria-describedby=${error ? `error-${row.id}` : nothing}
      data-fact=${row.id}
      autocomplete="off"
      spellcheck="false"
      .value=${live(row.value)}
      @input=${typed}
    />`;
  }

  private help(fact: Fact, label: string) {
    return html`<details class="help noprint">
      <summary aria-label="Help on ${label}">?</summary>
      <p class="small soft">
        ${fact.means ? html`${fact.means} ` : nothing}${fact.ask} Read it from: ${fact.where}.
      </p>
    </details>`;
  }

  private row(row: FactRow) {
    const fact = this.topic.facts[row.id];
    const label = row.words || fact?.label || row.id;
    const error = this.errors[row.id];
    const before = this.moved[row.id];
    return html`
      <tr role="row">
        <td role="cell" class="named">
          ${fact ? html`<label for="fact-${row.id}">${label}</label>${this.help(fact, label)}` : html`<code>${row.id}</code>`}
        </td>
        <td role="cell" class="value">
          ${this.field(row)}
          ${error ? html`<p class="error" id="error-${row.id}">${error}</p>` : nothing}
          ${before === undefined ? nothing : html`<span class="moved">as filed: ${before || 'not there'}</span>`}
        </td>
        <td role="cell" class="read soft small">${row.readFrom}</td>
        <td role="cell" class="drop noprint">
          <button
            aria-label="Leave out: ${label}"
            @click=${() => this.dispatchEvent(new FactDropped(row.id))}
          >−</button>
        </td>
      </tr>
    `;
  }

  protected override render() {
    return html`<table class="facts" role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Fact</th>
          <th role="columnheader" scope="col">Value</th>
          <th role="columnheader" scope="col">Read from</th>
          <th role="columnheader" scope="col" class="noprint"><span class="hidden">Leave out</span></th>
        </tr>
      </thead>
      <tbody role="rowgroup">${this.rows.map((row) => this.row(row))}</tbody>
    </table>`;
  }
}

customElements.define('fact-table', FactTable);
