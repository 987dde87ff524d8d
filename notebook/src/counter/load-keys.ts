import type { CaseDocument } from '@tarebook/casebook';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { edits } from '../state/editing';
import { isAboard } from '../state/loads';
import { offered } from './loads-counted';

/** The case as it is with a load taken along, or left at home. */
export class LoadTurned extends CustomEvent<{ write: (doc: CaseDocument) => string }> {
  constructor(write: (doc: CaseDocument) => string) {
    super('load-turned', { detail: { write }, bubbles: true });
  }
}

/** What people take along, by its name, at one touch. */
export class LoadKeys extends PlainElement {
  static override properties = { doc: { attribute: false } };
  declare doc: CaseDocument;

  protected override render() {
    const { doc } = this;
    const all = offered(doc);
    if (all.length === 0) return nothing;
    return html`<div class="loads" role="group" aria-label="Taken along, by name">
      ${all.map(
        (load) => html`<button type="button" aria-pressed=${isAboard(doc, load) ? 'true' : 'false'}
          @click=${() => this.dispatchEvent(new LoadTurned((now) => edits().turned(now, load, all)))}>${load.name}</button>`,
      )}
    </div>`;
  }
}

customElements.define('load-keys', LoadKeys);
