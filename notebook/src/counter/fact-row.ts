import type { Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { refusalOf } from '../state/refused';
import { optionsOf } from './choice-field';
import './choice-field';
import './quantity-field';

/** One fact as a case tells it. */
export type Told = {
  readonly id: string;
  readonly words: string;
  readonly value: string;
  readonly readFrom: string;
};

const isSame = (a: Told, b: Told | undefined): boolean =>
  a.id === b?.id && a.words === b.words && a.value === b.value && a.readFrom === b.readFrom;

export class FactDropped extends CustomEvent<{ id: string }> {
  constructor(id: string) {
    super('fact-dropped', { detail: { id }, bubbles: true });
  }
}

/** Something was typed into a fact. */
export class FactTyped extends CustomEvent<{ id: string; value: string }> {
  constructor(id: string, value: string) {
    super('fact-typed', { detail: { id, value }, bubbles: true });
  }
}

/** A fact, its field beside it, and what it is and where to read it at a touch. */
export class FactRow extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    row: { attribute: false, hasChanged: (now: Told, was?: Told) => !isSame(now, was) },
    moved: { attribute: false },
    asked: { type: Boolean },
    system: { attribute: false },
    helps: { state: true },
  };
  declare topic: Topic;
  declare row: Told;
  /** What was filed, where that differs; '' where it was not there. */
  declare moved: string | undefined;
  /** Whether the field stands in the question that is asked just now. */
  declare asked: boolean;
  declare system: UnitSystem;
  declare helps: boolean;

  private field(label: string) {
    const { topic, row, system } = this;
    const fact = topic.facts[row.id];
    const id = `fact-${row.id}`;
    if (!fact || fact.kind === 'rows') return html`<code>${row.value}</code>`;
    if (this.asked) {
      return html`<button type="button" class="quiet to-question" @click=${() => {
        document.querySelector<HTMLElement>('next-question [data-entry]')?.focus();
      }}>asked above</button>`;
    }
    if (fact.kind === 'quantity') {
      return html`<quantity-field .text=${row.value} .unit=${fact.unit} .label=${label} .field=${id}
        .fact=${row.id} .system=${system}
        .refuses=${(text: string) => refusalOf(topic, row.id, text)?.says}></quantity-field>`;
    }
    return html`<choice-field .text=${row.value} .options=${optionsOf(fact)} .label=${label} .field=${id}
      .fact=${row.id}></choice-field>`;
  }

  private help(label: string) {
    const fact = this.topic.facts[this.row.id];
    return html`<div class="help small soft">
      ${fact ? html`<p>${fact.means ? html`${fact.means} ` : nothing}${fact.ask} Read it from: ${fact.where}.</p>` : nothing}
      <button type="button" class="quiet" @click=${() => this.dispatchEvent(new FactDropped(this.row.id))}
        aria-label="Leave out: ${label}">Leave this out</button>
    </div>`;
  }

  private typed = (event: Event): void => {
    if (!(event instanceof CustomEvent)) return;
    event.stopPropagation();
    this.dispatchEvent(new FactTyped(this.row.id, String(event.detail.text)));
  };

  protected override render() {
    const { topic, row, moved, helps } = this;
    const label = row.words || topic.facts[row.id]?.label || row.id;
    return html`<div class="fact" ?data-unknown=${row.value === 'unknown'} @value-typed=${this.typed}>
      <span class="named">
        <label for="fact-${row.id}">${label}</label>
        <button type="button" class="ask-help noprint" aria-expanded=${helps ? 'true' : 'false'} aria-label="About ${label}"
          @click=${() => {
            this.helps = !helps;
          }}>?</button>
        ${row.readFrom ? html`<small class="from">${row.readFrom}</small>` : nothing}
        ${moved === undefined ? nothing : html`<small class="moved">as filed: ${moved || 'not there'}</small>`}
      </span>
      ${this.field(label)}
      ${helps ? this.help(label) : nothing}
    </div>`;
  }
}

customElements.define('fact-row', FactRow);
