import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { optionsOf } from '../counter/choice-field';
import { PlainElement } from '../elements/plain-element';
import { textOf } from '../state/entry';
import { refusalOf } from '../state/refused';

/** One fact that was read in a stretch of words. */
export type ReadFact = {
  readonly fact: string;
  readonly label: string;
  /** As it was read, and as it counts now. */
  readonly read: string;
  readonly now: string;
};

/** What a person makes of facts that were read: other values, none of them, or as it was. */
export type Mended =
  | { readonly values: Readonly<Record<string, string>> }
  | { readonly strike: boolean }
  | { readonly shut: true };
export class FactMended extends CustomEvent<Mended> {
  constructor(mended: Mended) {
    super('fact-mended', { detail: mended, bubbles: true });
  }
}

/** Sets right what was read in some words, or leaves it out. */
export class FactMend extends PlainElement {
  static override properties = {
    facts: { attribute: false },
    topic: { attribute: false },
    words: { attribute: false },
    struck: { attribute: false },
    wrong: { state: true },
  };
  declare facts: readonly ReadFact[];
  declare topic: Topic | undefined;
  /** The very words that were read. */
  declare words: string;
  /** Whether they were left out. */
  declare struck: boolean;
  declare wrong: string;

  constructor() {
    super();
    this.wrong = '';
  }

  protected override firstUpdated(): void {
    this.querySelector<HTMLElement>('input, select')?.focus();
  }

  private send(mended: Mended): void {
    this.dispatchEvent(new FactMended(mended));
  }

  private take = (event: Event): void => {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const typed = new FormData(event.target);
    const values: Record<string, string> = {};
    for (const { fact } of this.facts) {
      const declared = this.topic?.facts[fact];
      const unit = declared?.kind === 'quantity' ? declared.unit : '';
      const value = textOf({ typed: String(typed.get(fact) ?? ''), unit });
      const refused = this.topic && refusalOf(this.topic, fact, value);
      if (refused) {
        this.wrong = `${refused.label}: ${refused.says}`;
        return;
      }
      values[fact] = value;
    }
    this.send({ values });
  };

  private field({ fact, label, now }: ReadFact) {
    const declared = this.topic?.facts[fact];
    const options = declared ? optionsOf(declared) : [];
    return html`<label>${label}
      ${
        options.length === 0
          ? html`<input name=${fact} .value=${now} autocomplete="off" />`
          : html`<select name=${fact}>${options.map(
              (each) => html`<option value=${each} ?selected=${each === now}>${each}</option>`,
            )}</select>`
      }</label>`;
  }

  protected override render() {
    const { facts, words, struck, wrong } = this;
    const isAsRead = facts.every(({ read, now }) => read === now);
    const read = Object.fromEntries(facts.map((each) => [each.fact, each.read]));
    return html`<form class="fact-mend" @submit=${this.take} @keydown=${({
      key,
    }: KeyboardEvent) => {
      if (key === 'Escape') this.send({ shut: true });
    }}>
      <p class="small soft">“${words}” ${struck ? 'was left out.' : 'was read as:'}</p>
      ${facts.map((each) => this.field(each))}
      <p class="error" role="alert">${wrong || nothing}</p>
      <div class="acts"><button>Take it so</button>
        <button type="button" @click=${() => this.send({ strike: !struck })}>${struck ? 'Take it after all' : 'Leave it out'}</button>
        ${
          isAsRead
            ? nothing
            : html`<button type="button" @click=${() => this.send({ values: read })}>As it was read</button>`
        }
        <button type="button" @click=${() => this.send({ shut: true })}>Close</button></div>
    </form>`;
  }
}

customElements.define('fact-mend', FactMend);
