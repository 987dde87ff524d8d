import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import '../counter/quantity-field';
import type { ValueTyped } from '../counter/value-typed';
import { PlainElement } from '../elements/plain-element';
import type { Entry } from '../state/catalogue';
import { kindsOfPeople, type Person, people } from '../state/people';
import {
  type Figure,
  figuresOf,
  isApart,
  nothingTold,
  packedAsTold,
  refusedWeight,
  type Told,
  type Way,
} from './told';

/** Something else was told. */
export class ToldChanged extends CustomEvent<{ told: Told }> {
  constructor(told: Told) {
    super('told-changed', { detail: { told }, bubbles: true });
  }
}

const chosenIn = ({ target }: Event): string =>
  target instanceof HTMLSelectElement ? target.value : '';

const waysSaid: Readonly<Record<Way, string>> = {
  trailers: 'Which trailers?',
  vehicles: 'What can pull it?',
};

/** What the counter was told: of the vehicle or the trailer, who rides along, what is packed. */
export class YardTold extends PlainElement {
  static override properties = {
    told: { attribute: false },
    system: { attribute: false },
    entries: { attribute: false },
    loads: { attribute: false },
    answer: { attribute: false },
  };
  declare told: Told;
  declare system: UnitSystem;
  /** Of the side that is told: what may be chosen in place of figures. */
  declare entries: readonly Entry[];
  /** What may be packed, by name. */
  declare loads: readonly string[];
  /** What comes of it, on a narrow screen: below what nearly everybody tells, above what few do. */
  declare answer: TemplateResult | undefined;

  private tell(change: Partial<Told>): void {
    this.dispatchEvent(new ToldChanged({ ...this.told, ...change }));
  }

  private way(way: Way) {
    const turn = (): void => {
      this.dispatchEvent(
        new ToldChanged({
          ...nothingTold(way),
          aboard: this.told.aboard,
          load: this.told.load,
          riding: this.told.riding,
          packed: this.told.packed,
        }),
      );
    };
    return html`<label><input type="radio" name="yard-way" .checked=${this.told.way === way} @change=${turn} />
      <span>${waysSaid[way]}</span></label>`;
  }

  private chosen(): TemplateResult {
    const { told, entries } = this;
    const isVehicle = told.way === 'trailers';
    const label = isVehicle ? 'What they drive' : 'The trailer';
    const none = isVehicle ? 'not in the catalogue: figures alone' : 'another: figures alone';
    const bodies = [...new Set(entries.map(({ body }) => body))];
    return html`<label class="wide-field">${label}<br />
      <select @change=${(event: Event) => this.tell({ chosen: chosenIn(event) })}>
        <option value="" ?selected=${told.chosen === ''}>${none}</option>
        ${bodies.map(
          (body) =>
            html`<optgroup label=${body || 'others'}>${entries
              .filter((entry) => entry.body === body)
              .map(
                ({ name }) =>
                  html`<option value=${name} ?selected=${name === told.chosen}>${name}</option>`,
              )}</optgroup>`,
        )}
      </select></label>`;
  }

  private figure({ id, label, where }: Figure) {
    const { told, system, entries } = this;
    const entry = entries.find(({ name }) => name === told.chosen);
    const cell = entry?.cells[id.slice(id.indexOf('.') + 1)] ?? '';
    const isOther = isApart(told.figures[id], cell);
    const known = /^\d+$/.test(cell) ? `${Number(cell).toLocaleString('en-US')} lb` : cell;
    return html`<div class="fact">
      <label class="named" for="yard-${id}">${label}<span class="from">${
        known === '' ? where : `${known} by the catalogue; ${where} counts`
      }</span></label>
      <quantity-field .field=${`yard-${id}`} .fact=${id} .text=${told.figures[id] ?? 'unknown'}
        .unit=${'lb'} .label=${label} .system=${system} .refuses=${refusedWeight}
        @value-typed=${({ detail }: ValueTyped) =>
          this.tell({ figures: { ...told.figures, [id]: detail.text } })}></quantity-field>
      ${
        isOther
          ? html`<p class="error">The catalogue says ${known} for the ${told.chosen}; what is typed here counts. Is it of this very one?</p>`
          : nothing
      }
    </div>`;
  }

  private stepper(kind: Person) {
    const { aboard } = this.told;
    const n = aboard[kind];
    const { one, many, weight } = people[kind];
    const least = kind === 'adult' ? 1 : 0;
    // Whoever counts anew has them at the usual weights.
    const step = (by: number) => () =>
      this.tell({ aboard: { ...aboard, [kind]: n + by }, riding: undefined });
    return html`<span class="stepper">
      <button type="button" aria-label="One ${one} less" ?disabled=${n <= least} @click=${step(-1)}>−</button>
      <span title="${weight} each"><span class="num">${n}</span> ${n === 1 ? one : many}</span>
      <button type="button" aria-label="One ${one} more" @click=${step(1)}>+</button>
    </span>`;
  }

  private load() {
    const { told, loads } = this;
    const choice = (value: string, words: string) =>
      html`<button type="button" aria-pressed=${told.load === value ? 'true' : 'false'}
        @click=${() => this.tell({ load: value })}>${words}</button>`;
    return loads.length === 0
      ? nothing
      : html`<div class="loads" role="group" aria-label="Packed in the trailer">
          ${choice('', 'nothing packed')}${told.packed ? choice(packedAsTold, packedAsTold) : nothing}${loads.map((name) => choice(name, name))}</div>`;
  }

  /** What came along from a case and has no field here. */
  private more() {
    const { more } = this.told;
    return more
      ? html`<p class="small">Also from the case: ${more.said.join('; ')}.
          <button type="button" class="quiet" @click=${() => this.tell({ more: undefined })}>Leave this out</button></p>`
      : nothing;
  }

  protected override render() {
    const { told, answer } = this;
    const [first, ...others] = figuresOf[told.way].map((figure) => this.figure(figure));
    const aboard = html`<div class="steppers" role="group" aria-label="People and animals">${kindsOfPeople.map((kind) => this.stepper(kind))}</div>`;
    return html`<form class="yard-told" @submit=${(event: Event) => event.preventDefault()}>
      <div class="field choice ways" role="radiogroup" aria-label="What is asked">${this.way('trailers')}${this.way('vehicles')}</div>
      ${this.chosen()}
      ${first}
      ${answer ? html`${aboard}${answer}${others}${this.more()}` : html`${others}${this.more()}${aboard}`}
      ${this.load()}
    </form>`;
  }
}

customElements.define('yard-told', YardTold);
