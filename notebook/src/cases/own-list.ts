import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import { withTitle } from '../state/front-line';
import { forget, type Kept, keep, keptCase } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { caseRow } from './row';
import type { Row } from './rows';

/** So many are drawn before somebody asks for more. */
const few = 5;

/** What was deleted last, to be put back. */
type Gone = { readonly kept: Kept; readonly says: string };

/** One's own cases, the last touched first: named, copied, deleted, and put back. */
export class OwnList extends PlainElement {
  static override properties = {
    rows: { attribute: false },
    heading: { attribute: false },
    most: { state: true },
    naming: { state: true },
    gone: { state: true },
    told: { state: true },
  };
  declare rows: readonly Row[];
  declare heading: string;
  declare most: number;
  /** The case that is being named. */
  declare naming: string;
  declare gone: Gone | undefined;
  declare told: string;

  constructor() {
    super();
    this.heading = 'Your own';
    this.most = few;
    this.naming = '';
    this.told = '';
  }

  /** Does something to a case as it is kept now; whatever goes wrong is said. */
  private async change(row: Row, what: (kept: Kept) => Promise<string>): Promise<void> {
    try {
      const kept = await keptCase(row.topic, row.name);
      this.told = kept ? await what(kept) : 'This case is gone: another window deleted it.';
    } catch (problem) {
      this.told = whyNotKept(problem);
    }
    this.dispatchEvent(new Event('own-changed', { bubbles: true }));
  }

  private copy = (row: Row): Promise<void> =>
    this.change(row, async (kept) => {
      const name = `${row.name.replace(/-copy-[^-]+$/, '')}-copy-${Date.now().toString(36)}`;
      const text = withTitle(kept.text, `${row.title}, copy`);
      await keep({ topic: kept.topic, name, text, at: Date.now() });
      return `Copied as “${row.title}, copy”.`;
    });

  private drop = (row: Row): Promise<void> =>
    this.change(row, async (kept) => {
      await forget(kept.topic, kept.name);
      const says = row.own === 'changed' ? 'put back as it came' : 'deleted';
      this.gone = { kept, says: `“${row.title}” is ${says}.` };
      return '';
    });

  private async undo(): Promise<void> {
    const { gone } = this;
    if (!gone) return;
    try {
      await keep(gone.kept);
      this.gone = undefined;
      this.told = 'It is back.';
    } catch (problem) {
      this.told = whyNotKept(problem);
    }
    this.dispatchEvent(new Event('own-changed', { bubbles: true }));
  }

  private name(row: Row, event: Event): void {
    event.preventDefault();
    const field = this.querySelector<HTMLInputElement>('.naming input');
    const title = field?.value.trim() ?? '';
    this.naming = '';
    if (title === '' || title === row.title) return;
    void this.change(row, async (kept) => {
      await keep({ ...kept, text: withTitle(kept.text, title), at: Date.now() });
      return `Named “${title}”.`;
    });
  }

  private async beginNaming(row: Row): Promise<void> {
    this.naming = `${row.topic}/${row.name}`;
    await this.updateComplete;
    this.querySelector<HTMLInputElement>('.naming input')?.select();
  }

  private acts(row: Row) {
    const { title, own } = row;
    if (this.naming === `${row.topic}/${row.name}`) {
      return html`<form class="naming" @submit=${(event: Event) => this.name(row, event)}
        @keydown=${(event: KeyboardEvent) => {
          if (event.key === 'Escape') this.naming = '';
        }}>
        <label>Name<br /><input .value=${title} maxlength="120" enterkeyhint="done" /></label>
        <button>Name it</button>
        <button type="button" @click=${() => {
          this.naming = '';
        }}>Leave it</button>
      </form>`;
    }
    return html`<span class="row-acts">
      <button class="quiet" aria-label="Rename: ${title}" @click=${() => this.beginNaming(row)}>Rename</button>
      <button class="quiet" aria-label="Copy: ${title}" @click=${() => this.copy(row)}>Copy</button>
      <button class="quiet" aria-label="${own === 'changed' ? 'Put back' : 'Delete'}: ${title}"
        @click=${() => this.drop(row)}>${own === 'changed' ? 'Put back as it came' : 'Delete'}</button>
    </span>`;
  }

  protected override render() {
    const { rows, most, gone, told } = this;
    const shown = rows.slice(0, most);
    return html`
      <div role="status">
        ${
          gone
            ? html`<p class="notice">${gone.says} <button @click=${this.undo}>Undo</button></p>`
            : nothing
        }
        ${told ? html`<p class="small soft">${told}</p>` : nothing}
      </div>
      ${
        rows.length === 0
          ? nothing
          : html`<h2>${this.heading}</h2><ul class="cases own">${repeat(
              shown,
              ({ topic, name }) => `${topic}/${name}`,
              (row) => keyed(row.name, caseRow(row, this.acts(row), true)),
            )}</ul>`
      }
      ${
        rows.length > most
          ? html`<button @click=${() => {
              this.most += 50;
            }}>Show more of the ${rows.length}</button>`
          : nothing
      }
    `;
  }
}

customElements.define('own-list', OwnList);
