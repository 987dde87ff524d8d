import { askedOf, type CaseDocument } from '@tarebook/casebook';
import type { Remedy } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { type ChangeFound, seekChanges, stopSeeking } from '../change/asked';
import { tellFound } from '../change/found';
import { housesNow } from '../state/house';
import { PlainElement } from './plain-element';

/** A proposed change is to be tried in the case. */
export class RemedyTried extends CustomEvent<{ remedy: Remedy }> {
  constructor(remedy: Remedy) {
    super('remedy-tried', { detail: { remedy }, bubbles: true });
  }
}

/** Typing has to have rested for so long before changes are looked for. */
const rested = 600;

/** What would change the verdict, looked for once the page stands and typing rests. */
export class ChangeList extends PlainElement {
  static override properties = {
    doc: { attribute: false },
    system: { attribute: false },
    untried: { attribute: false },
    found: { state: true },
    state: { state: true },
  };
  /** A case without troubles; undefined while there are some. */
  declare doc: CaseDocument | undefined;
  declare system: UnitSystem;
  /** Whether changes are told and not to be tried in the case. */
  declare untried: boolean;
  declare found: ChangeFound | undefined;
  declare state: 'resting' | 'seeking' | 'found' | 'stopped' | 'failed';
  private timer: ReturnType<typeof setTimeout> | undefined;
  private key = '';

  constructor() {
    super();
    this.state = 'resting';
    this.untried = false;
  }

  protected override willUpdate(): void {
    const key = this.doc ? `${this.system} ${this.doc.text}` : '';
    if (key === this.key) return;
    this.key = key;
    this.state = 'resting';
    clearTimeout(this.timer);
    stopSeeking();
    if (this.doc) this.timer = setTimeout(this.seek, rested);
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    stopSeeking();
    super.disconnectedCallback();
  }

  private seek = async (): Promise<void> => {
    const { doc, key, system: units } = this;
    if (!doc?.topic) return;
    this.state = 'seeking';
    try {
      const { asked } = askedOf(doc);
      const topic = doc.topic.id;
      const houses = housesNow();
      const found = await seekChanges({ topic, asked: { ...asked, units }, houses });
      if (key !== this.key) return;
      this.found = found;
      this.state = 'found';
      tellFound({ text: doc.text, system: units, houses, found });
    } catch {
      if (key === this.key) this.state = 'failed';
    }
  };

  private stop(): void {
    stopSeeking();
    this.state = 'stopped';
  }

  private progress() {
    switch (this.state) {
      case 'seeking':
        return html`<p class="small soft">Looking for changes … <button @click=${this.stop}>Stop looking</button></p>`;
      case 'stopped':
        return html`<p class="small soft">Stopped looking. <button @click=${this.seek}>Look again</button></p>`;
      case 'failed':
        return html`<p class="small soft">Changes could not be looked for here; the verdict stands all the same.</p>`;
      default:
        return nothing;
    }
  }

  private list({ remedies, noHelp, better }: ChangeFound) {
    return html`
      ${remedies.length === 0 ? html`<p>No single change, and no two together, that this topic knows would turn the verdict.</p>` : nothing}
      <ul class="changes">${remedies.map(
        (remedy) => html`<li>${remedy.says}
          ${this.untried ? nothing : html`<button class="noprint" @click=${() => this.dispatchEvent(new RemedyTried(remedy))}>Try it</button>`}</li>`,
      )}</ul>
      ${
        noHelp.length === 0
          ? nothing
          : html`<details class="noprint"><summary>What would not turn it</summary>
            <ul class="small">${noHelp.map(({ says }) => html`<li>${says}</li>`)}</ul></details>`
      }
      ${better.map((says) => html`<p>${says}</p>`)}
    `;
  }

  protected override render() {
    const { found, state } = this;
    return html`${this.progress()}${found && state === 'found' ? this.list(found) : nothing}`;
  }
}

customElements.define('change-list', ChangeList);
