import type { Fact } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { ValueTyped, WentOn } from './value-typed';

/** So many can stand side by side to be touched; more are chosen from a list. */
const mostBeside = 3;

/** What may be chosen of a fact; none where it is typed. */
export const optionsOf = (fact: Fact): readonly string[] =>
  fact.kind === 'choice' ? fact.options : fact.kind === 'yes-no' ? ['yes', 'no'] : [];

/** A choice: a few options side by side, one touch each; many in a list. */
export class ChoiceField extends PlainElement {
  static override properties = {
    text: { attribute: false },
    options: { attribute: false },
    label: { attribute: false },
    field: { attribute: false },
    fact: { attribute: false },
  };
  /** As the case says it. */
  declare text: string;
  declare options: readonly string[];
  declare label: string;
  declare field: string;
  declare fact: string;

  private send(text: string): void {
    this.dispatchEvent(new ValueTyped(text));
  }

  private pressed = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    this.dispatchEvent(new WentOn());
  };

  private radio(option: string, words: string, title?: string) {
    const { field, fact, text } = this;
    return html`<label title=${title ?? nothing}>
      <input type="radio" name=${field} data-entry data-fact=${fact} value=${option}
        .checked=${text === option} @change=${() => this.send(option)} @keydown=${this.pressed} />
      <span>${words}${title ? html`<span class="hidden">${title}</span>` : nothing}</span>
    </label>`;
  }

  private list(options: readonly string[]) {
    const { field, fact, text, label } = this;
    const isStrange = text !== 'unknown' && !options.includes(text);
    return html`<select id=${field} data-entry data-fact=${fact} aria-label=${label}
        aria-invalid=${isStrange && text !== '' ? 'true' : 'false'}
        @keydown=${this.pressed}
        @change=${(event: Event) => {
          if (event.target instanceof HTMLSelectElement) this.send(event.target.value);
        }}>
        ${isStrange ? html`<option value=${text} selected>${text === '' ? 'choose …' : text}</option>` : nothing}
        <option value="unknown" ?selected=${text === 'unknown'}>not told</option>
        ${options.map((each) => html`<option value=${each} ?selected=${each === text}>${each}</option>`)}
      </select>`;
  }

  protected override render() {
    const { options, text, label } = this;
    const beside = options.length < mostBeside && (text === 'unknown' || options.includes(text));
    if (!beside) return this.list(options);
    return html`<span class="field choice" role="radiogroup" aria-label=${label}>
      ${options.map((each) => this.radio(each, each))}${this.radio('unknown', '?', 'not told')}
    </span>`;
  }
}

customElements.define('choice-field', ChoiceField);
