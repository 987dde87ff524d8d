import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import { withTitle } from '../state/front-line';
import { forget, type Kept, keep, keptCase } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { inPlace, keyOf } from './in-place';
import { caseRow } from './row';
import type { Row } from './rows';

/** So many are drawn before somebody asks for more. */
const few = 5;

/** What was deleted, to be put back; it keeps its place in the list, and its height. */
type Gone = {
  readonly kept: Kept;
  readonly says: string;
  readonly high: number;
  /** Put back: its row is drawn once the list has it again. */
  readonly isBack?: boolean;
};

/** What was done with a row last; what went wrong stands in the row itself. */
type Said = {
  readonly of: string;
  readonly says: string;
  readonly kind: 'done' | 'copied' | 'wrong';
};

const unsaid: Said = { of: '', says: '', kind: 'done' };

/**
 * One's own cases, the last touched first: named, copied, deleted, and put back. Nothing that is done
 * with one moves another: what is deleted leaves its place to the way back, and a copy stands last.
 */
export class OwnList extends PlainElement {
  static override properties = {
    rows: { attribute: false },
    heading: { attribute: false },
    none: { attribute: false },
    most: { state: true },
    naming: { state: true },
    gone: { state: true },
    said: { state: true },
  };
  declare rows: readonly Row[];
  declare heading: string;
  /** What stands under the heading where there are none; '' draws no heading either. */
  declare none: string;
  declare most: number;
  /** The case that is being named. */
  declare naming: string;
  declare gone: ReadonlyMap<string, Gone>;
  declare said: Said;
  /** The order in which they stand, and which came after it was first drawn. */
  private order = inPlace([]);
  private busy = new Set<string>();

  constructor() {
    super();
    this.rows = [];
    this.heading = 'Your own';
    this.none = '';
    this.most = few;
    this.naming = '';
    this.gone = new Map();
    this.said = unsaid;
  }

  protected override willUpdate(changed: ReadonlyMap<PropertyKey, unknown>): void {
    if (changed.has('rows')) this.order = inPlace(this.rows.map(keyOf), this.order, this.gone);
  }

  /** Heights are set by script, which the page's policy lets it do. */
  protected override updated(): void {
    for (const item of this.querySelectorAll<HTMLElement>('li.gone')) {
      const { high = 0 } = this.gone.get(item.dataset.of ?? '') ?? {};
      item.style.minHeight = `${high}px`;
    }
  }

  /** Does something to a case as it is kept now; whatever goes wrong is said in its row. */
  private async change(row: Row, what: (kept: Kept) => Promise<Said>): Promise<void> {
    const of = keyOf(row);
    if (this.busy.has(of)) return;
    this.busy.add(of);
    const wrong = (says: string): Said => ({ of, says, kind: 'wrong' });
    try {
      const kept = await keptCase(row.topic, row.name);
      this.said = kept ? await what(kept) : wrong('This case is gone: another window deleted it.');
    } catch (problem) {
      this.said = wrong(whyNotKept(problem));
    }
    this.busy.delete(of);
    this.dispatchEvent(new Event('own-changed', { bubbles: true }));
  }

  private copy = (row: Row): Promise<void> =>
    this.change(row, async (kept) => {
      const name = `${row.name.replace(/-copy-[^-]+$/, '')}-copy-${Date.now().toString(36)}`;
      const text = withTitle(kept.text, `${row.title}, copy`);
      await keep({ topic: kept.topic, name, text, at: Date.now() });
      return { of: keyOf(row), says: `Copied as “${row.title}, copy”.`, kind: 'copied' };
    });

  private async drop(row: Row, { target }: Event): Promise<void> {
    const of = keyOf(row);
    const item = target instanceof Element ? target.closest('li') : null;
    await this.change(row, async (kept) => {
      await forget(kept.topic, kept.name);
      const says = `“${row.title}” is ${row.own === 'changed' ? 'put back as it came' : 'deleted'}.`;
      const high = item?.getBoundingClientRect().height ?? 0;
      this.gone = new Map([...this.gone, [of, { kept, says, high }]]);
      return { of, says, kind: 'done' };
    });
    await this.updateComplete;
    this.querySelector<HTMLElement>(`[data-of="${CSS.escape(of)}"] button`)?.focus();
  }

  private async undo(of: string, gone: Gone): Promise<void> {
    try {
      await keep(gone.kept);
      this.gone = new Map([...this.gone, [of, { ...gone, isBack: true }]]);
      this.said = { of, says: 'It is back.', kind: 'done' };
    } catch (problem) {
      this.said = { of, says: whyNotKept(problem), kind: 'wrong' };
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
      return { of: keyOf(row), says: `Named “${title}”.`, kind: 'done' };
    });
  }

  private async beginNaming(row: Row): Promise<void> {
    this.naming = keyOf(row);
    await this.updateComplete;
    this.querySelector<HTMLInputElement>('.naming input')?.select();
  }

  private acts(row: Row) {
    const { title, own } = row;
    const { of, says, kind } = this.said;
    if (this.naming === keyOf(row)) {
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
    const here = of === keyOf(row);
    const copy = here && kind === 'copied' ? 'Copied' : 'Copy';
    return html`<span class="row-acts">
        <button class="quiet" aria-label="Rename: ${title}" @click=${() => this.beginNaming(row)}>Rename</button>
        <button class="quiet copy" aria-label="${copy}: ${title}" @click=${() => this.copy(row)}>${copy}</button>
        <button class="quiet" aria-label="${own === 'changed' ? 'Put back' : 'Delete'}: ${title}"
          @click=${(event: Event) => this.drop(row, event)}>${own === 'changed' ? 'Put back as it came' : 'Delete'}</button>
      </span>
      ${here && kind === 'wrong' ? html`<p class="error">${says}</p>` : nothing}`;
  }

  /** The way back stands first, so that who presses twice does not take it. */
  private left(of: string, gone: Gone) {
    const { said } = this;
    const wrong = said.of === of && said.kind === 'wrong' ? said.says : '';
    return html`<li class="gone" data-of=${of}>
      <span class="row-acts"><button aria-label="Undo: ${gone.says}" @click=${() => this.undo(of, gone)}>Undo</button>
        <span class="soft">${gone.says}</span></span>
      ${wrong ? html`<p class="error">${wrong}</p>` : nothing}
    </li>`;
  }

  protected override render() {
    const { rows, most, gone, order, heading, none } = this;
    const byKey = new Map(rows.map((row) => [keyOf(row), row]));
    const shown = order.all.filter((key, at) => at < most || order.later.has(key));
    const isEmpty = order.all.length === 0;
    return html`
      <p class="hidden" role="status">${this.said.says}</p>
      ${isEmpty && none === '' ? nothing : html`<h2>${heading}</h2>`}
      ${isEmpty && none !== '' ? html`<p class="soft">${none}</p>` : nothing}
      ${
        isEmpty
          ? nothing
          : html`<ul class="cases own">${repeat(
              shown,
              (key) => key,
              (key) => {
                const back = gone.get(key);
                const row = byKey.get(key);
                if (back && !(back.isBack && row)) return this.left(key, back);
                return row ? caseRow(row, this.acts(row), true) : nothing;
              },
            )}</ul>`
      }
      ${
        order.all.length > shown.length
          ? html`<button @click=${() => {
              this.most += 50;
            }}>Show more of the ${rows.length}</button>`
          : nothing
      }
    `;
  }
}

customElements.define('own-list', OwnList);
