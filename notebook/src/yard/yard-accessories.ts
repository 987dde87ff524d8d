import { effectSaid, fitSaid, readAccessories, readCatalogue, standingSaid } from '@tarebook/sweep';
import { html, nothing, type PropertyValues } from 'lit';
import accessoriesText from '../../../seeds/accessories.csv?raw';
import fitsText from '../../../seeds/accessory-fits.csv?raw';
import plansText from '../../../seeds/floor-plans.csv?raw';
import ratesText from '../../../seeds/rates.csv?raw';
import { PlainElement } from '../elements/plain-element';
import { inventedFiles } from './invented';

const all = readAccessories({
  'accessories.csv': accessoriesText,
  'accessory-fits.csv': fitsText,
  'rates.csv': ratesText,
  'floor-plans.csv': plansText,
});
const { trailers } = readCatalogue({ 'trailers.csv': inventedFiles['trailers.csv'] });

/** One accessory on one trailer: where it fits, what it does to tongue and payload, who fits it. */
export class YardAccessories extends PlainElement {
  static override properties = {
    meant: { attribute: false },
    accessory: { state: true },
    trailer: { state: true },
  };
  /** The trailer that the yard is asked about; '' for none. */
  declare meant: string;
  declare accessory: string;
  declare trailer: string;

  constructor() {
    super();
    this.accessory = 'rear-receiver';
    this.trailer = 'Osier 22 Bunks';
    this.meant = '';
  }

  /** What is fitted to the trailer that somebody asks about is what they mean. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const isHere = trailers.some(({ name }) => name === this.meant);
    if (changed.has('meant') && isHere) this.trailer = this.meant;
  }

  private choice(
    label: string,
    now: string,
    each: readonly (readonly [value: string, words: string])[],
    set: (value: string) => void,
  ) {
    const chosen = ({ target }: Event): void => {
      if (target instanceof HTMLSelectElement) set(target.value);
    };
    return html`<label>${label}<br /><select @change=${chosen}>${each.map(
      ([value, words]) => html`<option value=${value} ?selected=${value === now}>${words}</option>`,
    )}</select></label>`;
  }

  protected override render() {
    const accessory = all.accessories.find(({ id }) => id === this.accessory);
    const trailer = trailers.find(({ name }) => name === this.trailer);
    const line = all.plans.get(this.trailer)?.line;
    const inOrder = all.accessories.toSorted((a, b) => a.label.localeCompare(b.label));
    return html`<div class="finder">
        ${this.choice(
          'What is fitted',
          this.accessory,
          inOrder.map(({ id, label }) => [id, label] as const),
          (value) => {
            this.accessory = value;
          },
        )}
        ${this.choice(
          'on which trailer',
          this.trailer,
          trailers.map(({ name }) => [name, name] as const),
          (value) => {
            this.trailer = value;
          },
        )}
      </div>
      ${
        accessory && trailer
          ? html`<div class="say" role="status">
              ${line ? html`<p>${fitSaid(all, accessory, line)}</p>` : nothing}
              <p>${effectSaid(all, accessory, trailer)}</p>
              <p>${standingSaid(all, accessory)}</p></div>`
          : nothing
      }
      <p class="small soft">The accessories and the rate book are invented.</p>`;
  }
}

customElements.define('yard-accessories', YardAccessories);
