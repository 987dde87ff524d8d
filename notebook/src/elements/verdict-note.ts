import type { Answer, State } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { restating } from '../state/restated';
import { mark } from './marks';
import { PlainElement } from './plain-element';

const settled = 800;

/** The verdict: word, shape and colour, the sentence, and on what it rests. */
export class VerdictNote extends PlainElement {
  static override properties = {
    answer: { attribute: false },
    level: { attribute: false },
    current: { attribute: false },
    was: { attribute: false },
    system: { attribute: false },
    spoken: { state: true },
  };
  declare answer: Answer;
  declare level: State;
  declare current: boolean;
  /** The verdict as filed; undefined where it stands as it stood. */
  declare was: Answer | undefined;
  declare system: UnitSystem;
  declare spoken: string;
  private timer: ReturnType<typeof setTimeout> | undefined;

  private sentence(answer: Answer): string {
    return restating(answer, this.system)(answer.sentence);
  }

  /** Announced once it has settled, not at every key. */
  protected override updated(): void {
    const says = `${this.answer.words}. ${this.sentence(this.answer)}`;
    if (says === this.spoken) return;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.spoken = says;
    }, settled);
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  protected override render() {
    const { answer, level, current, was } = this;
    return html`
      <section class="verdict level-${level}" aria-label="Verdict" tabindex="-1">
        ${mark(level)}
        <p class="word">${answer.words.charAt(0).toUpperCase()}${answer.words.slice(1)}</p>
        <p>${this.sentence(answer)}</p>
        ${was ? html`<p class="moved">as filed: ${was.words}. ${this.sentence(was)}</p>` : nothing}
        <p class="soft small">
          ${answer.restsOn}
          ${answer.house ? `Reckoned with the numbers of ${answer.house.name}.` : ''}
          ${current ? nothing : html`<strong>This is the verdict before the entry marked below.</strong>`}
        </p>
      </section>
      <p class="hidden" aria-live="polite">${this.spoken ?? ''}</p>
    `;
  }
}

customElements.define('verdict-note', VerdictNote);
