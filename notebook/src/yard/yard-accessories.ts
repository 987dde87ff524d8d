import { effectSaid, fitSaid, standingSaid } from '@tarebook/sweep';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { Beside } from './asked';
import { BesideWanted } from './beside-wanted';

/** One accessory on one trailer: where it fits, what it does to tongue and payload, who fits it. */
export class YardAccessories extends PlainElement {
  static override properties = {
    beside: { attribute: false },
    meant: { attribute: false },
    accessory: { state: true },
    trailer: { state: true },
  };
  /** Undefined until it is read. */
  declare beside: Beside | undefined;
  /** The trailer that the yard is asked about; '' for none. */
  declare meant: string;
  /** What was chosen; '' for nothing yet. */
  declare accessory: string;
  declare trailer: string;

  constructor() {
    super();
    this.accessory = '';
    this.trailer = '';
    this.meant = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.dispatchEvent(new BesideWanted());
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
    const { beside, meant } = this;
    if (!beside) return html`<p class="soft">Reading the accessories …</p>`;
    const { accessories: all, trailers, isOwn } = beside;
    const inOrder = all.accessories.toSorted((a, b) => a.label.localeCompare(b.label));
    const accessory = inOrder.find(({ id }) => id === this.accessory) ?? inOrder[0];
    const named = (name: string) => trailers.find((each) => each.name === name);
    // What is fitted to the trailer that somebody asks about is what they mean.
    const trailer = named(this.trailer) ?? named(meant) ?? trailers[0];
    const line = all.plans.get(trailer?.name ?? '')?.line;
    const invented = [
      isOwn.accessories ? '' : 'accessories',
      isOwn.rates || (isOwn.accessories && all.rates.rates.length === 0) ? '' : 'rate book',
    ].filter((each) => each !== '');
    return html`<div class="finder">
        ${this.choice(
          'What is fitted',
          accessory?.id ?? '',
          inOrder.map(({ id, label }) => [id, label] as const),
          (value) => {
            this.accessory = value;
          },
        )}
        ${this.choice(
          'on which trailer',
          trailer?.name ?? '',
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
      ${
        invented.length === 0
          ? nothing
          : html`<p class="small soft">Invented: the ${invented.join(' and the ')}.</p>`
      }`;
  }
}

customElements.define('yard-accessories', YardAccessories);
