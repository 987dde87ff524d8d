import type { UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { html } from 'lit';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { counted, type Guess, guessesSay } from './guesses';
import type { Question } from './predict';
import { scattered, scatterSays } from './scatter';

/** How a group guessed, without names: a bar for each choice, the right one marked unless it is still to come. */
export class GuessSpread extends PlainElement {
  static override properties = {
    guesses: { attribute: false },
    question: { attribute: false },
    system: { attribute: false },
    isAlone: { attribute: false },
  };
  declare guesses: readonly Guess[];
  declare question: Question;
  declare system: UnitSystem;
  /** Whether nothing may tell yet what came out. */
  declare isAlone: boolean;

  constructor() {
    super();
    this.isAlone = false;
  }

  protected override render() {
    const { guesses, question, system, isAlone } = this;
    const rows = (isAlone ? scattered : counted)(guesses, question, system);
    const across = scaleLinear()
      .domain([0, Math.max(1, ...rows.map(({ count }) => count))])
      .range([0, 100]);
    return html`<p>${isAlone ? scatterSays(guesses) : guessesSay(guesses, question, system)}</p>
      <table class="guessed">
        <caption class="hidden">How many said what</caption>
        <tbody>${rows.map(
          ({ word, count, met }) => html`<tr class=${met ? 'right' : ''}>
            <th scope="row">${word}${met ? html` <span class="small">${mark('ok')} as it came out</span>` : ''}</th>
            <td class="num">${count}</td>
            <td class="strip"><svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true"><rect x="0" y="1" width=${across(count)} height="8" /></svg></td>
          </tr>`,
        )}</tbody>
      </table>`;
  }
}

customElements.define('guess-spread', GuessSpread);
