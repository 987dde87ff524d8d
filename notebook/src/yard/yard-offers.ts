import { offerChanges, offerSaid, readOffers } from '@tarebook/sweep';
import { html, nothing } from 'lit';
import plansText from '../../../seeds/floor-plans.csv?raw';
import offersText from '../../../seeds/offers.csv?raw';
import optionsText from '../../../seeds/options.csv?raw';
import { PlainElement } from '../elements/plain-element';

const offers = readOffers({
  'offers.csv': offersText,
  'options.csv': optionsText,
  'floor-plans.csv': plansText,
});

const capital = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;

/** “Heated tanks: on all of that line?” answered in one sentence, and what changed by year and why. */
export class YardOffers extends PlainElement {
  static override properties = { option: { state: true }, line: { state: true } };
  declare option: string;
  declare line: string;

  constructor() {
    super();
    this.option = 'heated-tanks';
    this.line = offers.lines[0] ?? '';
  }

  private choice(
    label: string,
    now: string,
    all: readonly (readonly [string, string])[],
    set: (value: string) => void,
  ) {
    const chosen = ({ target }: Event): void => {
      if (target instanceof HTMLSelectElement) set(target.value);
    };
    return html`<label>${label}<br /><select @change=${chosen}>${all.map(
      ([value, words]) => html`<option value=${value} ?selected=${value === now}>${words}</option>`,
    )}</select></label>`;
  }

  protected override render() {
    const options = [...offers.options].toSorted((a, b) => a[1].localeCompare(b[1]));
    const changes = offerChanges(offers).filter(({ line }) => line === this.line);
    return html`<div class="finder">
        ${this.choice('Is this', this.option, options, (value) => {
          this.option = value;
        })}
        ${this.choice(
          'on all of this line?',
          this.line,
          offers.lines.map((line) => [line, capital(line)] as const),
          (value) => {
            this.line = value;
          },
        )}
      </div>
      <p class="say" role="status">${offerSaid(offers, this.line, this.option)}</p>
      ${
        changes.length === 0
          ? nothing
          : html`<h3>What changed on the ${capital(this.line)} line</h3>
            <ul class="by-year">${changes.map(
              ({ year, says, because }) =>
                html`<li><span class="num">${year}</span> ${says}${because ? html`, <span class="soft">because ${because}</span>` : nothing}</li>`,
            )}</ul>`
      }
      <p class="small soft">The lines and their options are invented.</p>`;
  }
}

customElements.define('yard-offers', YardOffers);
