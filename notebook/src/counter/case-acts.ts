import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { printCase } from '../elements/print-asked';
import type { CaseView } from '../sections/case-view';
import { caseAddress } from '../state/address';
import { current } from '../state/history';
import { keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';

/** What can be done with the case as a whole. */
export class CaseActs extends PlainElement {
  static override properties = { view: { attribute: false }, told: { state: true } };
  declare view: CaseView;
  declare told: string;

  /** Puts the case as it stands beside this one, under a name of its own, and goes there. */
  private copy = async (): Promise<void> => {
    const { doc, history, name } = this.view;
    const { topic } = doc.front;
    const own = `${name}-copy-${Date.now().toString(36)}`;
    try {
      await keep({ topic, name: own, text: current(history), at: Date.now() });
      location.hash = caseAddress(topic, own);
    } catch (problem) {
      this.told = whyNotKept(problem);
    }
  };

  private tell = (says: string): void => {
    this.told = says;
  };

  protected override render() {
    const { filed, history, edit } = this.view;
    const text = filed?.doc.text;
    const moved = text !== undefined && current(history) !== text;
    return html`<div class="acts">
        ${moved ? html`<button @click=${() => edit(() => text, 'filed')}>Put back as filed</button>` : nothing}
        <button @click=${this.copy}>Make a copy</button>
        <button @click=${() => printCase(false, this.tell)}>Print on one sheet</button>
        <button @click=${() => printCase(true, this.tell)}>On paper with the working</button>
      </div>
      <p class="small" role="status">${this.told}</p>`;
  }
}

customElements.define('case-acts', CaseActs);
