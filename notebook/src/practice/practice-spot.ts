import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { ExerciseDone } from './exercise-events';
import type { Made } from './made';
import type { WrongFigure } from './wrong-figure';

/** Of a working one figure is changed; the learner finds the line that does not add up. */
export class PracticeSpot extends PlainElement {
  static override properties = {
    made: { attribute: false },
    wrong: { attribute: false },
    chosen: { state: true },
  };
  declare made: Made;
  declare wrong: WrongFigure;
  declare chosen: string | undefined;

  private choose(id: string, label: string): void {
    if (this.chosen !== undefined) return;
    this.chosen = id;
    this.dispatchEvent(new ExerciseDone(label, id === this.wrong.wrong));
    const later = async (): Promise<void> => {
      await this.updateComplete;
      this.querySelector<HTMLElement>('.score')?.focus();
    };
    void later();
  }

  private end() {
    const { lines, wrong, right } = this.wrong;
    const line = lines.find(({ id }) => id === wrong);
    const met = this.chosen === wrong;
    return html`<p class="score" tabindex="-1" role="status"><strong>${met ? 'That is the one.' : 'It is another one.'}</strong>
      ${line?.label}: ${line?.working} comes to ${right}, and ${line?.says} stood there.</p>`;
  }

  protected override render() {
    const { lines } = this.wrong;
    const done = this.chosen !== undefined;
    return html`<p>In one of these lines the result does not follow from the figures in it. Which?</p>
      <ol class="lines">${lines.map(
        ({ id, label, working, says }) =>
          html`<li class=${done && id === this.wrong.wrong ? 'the-wrong' : ''}>
            <span>${label}: <span class="num">${working} = <strong>${says}</strong></span></span>
            <button ?disabled=${done} aria-label=${`This one: ${label}`} @click=${() => this.choose(id, label)}>This one</button>
          </li>`,
      )}</ol>
      ${done ? this.end() : ''}`;
  }
}

customElements.define('practice-spot', PracticeSpot);
