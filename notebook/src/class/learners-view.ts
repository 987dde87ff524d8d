import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import '../elements/qr-code';
import { PlainElement } from '../elements/plain-element';
import { type Invited, listen, type Shown } from './channel';
import './projector.css';
import './wall-steps.css';
import { titleAbove } from './case-title';
import { movedRead } from './moved-read';
import type { Walked } from './record';
import { wallRead } from './task-read';
import { Walks, walking } from './walks';
import { stepRead } from './wall-steps';

/** What the learners see on a second screen: the question, then step by step what came out. */
export class LearnersView extends PlainElement {
  static override properties = { system: { attribute: false }, shown: { state: true } };
  declare system: UnitSystem;
  declare shown: Shown | undefined;
  private unlisten: (() => void) | undefined;
  private readonly walks = new Walks(this);

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

  private asked(walked: Walked, { committed, of, invited }: Shown) {
    const { told, ask, known } = wallRead(walked, this.system);
    return html`<div class="told">${told}</div>
      <div class="ask"><div>${ask}
        <p role="status">${committed} of ${of} have committed.</p></div>${
          invited
            ? html`<qr-code .text=${invited.href} .label=${'Code that opens this class on a phone'}></qr-code>`
            : ''
        }</div>
      <div class="known">${known}</div>`;
  }

  private invitation({ address, code, joined }: Invited) {
    return html`<div class="invited">
      <p>On your phone: <strong class="num">${address}</strong></p>
      <p>Join code: <strong class="num code">${code}</strong></p>
      <p role="status">${joined} joined</p>
    </div>`;
  }

  /** The code that opens the class, as large as the wall has room for. */
  private toScan(href: string) {
    return html`<div class="stage to-scan">
      <h1>Scan this with your phone</h1>
      <p>It opens the class there. Choose your name, and answer when the case comes.</p>
      <qr-code .text=${href} .label=${'Code that opens this class on a phone'}></qr-code>
    </div>`;
  }

  private open(walked: Walked, { step, guesses, moved }: Shown) {
    const { system } = this;
    return moved
      ? html`<div class="step">${movedRead(moved, walked, system)}</div>`
      : stepRead(step, walked, guesses, system);
  }

  protected override render() {
    const { shown } = this;
    if (!shown) {
      return html`<h1>For the learners</h1>
        <p role="status">Waiting for the trainer’s window: begin a class there, and it appears here.</p>`;
    }
    if (shown.done) {
      return html`<h1>That was the last case</h1>
        ${shown.together ? html`<p>${shown.together}</p>` : ''}
        <p role="status">Who said what is in the trainer’s window alone.</p>
        ${shown.endCode ? html`<p>On a phone that read its answers out, type the end code: <strong class="end-code num">${shown.endCode}</strong></p>` : ''}`;
    }
    if (shown.code) return this.toScan(shown.code);
    const walked = this.walks.of(shown);
    if (walked === 'coming') return html`<h1>For the learners</h1>${walking}`;
    if (!walked)
      return html`<h1>For the learners</h1><p role="status">This case cannot be shown.</p>`;
    const { front } = walked.doc;
    const title = titleAbove({ ...shown, title: front.title }, shown.number, shown.open);
    return html`<div class="stage ${shown.open ? 'is-open' : 'is-asked'}">
      <h1>${title} <span class="soft small">case ${shown.number} of ${shown.cases}</span></h1>
      ${shown.open ? html`<p class="hidden" role="status">The working is open.</p>${this.open(walked, shown)}` : this.asked(walked, shown)}
      ${shown.invited ? this.invitation(shown.invited) : ''}
    </div>`;
  }
}

customElements.define('learners-view', LearnersView);
