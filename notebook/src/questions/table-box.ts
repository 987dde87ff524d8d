import type { MessageColumns, Pasted } from '@tarebook/record';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { TableFound } from './table-of';
import { columnsTold, tableText, tellColumns } from './table-text';

/** Messages of a table, to be taken in. */
export class TableRead extends CustomEvent<{
  readonly found: readonly Pasted[];
  readonly refused: readonly string[];
}> {
  constructor(found: readonly Pasted[], refused: readonly string[]) {
    super('table-read', { detail: { found, refused }, bubbles: true });
  }
}

const asked = [
  ['text', 'The words that were asked'],
  ['channel', 'By which way it came'],
  ['askedOn', 'When'],
  ['asker', 'Who asked'],
] as const;

/** Takes in a CSV file of messages; asks which column is which where their names do not say it. */
export class TableBox extends PlainElement {
  static override properties = {
    read: { attribute: false },
    open: { state: true },
    wrong: { state: true },
    busy: { state: true },
  };
  declare read: (text: string, columns: MessageColumns | undefined) => Promise<TableFound>;
  /** A table whose columns are still to be told. */
  declare open: { text: string; found: Extract<TableFound, { is: 'asked' }> } | undefined;
  declare wrong: string;
  declare busy: boolean;

  constructor() {
    super();
    this.wrong = '';
    this.busy = false;
  }

  private chosen = async ({ target }: Event): Promise<void> => {
    if (!(target instanceof HTMLInputElement)) return;
    const file = target.files?.[0];
    target.value = '';
    if (!file) return;
    this.open = undefined;
    this.wrong = '';
    this.busy = true;
    try {
      await this.take(await tableText(file), undefined);
    } catch (problem) {
      this.wrong = problem instanceof Error ? problem.message : String(problem);
    }
    this.busy = false;
  };

  private async take(text: string, told: MessageColumns | undefined): Promise<void> {
    const found = await this.read(text, told);
    if (found.is === 'wrong') this.wrong = found.says;
    else if (found.is === 'read') {
      this.open = undefined;
      this.dispatchEvent(new TableRead(found.found, found.refused));
    } else {
      const before = told === undefined ? columnsTold(found.heads) : undefined;
      if (before) await this.take(text, before);
      else this.open = { text, found };
    }
  }

  private told = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { open } = this;
    if (!open || !(event.target instanceof HTMLFormElement)) return;
    const typed = new FormData(event.target);
    const columns = Object.fromEntries(
      asked.flatMap(([key]) => {
        const at = String(typed.get(key) ?? '');
        return at === '' ? [] : [[key, Number(at)] as const];
      }),
    );
    tellColumns(open.found.heads, columns);
    this.busy = true;
    await this.take(open.text, columns);
    this.busy = false;
  };

  private columns() {
    const { open } = this;
    if (!open) return nothing;
    const { heads, first, columns } = open.found;
    return html`<form class="table-columns" @submit=${this.told}>
      <p>Which column is which? It is asked once for a table with these columns.</p>
      ${asked.map(
        ([key, words]) => html`<label>${words}
          <select name=${key} ?required=${key === 'text'}>
            <option value="">${key === 'text' ? 'choose' : 'none of them'}</option>
            ${heads.map(
              (head, at) =>
                html`<option value=${at} ?selected=${columns[key] === at}>${head || `column ${at + 1}`}${first[at] ? `: ${first[at]}` : ''}</option>`,
            )}
          </select></label>`,
      )}
      <div class="acts"><button ?disabled=${this.busy}>Read it so</button>
        <button type="button" @click=${() => {
          this.open = undefined;
        }}>Leave it</button></div>
    </form>`;
  }

  protected override render() {
    return html`<div class="bunch-table noprint">
      <label>Or take in a table of messages (CSV)
        <input type="file" accept=".csv,.tsv,.txt,text/csv" ?disabled=${this.busy} @change=${this.chosen} /></label>
      ${this.busy ? html`<p class="small" role="status">Looking into the file …</p>` : nothing}
      <p class="error" role="alert">${this.wrong || nothing}</p>
      ${this.columns()}
    </div>`;
  }
}

customElements.define('table-box', TableBox);
