import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { type AsksOpen, inFigures } from './either';

/** A person said what a figure is, or took it back by saying the same once more. */
export class FigureSet extends CustomEvent<{ open: AsksOpen['open']; fact: string }> {
  constructor(set: { open: AsksOpen['open']; fact: string }) {
    super('figure-set', { detail: set, bubbles: true });
  }
}

/** What a figure is, asked in place; once it is answered only that it may be asked again is left. */
export class OpenFigure extends PlainElement {
  static override properties = { asks: { attribute: false } };
  declare asks: AsksOpen;

  private async set(fact: string): Promise<void> {
    this.dispatchEvent(new FigureSet({ open: this.asks.open, fact }));
    await this.updateComplete;
    // Whoever goes by keys stays where they are.
    requestAnimationFrame(() => this.querySelector('button')?.focus({ preventScroll: true }));
  }

  protected override render() {
    const { open, question, may, chosen } = this.asks;
    if (chosen !== undefined) {
      return html`<span class="small asked-open"><button type="button" class="quiet" @click=${() => this.set(chosen)}>Ask again what ${inFigures(open.value)} is</button></span>`;
    }
    return html`<span class="small asked-open" role="group" aria-label="What ${inFigures(open.value)} is"><span>${question}</span> ${may.map(
      ({ fact, says }) =>
        html`<button type="button" class="quiet" @click=${() => this.set(fact)}>${says}</button> `,
    )}</span>`;
  }
}

customElements.define('open-figure', OpenFigure);
