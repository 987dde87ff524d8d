import { masked } from '@tarebook/record';
import { html, nothing } from 'lit';
import { idle } from '../elements/idle';
import { PlainElement } from '../elements/plain-element';
import { type AtHand, questionsAtHand } from '../state/questions';

const mostShown = 3;

const shortly = (text: string): string => (text.length > 120 ? `${text.slice(0, 120)} …` : text);

/** What people asked that is urgent, how much is open, and the round that comes next. */
export class QuestionsAtHand extends PlainElement {
  static override properties = { found: { state: true } };
  /** Undefined until somebody looked. */
  declare found: AtHand | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    // A device that keeps nothing has none.
    void idle()
      .then(questionsAtHand)
      .then((found) => {
        this.found = found;
      })
      .catch(() => undefined);
  }

  protected override render() {
    const { found } = this;
    if (!found || (found.open === 0 && !found.round)) return nothing;
    const { urgent, open, waiting, round } = found;
    const asked = open === 1 ? '1 question is open' : `${open} questions are open`;
    return html`<section aria-label="Questions">
      <h2>Questions</h2>
      ${urgent
        .slice(0, mostShown)
        .map(
          ({ channel, text }) =>
            html`<p><strong>Urgent</strong>${channel === '' ? '' : `, ${channel}`}: <a href="#/questions">${shortly(masked(text))}</a></p>`,
        )}
      ${
        waiting.length === 0
          ? nothing
          : html`<ul class="small">${waiting
              .slice(0, mostShown)
              .map(
                ({ channel, text, waits }) =>
                  html`<li>${channel === '' ? '' : `${channel}: `}<a href="#/questions">${shortly(masked(text))}</a> waits for: ${waits}</li>`,
              )}${
              waiting.length > mostShown
                ? html`<li>${waiting.length - mostShown} more wait for somebody</li>`
                : nothing
            }</ul>`
      }
      <p class="small"><a href="#/questions">${asked}${urgent.length > 0 ? `, ${urgent.length} urgent` : ''}</a>${
        round
          ? html` · <a href="#/questions/round">The next round: ${round.items.length} ${round.items.length === 1 ? 'question' : 'questions'}</a>`
          : nothing
      }</p>
    </section>`;
  }
}

customElements.define('questions-at-hand', QuestionsAtHand);
