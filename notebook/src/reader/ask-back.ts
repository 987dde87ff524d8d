import type { Missing, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { optionsOf } from '../counter/choice-field';
import '../counter/choice-field';
import { FactTyped } from '../counter/fact-row';
import '../counter/quantity-field';
import { PlainElement } from '../elements/plain-element';
import { refusalOf } from '../state/refused';

/** More than these nobody answers. */
const most = 4;

/** Asks for the answers to be sent back. */
export class SentBack extends Event {
  constructor() {
    super('sent-back', { bubbles: true });
  }
}

/** What was asked back, each with its field and where to read it, and the way to send the answers. */
export class AskBack extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    missing: { attribute: false },
    values: { attribute: false },
    system: { attribute: false },
    said: { attribute: false },
    asked: { state: true },
  };
  declare topic: Topic;
  declare missing: readonly Missing[];
  /** What is written now, by fact. */
  declare values: Readonly<Record<string, string>>;
  declare system: UnitSystem;
  /** What came of sending. */
  declare said: string;
  /** What was asked stays while it is being answered, though nothing asks for it any more. */
  declare asked: readonly string[];

  constructor() {
    super();
    this.asked = [];
  }

  protected override willUpdate(): void {
    const open = this.missing
      .map(({ fact }) => fact)
      .filter((id) => this.topic.facts[id]?.kind !== 'rows');
    const room = most - this.asked.filter((id) => open.includes(id)).length;
    const more = open.filter((id) => !this.asked.includes(id)).slice(0, Math.max(0, room));
    if (more.length > 0) this.asked = [...this.asked, ...more];
  }

  private one(id: string) {
    const { topic, values, system } = this;
    const fact = topic.facts[id];
    if (!fact || fact.kind === 'rows') return nothing;
    const text = values[id] ?? 'unknown';
    const field = `back-${id}`;
    const typed = (event: Event): void => {
      if (!(event instanceof CustomEvent)) return;
      event.stopPropagation();
      this.dispatchEvent(new FactTyped(id, String(event.detail.text)));
    };
    return html`<li @value-typed=${typed}>
      <label for=${field}>${fact.ask}</label>
      <p class="small soft">Read it from: ${fact.where}.</p>
      ${
        fact.kind === 'quantity'
          ? html`<quantity-field .text=${text} .unit=${fact.unit} .label=${fact.label} .field=${field}
              .fact=${id} .system=${system} .refuses=${(said: string) => refusalOf(topic, id, said)?.says}></quantity-field>`
          : html`<choice-field .text=${text} .options=${optionsOf(fact)} .label=${fact.label} .field=${field} .fact=${id}></choice-field>`
      }
    </li>`;
  }

  protected override render() {
    const { asked, said } = this;
    if (asked.length === 0) return nothing;
    return html`<section class="ask-back noprint" aria-label="Asked of you">
      <h2>${asked.length === 1 ? 'One thing is asked of you' : `${asked.length} things are asked of you`}</h2>
      <p class="soft small">Fill in what you can read; the answer above follows at once. Leave open what you cannot.</p>
      <ol>${asked.map((id) => this.one(id))}</ol>
      <button type="button" class="strong" @click=${() => this.dispatchEvent(new SentBack())}>Send the answers back</button>
      <p class="small" role="status">${said}</p>
    </section>`;
  }
}

customElements.define('ask-back', AskBack);
