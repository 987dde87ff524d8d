import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { sentencesOf } from './spoken-pieces';

/** An answer without the sentences that were left out. */
export class Shortened extends CustomEvent<string> {
  constructor(text: string) {
    super('answer-shortened', { detail: text, bubbles: true });
  }
}

/** The sentences of an answer, each to be left out or put back by a touch; a caution is not. */
export class ShortenAnswer extends PlainElement {
  static override properties = {
    text: { attribute: false },
    cautions: { attribute: false },
    whole: { state: true },
    out: { state: true },
  };
  declare text: string;
  declare cautions: readonly string[];
  /** The answer as it was when the first sentence was left out. */
  declare whole: string;
  /** The places of what is left out. */
  declare out: readonly number[];

  constructor() {
    super();
    this.cautions = [];
    this.whole = '';
    this.out = [];
  }

  private left(out: readonly number[]): string {
    return sentencesOf(this.whole)
      .filter((_, at) => !out.includes(at))
      .join(' ');
  }

  protected override willUpdate(): void {
    // What was written anew meanwhile is what is shortened now.
    if (this.text === this.left(this.out)) return;
    this.whole = this.text;
    this.out = [];
  }

  private toggle(at: number): void {
    const { out } = this;
    const now = out.includes(at) ? out.filter((each) => each !== at) : [...out, at];
    this.out = now;
    this.text = this.left(now);
    this.dispatchEvent(new Shortened(this.text));
  }

  protected override render() {
    const sentences = sentencesOf(this.whole);
    const isLast = this.out.length === sentences.length - 1;
    return html`<p class="small soft">Press what is not to be said. A caution stays.</p>
      <ul class="sentences">${sentences.map((each, at) => {
        const isOut = this.out.includes(at);
        const isCaution = this.cautions.some((caution) => caution.includes(each));
        return html`<li>${
          isCaution
            ? html`<span class="soft">${each}</span>`
            : html`<button type="button" class="sentence" aria-pressed=${isOut ? 'true' : 'false'} ?disabled=${isLast && !isOut}
              title=${isOut ? 'Left out; press to say it after all' : 'Press to leave it out'} @click=${() => this.toggle(at)}>${each}</button>`
        }</li>`;
      })}</ul>`;
  }
}

customElements.define('shorten-answer', ShortenAnswer);
