import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { caseAddress } from '../state/address';
import { current } from '../state/history';
import { keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import type { CaseView } from './case-view';

/** Says that a case came by link and lies beside one's own, and keeps it among them. */
export class CameByLink extends PlainElement {
  static override properties = { view: { attribute: false }, told: { state: true } };
  declare view: CaseView;
  declare told: string;

  private keep = async (): Promise<void> => {
    const { doc, name, history } = this.view;
    const { topic } = doc.front;
    try {
      await keep({ topic, name, text: current(history), at: Date.now() });
      location.hash = caseAddress(topic, name);
    } catch (problem) {
      this.told = whyNotKept(problem);
    }
  };

  protected override render() {
    return html`<p class="came noprint">
      <span>This case came with a link.</span>
      <button @click=${this.keep}>Keep this case</button>
      <output>${this.told}</output>
    </p>`;
  }
}

customElements.define('came-by-link', CameByLink);
