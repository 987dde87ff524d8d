import type { Wish } from '@tarebook/sweep';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';

/** What is wished of the trailers or vehicles has changed. */
export class WishesChanged extends CustomEvent<{ wishes: readonly Wish[] }> {
  constructor(wishes: readonly Wish[]) {
    super('wishes-changed', { detail: { wishes }, bubbles: true });
  }
}

type Cells = Readonly<Record<string, string>>;

type Offered = {
  readonly column: string;
  readonly label: string;
  readonly is: Wish['is'];
  readonly unit: string;
};

/** What people choose by; a column that nobody filled in is not offered. */
const offered: readonly Offered[] = [
  { column: 'lot', label: 'Where', is: '=', unit: '' },
  { column: 'body', label: 'Kind', is: '=', unit: '' },
  { column: 'group', label: 'Driven by', is: '=', unit: '' },
  { column: 'axles', label: 'Axles', is: '=', unit: '' },
  { column: 'length', label: 'No longer than', is: '<=', unit: 'ft' },
  { column: 'sleeps', label: 'Sleeps at least', is: '>=', unit: '' },
  { column: 'price', label: 'No more than', is: '<=', unit: '$' },
];

const keyOf = ({ column, is }: { column: string; is: string }): string => `${column}${is}`;

/** What is wished, for paper: `Axles 1; No longer than 14 ft`. */
export const wishesSaid = (wishes: readonly Wish[]): string =>
  wishes
    .map((wish) => {
      const { label, unit } = offered.find((each) => keyOf(each) === keyOf(wish)) ?? {
        ...{ label: wish.column, unit: '' },
      };
      return unit === '$' ? `${label} $${wish.value}` : `${label} ${wish.value} ${unit}`.trim();
    })
    .join('; ');

/** Which of the yard are asked about: by kind, length, sleeping places, price and where they stand. */
export class YardWishes extends PlainElement {
  static override properties = { entries: { attribute: false }, wishes: { attribute: false } };
  declare entries: readonly Cells[];
  declare wishes: readonly Wish[];

  private set({ column, is }: Offered, value: string): void {
    const others = this.wishes.filter((each) => keyOf(each) !== keyOf({ column, is }));
    const all = value.trim() === '' ? others : [...others, { column, is, value: value.trim() }];
    this.dispatchEvent(new WishesChanged(all));
  }

  private one(each: Offered) {
    const { column, label, is, unit } = each;
    const values = [...new Set(this.entries.map((cells) => cells[column] ?? ''))].filter(Boolean);
    if (values.length === 0) return nothing;
    const now = this.wishes.find((wish) => keyOf(wish) === keyOf(each))?.value ?? '';
    const typed = ({ target }: Event): void => {
      if (target instanceof HTMLSelectElement || target instanceof HTMLInputElement)
        this.set(each, target.value);
    };
    if (is === '=') {
      return html`<label>${label}<br /><select @change=${typed}>
        <option value="" ?selected=${now === ''}>any</option>
        ${values.toSorted().map((value) => html`<option value=${value} ?selected=${value === now}>${value}</option>`)}
      </select></label>`;
    }
    return html`<label>${label}${unit ? html` <small class="soft">${unit}</small>` : nothing}<br />
      <input inputmode="numeric" autocomplete="off" .value=${now} @change=${typed} /></label>`;
  }

  protected override render() {
    return html`<div class="finder yard-wishes">${offered.map((each) => this.one(each))}</div>
      ${
        this.wishes.length > 0
          ? html`<button @click=${() => this.dispatchEvent(new WishesChanged([]))}>Show all again</button>`
          : nothing
      }`;
  }
}

customElements.define('yard-wishes', YardWishes);
