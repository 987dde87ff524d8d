import rows from 'virtual:loads';
import type { CaseDocument } from '@tarebook/casebook';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { edits } from '../state/editing';
import { isAboard, loadsFor, type NamedLoad } from '../state/loads';

/** The case as it is with a load taken along, or left at home. */
export class LoadTurned extends CustomEvent<{ write: (doc: CaseDocument) => string }> {
  constructor(write: (doc: CaseDocument) => string) {
    super('load-turned', { detail: { write }, bubbles: true });
  }
}

const offered = (doc: CaseDocument): readonly NamedLoad[] => {
  const lists = Object.entries(doc.topic?.facts ?? {}).flatMap(([id, { kind }]) =>
    kind === 'rows' ? [id] : [],
  );
  return loadsFor(rows, lists);
};

/** “a weekend (240 lb, invented)”: what was counted by name; '' where nothing was. */
export const countedIn = (doc: CaseDocument): string =>
  offered(doc)
    .filter(
      (load) => isAboard(doc, load) && !load.rows.every(({ list }) => list === 'load.occupants'),
    )
    .map(({ name, rows: own }) => {
      const weight = own.reduce((sum, row) => sum + Number(row.weight), 0);
      return `${name} (${weight} lb, invented)`;
    })
    .join(', ');

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
