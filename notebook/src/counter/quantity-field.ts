import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { live } from 'lit/directives/live.js';
import { PlainElement } from '../elements/plain-element';
import { aboutText, entryOf, firstUnit, textOf, unitsFor } from '../state/entry';
import { ValueTyped, WentOn } from './value-typed';

/** Nobody is told of a mistake in the middle of a number. */
const restsFor = 800;

/** Units that people give with a point, so that a keyboard without one would not do. */
const withPoint = new Set(['in', 'ft', 'V', 'A', 'gal', 'L', 'm', 'h', '%', 'kWh']);

/**
 * A quantity, with its unit in the field: a bare number takes it, a touch changes it. Below stand,
 * while one is in it, keys for what a telephone's number pad cannot write.
 *
 *     [ 3,900      | lb ]
 *       about   between   don’t know
 */
export class QuantityField extends PlainElement {
  static override properties = {
    text: { attribute: false },
    unit: { attribute: false },
    label: { attribute: false },
    field: { attribute: false },
    fact: { attribute: false },
    system: { attribute: false },
    refuses: { attribute: false },
    typed: { state: true },
    unitNow: { state: true },
    told: { state: true },
  };
  /** As the case says it. */
  declare text: string;
  /** Of the fact or column; '' for a count. */
  declare unit: string;
  declare label: string;
  /** The id of the field, for its label. */
  declare field: string;
  /** What the field is of, for whoever looks for it. */
  declare fact: string;
  declare system: UnitSystem;
  /** What is wrong with a value, in a sentence. */
  declare refuses: (text: string) => string | undefined;
  declare typed: string;
  declare unitNow: string;
  /** Whether a mistake in it is told yet. */
  declare told: boolean;
  private sent: string | undefined;
  private refusal: string | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // What was typed of one fact is never left standing for another, however late the case follows.
    if (changed.has('fact') || (changed.has('text') && this.text !== this.sent)) {
      const entry = entryOf(this.text, this.unit);
      this.typed = entry.typed;
      this.unitNow = entry.typed === '' ? firstUnit(this.unit, this.system) : entry.unit;
      this.refusal = this.refuses(this.text);
      this.told = true;
      this.sent = undefined;
    }
  }

  private get input(): HTMLInputElement | null {
    return this.querySelector('input');
  }

  private send(typed: string, unit: string): void {
    const text = textOf({ typed, unit });
    this.typed = typed;
    // A unit that was typed stands beside the field from now on.
    this.unitNow = entryOf(text, unit).unit;
    this.refusal = this.refuses(text);
    this.sent = text;
    this.told = false;
    clearTimeout(this.timer);
    if (this.refusal !== undefined) this.timer = setTimeout(this.tell, restsFor);
    this.dispatchEvent(new ValueTyped(text));
  }

  private tell = (): void => {
    clearTimeout(this.timer);
    this.told = true;
  };

  /** Whoever leaves the field leaves its unit beside it. */
  private leave = (): void => {
    this.tell();
    this.typed = entryOf(textOf({ typed: this.typed, unit: this.unitNow }), this.unitNow).typed;
  };

  private turnUnit = (): void => {
    const all = unitsFor(this.unit, this.unitNow);
    const inOrder = unitsFor(this.unit, this.unit);
    const next = inOrder[(inOrder.indexOf(this.unitNow) + 1) % inOrder.length] ?? all[1];
    if (next === undefined) return;
    const { typed } = entryOf(textOf({ typed: this.typed, unit: this.unitNow }), this.unitNow);
    if (typed === '') this.unitNow = next;
    else this.send(typed, next);
  };

  private pressed = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    if (this.refusal === undefined) this.dispatchEvent(new WentOn());
    else {
      this.tell();
      this.input?.select();
    }
  };

  /** A key below the field leaves one in it, at the end. */
  private key(write: (typed: string) => string) {
    return (event: Event): void => {
      event.preventDefault();
      this.send(write(this.typed), this.unitNow);
      void this.updateComplete.then(() => {
        const { input } = this;
        input?.focus();
        input?.setSelectionRange(input.value.length, input.value.length);
      });
    };
  }

  private keys() {
    const hold = (event: Event): void => event.preventDefault();
    const know = this.key(() => '');
    return html`<span class="keys noprint" @pointerdown=${hold}>
      <button type="button" tabindex="-1" @click=${this.key(aboutText)}>about</button>
      <button type="button" tabindex="-1" @click=${this.key((typed) => (typed.includes('–') ? typed : `${typed.trim()}–`))}>between</button>
      <button type="button" tabindex="-1" @click=${(event: Event) => {
        know(event);
        this.dispatchEvent(new WentOn());
      }}>don’t know</button>
    </span>`;
  }

  private unitKey() {
    if (this.unit === '') return nothing;
    const all = unitsFor(this.unit, this.unit);
    if (all.length < 2) return html`<span class="unit-key">${this.unitNow}</span>`;
    return html`<button type="button" class="unit-key" @click=${this.turnUnit}
      aria-label="${this.label}: unit ${this.unitNow}; another">${this.unitNow}</button>`;
  }

  protected override render() {
    const { field, fact, refusal, told, unitNow } = this;
    const wrong = told && refusal !== undefined;
    return html`<span class="field" ?data-wrong=${wrong}>
        <input
          id=${field}
          data-entry
          data-fact=${fact}
          inputmode=${unitNow === '' || !withPoint.has(unitNow) ? 'numeric' : 'decimal'}
          enterkeyhint="next"
          autocomplete="off"
          spellcheck="false"
          placeholder="not told"
          aria-label=${this.label || nothing}
          aria-invalid=${wrong ? 'true' : 'false'}
          aria-describedby=${wrong ? `wrong-${field}` : nothing}
          .value=${live(this.typed)}
          @input=${(event: Event) => {
            if (event.target instanceof HTMLInputElement) this.send(event.target.value, unitNow);
          }}
          @keydown=${this.pressed}
          @blur=${this.leave}
        />${this.unitKey()}${this.keys()}
      </span>
      ${wrong ? html`<span class="error" id="wrong-${field}">${refusal}</span>` : nothing}`;
  }
}

customElements.define('quantity-field', QuantityField);
