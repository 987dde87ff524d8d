import { offerChanges, offerSaid } from '@tarebook/sweep';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { Beside } from './asked';
import { BesideWanted } from './beside-wanted';

const capital = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;

/** “Heated tanks: on all of that line?” answered in one sentence, and what changed by year and why. */
export class YardOffers extends PlainElement {
  static override properties = {
    beside: { attribute: false },
    option: { state: true },
    line: { state: true },
  };
  /** Undefined until it is read. */
  declare beside: Beside | undefined;
  declare option: string;
  declare line: string;

  constructor() {
    super();
    this.option = 'heated-tanks';
    this.line = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.dispatchEvent(new BesideWanted());
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
    if (!this.beside) return html`<p class="soft">Reading what is offered …</p>`;
    const { offers, isOwn } = this.beside;
    const options = [...offers.options].toSorted((a, b) => a[1].localeCompare(b[1]));
    const option = offers.options.has(this.option) ? this.option : (options[0]?.[0] ?? '');
    const line = offers.lines.includes(this.line) ? this.line : (offers.lines[0] ?? '');
    const changes = offerChanges(offers).filter((each) => each.line === line);
    return html`<div class="finder">
        ${this.choice('Is this', option, options, (value) => {
          this.option = value;
        })}
        ${this.choice(
          'on all of this line?',
          line,
          offers.lines.map((each) => [each, capital(each)] as const),
          (value) => {
            this.line = value;
          },
        )}
      </div>
      <p class="say" role="status">${offerSaid(offers, line, option)}</p>
      ${
        changes.length === 0
          ? nothing
          : html`<h3>What changed on the ${capital(line)} line</h3>
            <ul class="by-year">${changes.map(
              ({ year, says, because }) =>
                html`<li><span class="num">${year}</span> ${says}${because ? html`, <span class="soft">because ${because}</span>` : nothing}</li>`,
            )}</ul>`
      }
      ${isOwn.offers ? nothing : html`<p class="small soft">The lines and their options are invented.</p>`}`;
  }
}

customElements.define('yard-offers', YardOffers);
