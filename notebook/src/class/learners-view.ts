import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import '../drawings/case-figures';
import '../elements/qr-code';
import { PlainElement } from '../elements/plain-element';
import { blocksAfter } from './case-read';
import { type Invited, listen, type Shown } from './channel';
import './guess-spread';
import { foundWords } from './predict';
import './projector.css';
import { firstLimit, movedRead } from './moved-read';
import type { Walked } from './record';
import { putRight, wallRead } from './task-read';
import { verdictRead } from './verdict-read';
import { Walks, walking } from './walks';

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

  private cameOut(walked: Walked) {
    const { question } = walked;
    const figure = question.kind === 'number' ? 'num' : '';
    return html`<p class="came-out">${question.label}: <strong class=${figure}>${foundWords(question, this.system)}</strong></p>`;
  }

  private open(walked: Walked, { step, guesses, moved }: Shown) {
    const { system } = this;
    const { doc, answer, question } = walked;
    if (moved) return html`<div class="step">${movedRead(moved, walked, system)}</div>`;
    if (step === 'guesses') {
      return html`<div class="step">${this.cameOut(walked)}
        ${putRight(walked)}<guess-spread .guesses=${guesses} .question=${question} .system=${system}></guess-spread></div>`;
    }
    if (step === 'picture') {
      return html`<div class="step picture">${verdictRead(walked)}
        <case-figures .drawn=${{ doc, answer }} .system=${system}></case-figures>
        ${firstLimit(answer, system) ?? this.cameOut(walked)}</div>`;
    }
    return html`<div class="step why">${verdictRead(walked)}
      <div class="author">${blocksAfter(walked, system)}</div></div>`;
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
    return html`<div class="stage ${shown.open ? 'is-open' : 'is-asked'}">
      <h1>${walked.doc.front.title} <span class="soft small">case ${shown.number} of ${shown.cases}</span></h1>
      ${shown.open ? html`<p class="hidden" role="status">The working is open.</p>${this.open(walked, shown)}` : this.asked(walked, shown)}
      ${shown.invited ? this.invitation(shown.invited) : ''}
    </div>`;
  }
}

customElements.define('learners-view', LearnersView);
