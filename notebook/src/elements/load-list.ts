import type { ListRow } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { PlainElement } from './plain-element';

export type CellPlace = { readonly list: string; readonly row: number; readonly column: string };

export class CellTyped extends CustomEvent<CellPlace & { value: string }> {
  constructor(place: CellPlace, value: string) {
    super('cell-typed', { detail: { ...place, value }, bubbles: true });
  }
}

export class RowAdded extends CustomEvent<{
  list: string;
  label: string;
  cells: Record<string, string>;
}> {
  constructor(list: string, label: string, cells: Record<string, string>) {
    super('row-added', { detail: { list, label, cells }, bubbles: true });
  }
}

export class RowDropped extends CustomEvent<{ list: string; row: number }> {
  constructor(list: string, row: number) {
    super('row-dropped', { detail: { list, row }, bubbles: true });
  }
}

/** The rows of a list, such as what is packed and where it rides. */
export class LoadList extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    fact: { attribute: false },
    columns: { attribute: false },
    rows: { attribute: false },
    errors: { attribute: false },
  };
  declare topic: Topic;
  declare fact: string;
  declare columns: readonly string[];
  declare rows: readonly ListRow[];
  /** By row and column, `2.weight`. */
  declare errors: Readonly<Record<string, string>>;

  private cell(row: ListRow, index: number, column: string, heading: string) {
    const cell = row.cells[column];
    const error = this.errors[`${index}.${column}`];
    const place = { list: this.fact, row: index, column };
    const typed = (event: Event) => {
      if (event.target instanceof HTMLInputElement) {
        this.dispatchEvent(new CellTyped(place, event.target.value));
      }
    };
    return html`<td role="cell" class="value">
      <span class="column" aria-hidden="true">${heading}</span>
      <input
        aria-label="${row.label || 'Row'}: ${heading}"
        aria-invalid=${error ? 'true' : 'false'}
        autocomplete="off"
        spellcheck="false"
        .value=${live(cell?.text ?? '')}
        @input=${typed}
      />
      ${error ? html`<p class="error">${error}</p>` : nothing}
    </td>`;
  }

  private add(event: Event): void {
    event.preventDefault();
    const fields = this.querySelectorAll<HTMLInputElement>('tfoot input');
    const [label, ...values] = [...fields].map((field) => field.value.trim());
    const cells = Object.fromEntries(
      this.columns.filter((c) => c !== '').map((c, i) => [c, values[i] ?? '']),
    );
    if (!label && values.every((value) => value === '')) return;
    this.dispatchEvent(new RowAdded(this.fact, label ?? '', cells));
    for (const field of fields) field.value = '';
    fields[0]?.focus();
  }

  protected override render() {
    const declared = this.topic.facts[this.fact];
    if (declared?.kind !== 'rows') return nothing;
    const columns = this.columns.filter((column) => column !== '');
    const heading = (column: string) => declared.columns[column]?.label ?? column;
    const entered = (event: KeyboardEvent) => {
      if (event.key === 'Enter') this.add(event);
    };
    return html`<table class="facts rows" role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">${declared.label}</th>
          ${columns.map((column) => html`<th role="columnheader" scope="col">${heading(column)}</th>`)}
          <th role="columnheader" scope="col" class="noprint"><span class="hidden">Add or leave out</span></th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${this.rows.map(
          (row, index) => html`<tr role="row">
            <td role="cell" class="named">${row.label}</td>
            ${columns.map((column) => this.cell(row, index, column, heading(column)))}
            <td role="cell" class="drop noprint">
              <button
                aria-label="Leave out: ${row.label || `row ${index + 1}`}"
                @click=${() => this.dispatchEvent(new RowDropped(this.fact, index))}
              >−</button>
            </td>
          </tr>`,
        )}
      </tbody>
      <tfoot role="rowgroup" class="noprint">
        <tr role="row" @keydown=${entered}>
          <td role="cell" class="named"><input aria-label="${declared.label}: what else" placeholder="what else" /></td>
          ${columns.map(
            (column) =>
              html`<td role="cell" class="value"><span class="column" aria-hidden="true">${heading(column)}</span><input aria-label="New row: ${heading(column)}" autocomplete="off" /></td>`,
          )}
          <td role="cell" class="drop"><button aria-label="Add a row to ${declared.label}" @click=${this.add}>+</button></td>
        </tr>
      </tfoot>
    </table>`;
  }
}

customElements.define('load-list', LoadList);
