import type { Fact, Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { FactTyped, optionsOf, typedIn } from './fact-table';
import { PlainElement } from './plain-element';

/**
 * The facts that are still to be found out, one question at a time, the one that decides most
 * first. What is typed counts at once; the question stays until one goes on.
 */
export class AskOne extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    open: { attribute: false },
    values: { attribute: false },
    errors: { attribute: false },
    at: { state: true },
    passed: { state: true },
  };
  declare topic: Topic;
  /** Ids of the facts still to be found out, the most decisive first. */
  declare open: readonly string[];
  /** What is written now, by the fact's id. */
  declare values: Readonly<Record<string, string>>;
  declare errors: Readonly<Record<string, string>>;
  /** The question in sight; undefined until the first is chosen. */
  declare at: string | undefined;
  /** Questions left for later. */
  declare passed: ReadonlySet<string>;

  constructor() {
    super();
    this.passed = new Set();
  }

  protected override willUpdate(): void {
    this.at ??= this.open.find((id) => !this.passed.has(id));
  }

  private on(pass: boolean): void {
    if (this.at !== undefined && pass) this.passed = new Set([...this.passed, this.at]);
    this.at = this.open.find((id) => !this.passed.has(id) && id !== this.at);
    void this.updateComplete.then(() =>
      this.querySelector<HTMLElement>('.ask [data-ask]')?.focus(),
    );
  }

  private field(id: string, fact: Fact) {
    const value = this.values[id] ?? 'unknown';
    const error = this.errors[id];
    const options = optionsOf(fact);
    const typed = (event: Event) => {
      this.dispatchEvent(new FactTyped(id, typedIn(event) || 'unknown'));
    };
    if (options) {
      return html`<select id="ask" data-ask @change=${typed}>
        ${options.map((each) => html`<option ?selected=${each === value}>${each}</option>`)}
      </select>`;
    }
    const unit = fact.kind === 'quantity' && fact.unit !== '' ? ` ${fact.unit}` : '';
    return html`<input
        id="ask"
        data-ask
        autocomplete="off"
        spellcheck="false"
        placeholder="such as 900${unit}, or a range"
        aria-invalid=${error ? 'true' : 'false'}
        aria-describedby="ask-help${error ? ' ask-error' : ''}"
        .value=${value === 'unknown' ? '' : value}
        @change=${typed}
        @input=${typed}
      />
      ${error ? html`<p class="error" id="ask-error">${error}</p>` : nothing}`;
  }

  private question(id: string, fact: Fact) {
    const left = this.open.filter((each) => !this.passed.has(each) && each !== id).length;
    const submit = (event: Event) => {
      event.preventDefault();
      this.on(false);
    };
    return html`<form class="ask" @submit=${submit}>
      <p class="small soft">To find out first${left > 0 ? `; ${left} more after this one` : '; this is the last one'}</p>
      <label for="ask">${fact.ask}</label>
      ${this.field(id, fact)}
      <p class="small soft" id="ask-help">Read it from: ${fact.where}.</p>
      <div class="acts">
        <button type="submit">Next question</button>
        <button type="button" @click=${() => this.on(true)}>Not known yet</button>
      </div>
    </form>`;
  }

  protected override render() {
    const id = this.at;
    const fact = id === undefined ? undefined : this.topic.facts[id];
    if (id !== undefined && fact && fact.kind !== 'rows') return this.question(id, fact);
    if (this.open.length === 0) return nothing;
    const again = () => {
      this.passed = new Set();
      this.at = undefined;
    };
    return html`<p class="ask small">
      Left for later: ${this.open.length}.
      <button type="button" @click=${again}>Ask again</button>
    </p>`;
  }
}

customElements.define('ask-one', AskOne);
