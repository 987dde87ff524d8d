import type { ListRow } from '@tarebook/casebook';
import type { Column, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, LitElement, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { cellRefusal } from '../state/refused';
import './quantity-field';

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

const saysTheSame = (a: ListRow, b: ListRow | undefined): boolean =>
  a.label === b?.label &&
  Object.keys(a.cells).length === Object.keys(b.cells).length &&
  Object.entries(a.cells).every(([id, { text }]) => b.cells[id]?.text === text);

/** Of what is typed elsewhere a list is not drawn anew. */
const haveChanged = (now: readonly ListRow[], was: readonly ListRow[] = []): boolean =>
  now.length !== was.length || now.some((row, at) => !saysTheSame(row, was[at]));

const areOther = (now: readonly string[], was?: readonly string[]): boolean =>
  now.join() !== was?.join();

/** The rows of a list, such as what is packed and where it rides. */
export class RowList extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    fact: { attribute: false },
    columns: { attribute: false, hasChanged: areOther },
    rows: { attribute: false, hasChanged: haveChanged },
    system: { attribute: false },
  };
  declare topic: Topic;
  declare fact: string;
  declare columns: readonly string[];
  declare rows: readonly ListRow[];
  declare system: UnitSystem;
  /** The id of the field of a row that was just added. */
  private wanted: string | undefined;

  private cell(row: ListRow, index: number, id: string, column: Column, several: boolean) {
    const label = `${row.label || `Row ${index + 1}`}: ${column.label}`;
    const place = { list: this.fact, row: index, column: id };
    const typed = (event: Event): void => {
      if (!(event instanceof CustomEvent)) return;
      event.stopPropagation();
      this.dispatchEvent(new CellTyped(place, String(event.detail.text)));
    };
    return html`<span class="cell" @value-typed=${typed}>
      ${several ? html`<small class="soft" aria-hidden="true">${column.label}</small>` : nothing}
      <quantity-field .text=${row.cells[id]?.text ?? ''} .unit=${column.unit} .label=${label}
        .field=${`cell-${this.fact}-${index}-${id}`} .fact=${`${this.fact}.${index}.${id}`}
        .system=${this.system}
        .refuses=${(text: string) => (text === '' && !column.required ? undefined : cellRefusal(this.topic, this.fact, id, text))}
      ></quantity-field>
    </span>`;
  }

  private add = (event: Event): void => {
    event.preventDefault();
    const field = this.querySelector<HTMLInputElement>('.another input');
    const declared = this.topic.facts[this.fact];
    if (!field || declared?.kind !== 'rows') return;
    const label = field.value.trim();
    if (label === '') {
      field.focus();
      return;
    }
    const needed = Object.keys(declared.columns).filter((id) => declared.columns[id]?.required);
    const cells = Object.fromEntries(needed.map((id) => [id, 'unknown']));
    const at = this.rows.length;
    this.dispatchEvent(new RowAdded(this.fact, label, cells));
    field.value = '';
    this.wanted = `cell-${this.fact}-${at}-${needed[0]}`;
  };

  protected override updated(): void {
    void this.goToNew();
  }

  /** To the field of a row just added, once it is drawn: the case follows when it has been read. */
  private async goToNew(): Promise<void> {
    const { wanted } = this;
    if (wanted === undefined) return;
    const fields = [...this.querySelectorAll('quantity-field')];
    await Promise.all(fields.map((each) => each instanceof LitElement && each.updateComplete));
    const field = this.querySelector<HTMLElement>(`[id="${wanted}"]`);
    if (!field || this.wanted !== wanted) return;
    this.wanted = undefined;
    field.focus();
  }

  protected override render() {
    const declared = this.topic.facts[this.fact];
    if (declared?.kind !== 'rows') return nothing;
    const shown = this.columns.flatMap((id) => {
      const column = declared.columns[id];
      return column ? [{ id, column }] : [];
    });
    return html`<ul class="row-list">
        ${this.rows.map(
          (row, index) => html`<li class="fact">
            <span class="named">${row.label || `Row ${index + 1}`}</span>
            <span class="cells">${shown.map(({ id, column }) => this.cell(row, index, id, column, shown.length > 1))}</span>
            <button type="button" class="drop noprint" aria-label="Leave out: ${row.label || `row ${index + 1}`}"
              @click=${() => this.dispatchEvent(new RowDropped(this.fact, index))}>×</button>
          </li>`,
        )}
      </ul>
      <form class="another noprint" @submit=${this.add}>
        <input aria-label="${declared.label}: what else" placeholder="what else" autocomplete="off" />
        <button aria-label="Add to ${declared.label}">Add</button>
      </form>`;
  }
}

customElements.define('row-list', RowList);
