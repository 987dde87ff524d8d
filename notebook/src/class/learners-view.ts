import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { answerRead, questionRead } from './case-read';
import { listen, type Shown } from './channel';
import { walkedCase } from './record';

/** What the learners see on a second screen: the question, and the answer once it is opened. */
export class LearnersView extends PlainElement {
  static override properties = { system: { attribute: false }, shown: { state: true } };
  declare system: UnitSystem;
  declare shown: Shown | undefined;
  private unlisten: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.unlisten = listen((shown) => {
      this.shown = shown;
    });
  }

  override disconnectedCallback(): void {
    this.unlisten?.();
    super.disconnectedCallback();
  }

  protected override render() {
    const { shown, system } = this;
    if (!shown) {
      return html`<h1>For the learners</h1>
        <p role="status">Waiting for the trainer’s window: begin a class there, and it appears here.</p>`;
    }
    if (shown.done) {
      return html`<h1>For the learners</h1><p role="status">The last case is done. The tally is in the trainer’s window.</p>`;
    }
    const walked = walkedCase(shown.text);
    if (!walked)
      return html`<h1>For the learners</h1><p role="status">This case cannot be shown.</p>`;
    return html`
      <p class="soft small">Case ${shown.number} of ${shown.cases}</p>
      <h1>${walked.doc.front.title}</h1>
      ${questionRead(walked, system)}
      <p role="status">${
        shown.open ? 'The working is open.' : `${shown.committed} of ${shown.of} have committed.`
      }</p>
      ${shown.open ? html`<h2>What came out</h2>${answerRead(walked, system)}` : ''}
    `;
  }
}

customElements.define('learners-view', LearnersView);
