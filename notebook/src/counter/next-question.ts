import type { Missing, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, LitElement, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { refusalOf } from '../state/refused';
import { optionsOf } from './choice-field';
import { FactTyped } from './fact-row';
import './choice-field';
import './quantity-field';

/** Which fact is asked just now; undefined: none. */
export class AskingMoved extends CustomEvent<{ fact: string | undefined }> {
  constructor(fact: string | undefined) {
    super('asking-moved', { detail: { fact }, bubbles: true });
  }
}

/**
 * The one question to ask next, with its field. What is typed counts at once; the question stays
 * until one goes on, and what was left for later is asked again when nothing else is.
 */
export class NextQuestion extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    missing: { attribute: false },
    values: { attribute: false },
    system: { attribute: false },
    at: { state: true },
    passed: { state: true },
  };
  declare topic: Topic;
  /** What is to be found out, the most decisive first. */
  declare missing: readonly Missing[];
  /** What is written now, by fact. */
  declare values: Readonly<Record<string, string>>;
  declare system: UnitSystem;
  declare at: string | undefined;
  declare passed: ReadonlySet<string>;

  constructor() {
    super();
    this.passed = new Set();
  }

  private get open(): readonly string[] {
    return this.missing
      .map(({ fact }) => fact)
      .filter((id) => this.topic.facts[id]?.kind !== 'rows');
  }

  private isHere(): boolean {
    const { activeElement } = document;
    return activeElement !== null && this.contains(activeElement);
  }

  protected override willUpdate(): void {
    const { open, at } = this;
    const answered = at !== undefined && !open.includes(at) && !this.isHere();
    if (at !== undefined && !answered) return;
    this.move(open.find((id) => !this.passed.has(id)));
  }

  private move(fact: string | undefined): void {
    if (fact === this.at) return;
    this.at = fact;
    // The row of the fact gives way to this field, and comes back.
    queueMicrotask(() => this.dispatchEvent(new AskingMoved(fact)));
  }

  private next = async (event?: Event): Promise<void> => {
    event?.stopPropagation();
    // What was typed a moment ago decides what is asked now.
    this.dispatchEvent(new Event('judge-now', { bubbles: true }));
    const { at } = this;
    const told = at !== undefined && (this.values[at] ?? 'unknown') !== 'unknown';
    if (at !== undefined && !told) this.passed = new Set([...this.passed, at]);
    this.move(this.open.find((id) => id !== at && !this.passed.has(id)));
    await this.updateComplete;
    const field = this.querySelector('quantity-field, choice-field');
    if (field instanceof LitElement) await field.updateComplete;
    field?.querySelector<HTMLElement>('[data-entry]')?.focus();
  };

  private field(id: string) {
    const { topic, system } = this;
    const fact = topic.facts[id];
    const text = this.values[id] ?? 'unknown';
    if (!fact || fact.kind === 'rows') return nothing;
    if (fact.kind === 'quantity') {
      return html`<quantity-field .text=${text} .unit=${fact.unit} .label=${fact.label} .field=${'asked-next'}
        .fact=${id} .system=${system} .refuses=${(typed: string) => refusalOf(topic, id, typed)?.says}></quantity-field>`;
    }
    return html`<choice-field .text=${text} .options=${optionsOf(fact)} .label=${fact.label} .field=${'asked-next'} .fact=${id}></choice-field>`;
  }

  private typed = (event: Event): void => {
    if (!(event instanceof CustomEvent) || this.at === undefined) return;
    event.stopPropagation();
    this.dispatchEvent(new FactTyped(this.at, String(event.detail.text)));
  };

  private question(id: string) {
    const fact = this.topic.facts[id];
    const missing = this.missing.find((each) => each.fact === id);
    if (!fact) return nothing;
    const left = this.open.filter((each) => each !== id && !this.passed.has(each)).length;
    return html`<section class="next" aria-label="Ask next" @value-typed=${this.typed} @went-on=${this.next}>
      <p class="next-ask"><label for="asked-next">${fact.ask}</label></p>
      <p class="small soft">Read it from: ${fact.where}. ${missing?.says ?? ''}</p>
      <div class="next-field">${this.field(id)}
        <button type="button" class="on" @click=${this.next}>${left > 0 ? `Next, ${left} more` : 'Done'}</button></div>
    </section>`;
  }

  protected override render() {
    const { at, open } = this;
    if (at !== undefined) return this.question(at);
    if (open.length === 0) return nothing;
    return html`<p class="next small">Left for later: ${open.length}.
      <button type="button" class="quiet" @click=${() => {
        this.passed = new Set();
        this.move(open[0]);
      }}>Ask again</button></p>`;
  }
}

customElements.define('next-question', NextQuestion);
