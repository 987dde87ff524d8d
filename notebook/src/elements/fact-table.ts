import type { FactRow } from '@tarebook/casebook';
import type { Fact, Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { PlainElement } from './plain-element';

/** Something was typed into a fact or a cell of a list. */
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

const optionsOf = (fact: Fact | undefined): readonly string[] | undefined =>
  fact?.kind === 'choice'
    ? [...fact.options, 'unknown']
    : fact?.kind === 'yes-no'
      ? ['yes', 'no', 'unknown']
      : undefined;

const inputOf = (event: Event): string =>
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

  private field(row: FactRow, label: string) {
    const options = optionsOf(this.topic.facts[row.id]);
    const error = this.errors[row.id];
    const typed = (event: Event) => this.dispatchEvent(new FactTyped(row.id, inputOf(event)));
    if (options && (options.includes(row.value) || row.value === '')) {
      return html`<select aria-label=${label} data-fact=${row.id} @change=${typed}>
        ${options.map((each) => html`<option ?selected=${each === row.value}>${each}</option>`)}
      </select>`;
    }
    return html`<input
      aria-label=${label}
      aria-invalid=${error ? 'true' : 'false'}
      aria-describedby=${error ? `error-${row.id}` : nothing}
      data-fact=${row.id}
      autocomplete="off"
      spellcheck="false"
      .value=${row.value}
      @input=${typed}
    />`;
  }

  private row(row: FactRow) {
    const fact = this.topic.facts[row.id];
    const label = row.words || fact?.label || row.id;
    const error = this.errors[row.id];
    const before = this.moved[row.id];
    return html`
      <tr>
        <td>
          ${
            fact
              ? html`<details>
                <summary>${label}</summary>
                <p class="small soft">
                  ${fact.means ? html`${fact.means} ` : nothing}${fact.ask} Read it from: ${fact.where}.
                </p>
              </details>`
              : html`<code>${row.id}</code>`
          }
        </td>
        <td class="value">
          ${this.field(row, label)}
          ${error ? html`<p class="error" id="error-${row.id}">${error}</p>` : nothing}
          ${before === undefined ? nothing : html`<span class="moved">as filed: ${before || 'not there'}</span>`}
        </td>
        <td class="soft small">${row.readFrom}</td>
        <td class="drop noprint">
          <button
            aria-label="Leave out: ${label}"
            @click=${() => this.dispatchEvent(new FactDropped(row.id))}
          >−</button>
        </td>
      </tr>
    `;
  }

  protected override render() {
    return html`<table class="facts">
      <thead>
        <tr>
          <th scope="col">Fact</th>
          <th scope="col">Value</th>
          <th scope="col">Read from</th>
          <th scope="col" class="noprint"><span class="hidden">Leave out</span></th>
        </tr>
      </thead>
      <tbody>${this.rows.map((row) => this.row(row))}</tbody>
    </table>`;
  }
}

customElements.define('fact-table', FactTable);
