import type { Parameter, Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { type House, keepHouse, keptHouse, noHouse } from '../state/house';
import {
  allowedHouse,
  rangeShown,
  readHouseNumber,
  whyRefused,
  withNumber,
} from '../state/house-numbers';
import { whyNotKept } from '../state/shelf';
import { numberIn } from './names';
import { sourceShown } from './names-shown';

/** The numbers of the trade with the day each holds from; house choices can be moved within range. */
export class HouseForm extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    system: { attribute: false },
    house: { state: true },
    wrong: { state: true },
    told: { state: true },
    notice: { state: true },
  };
  declare topic: Topic;
  declare system: UnitSystem;
  declare house: House;
  /** What is wrong beside a field, by parameter. */
  declare wrong: Readonly<Record<string, string>>;
  declare told: string;
  declare notice: string;

  constructor() {
    super();
    this.wrong = {};
    this.told = '';
    this.notice = '';
    this.house = noHouse('');
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.house = noHouse(this.topic.id);
    keptHouse(this.topic.id).then(
      (kept) => {
        const { house, refused } = allowedHouse(this.topic, kept ?? this.house);
        this.house = house;
        if (refused.length > 0) {
          this.notice = `Not used any more, as the rules no longer allow it: ${refused.join(', ')}.`;
        }
      },
      (problem: unknown) => {
        this.notice = whyNotKept(problem);
      },
    );
  }

  private go(house: House, told: string): void {
    this.house = house;
    keepHouse(house).then(
      () => {
        this.told = told;
        this.notice = '';
      },
      (problem: unknown) => {
        this.told = '';
        this.notice = whyNotKept(problem);
      },
    );
  }

  private typedName(event: Event): void {
    if (event.target instanceof HTMLInputElement) {
      this.go({ ...this.house, name: event.target.value.trim().slice(0, 80) }, 'Kept.');
    }
  }

  private use(event: Event, id: string, { label, unit }: Parameter): void {
    event.preventDefault();
    const form = event.target;
    if (!(form instanceof HTMLFormElement)) return;
    const [value, reason] = [...form.querySelectorAll('input')];
    const read = readHouseNumber(this.topic, id, value?.value ?? '');
    const why = reason?.value.trim() ?? '';
    const number = typeof read === 'number' ? { value: read, unit, reason: why } : undefined;
    const house = withNumber(this.house, id, number);
    const wrong =
      typeof read === 'string'
        ? read
        : why === ''
          ? 'No reason is given; write in a few words why this house does it so.'
          : house.name === ''
            ? 'Nobody’s name stands over these numbers; write above whose they are.'
            : (whyRefused(this.topic, house, id) ?? '');
    const { [id]: _, ...others } = this.wrong;
    this.wrong = wrong === '' ? others : { ...others, [id]: wrong };
    if (wrong === '' && number) {
      this.go(house, `${label} is now ${numberIn(number.value, unit)} in this house.`);
    } else if (typeof read === 'string') value?.focus();
    else if (why === '') reason?.focus();
    else this.querySelector<HTMLElement>('.whose')?.focus();
  }

  private own(id: string, parameter: Parameter) {
    const { label, unit, values } = parameter;
    const chosen = this.house.parameters[id];
    const wrong = this.wrong[id];
    const [first] = values;
    const back = () =>
      this.go(withNumber(this.house, id, undefined), `${label} is as the rules have it again.`);
    return html`<form class="own" novalidate @submit=${(event: Event) => this.use(event, id, parameter)}>
      <h3>${label}</h3>
      <p class="small soft">The rules: <span class="num">${first ? numberIn(first.value, unit) : ''}</span>. A dealer may choose <span class="num">${rangeShown(this.topic, id)}</span>.</p>
      <p>
        <label>In this house<br /><input class="num" aria-label="${label}: in this house" autocomplete="off"
          aria-invalid=${wrong ? 'true' : 'false'} aria-describedby=${`own-${id}`}
          .value=${chosen ? numberIn(chosen.value, chosen.unit) : ''} /></label>
        <label>Because<br /><input aria-label="${label}: because" autocomplete="off" maxlength="200" .value=${chosen?.reason ?? ''} /></label>
        <button aria-label="${label}: keep">Keep</button>
        ${chosen ? html`<button type="button" @click=${back} aria-label="${label}: as the rules have it">As the rules have it</button>` : nothing}
      </p>
      <p class="error" role="alert" id=${`own-${id}`}>${wrong ?? ''}</p>
    </form>`;
  }

  private numbers() {
    return html`<table>
      <thead><tr><th scope="col">Number</th><th scope="col">Value, since</th><th scope="col">By which source</th></tr></thead>
      <tbody>${Object.values(this.topic.parameters).flatMap(({ label, unit, values, source }) =>
        values.map(
          ({ from, until, value }) => html`<tr>
            <th scope="row">${label}</th>
            <td class="num">${show({ lo: value, hi: value }, unit, this.system)}<br /><span class="small soft">${from}${until ? html` to ${until}` : nothing}</span></td>
            <td>${sourceShown(source)}</td></tr>`,
        ),
      )}</tbody>
    </table>`;
  }

  protected override render() {
    const { topic, house, told, notice } = this;
    const movable = Object.entries(topic.parameters).filter(([, { range }]) => range);
    return html`
      <h2>Numbers of the trade</h2>
      ${this.numbers()}
      ${
        movable.length === 0
          ? nothing
          : html`<h2>This dealer’s own numbers</h2>
            <p>Some numbers are a house’s to choose, within a range. A maker’s rating is never among them.</p>
            ${notice ? html`<p class="notice" role="alert">${notice}</p>` : nothing}
            <p role="status">${told}</p>
            <p><label>Whose numbers these are<br /><input class="whose" autocomplete="off" maxlength="80" .value=${house.name} @change=${this.typedName} /></label></p>
            ${movable.map(([id, parameter]) => this.own(id, parameter))}`
      }
    `;
  }
}

customElements.define('house-form', HouseForm);
