import type { CaseDocument } from '@tarebook/casebook';
import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { countOf, kindsOfPeople, type Person, people } from '../state/people';

export class PersonStepped extends CustomEvent<{ kind: Person; by: 1 | -1 }> {
  constructor(kind: Person, by: 1 | -1) {
    super('person-stepped', { detail: { kind, by }, bubbles: true });
  }
}

/** Who rides along, by touch: one more of a kind, or one less. */
export class PeopleSteppers extends PlainElement {
  static override properties = { doc: { attribute: false } };
  declare doc: CaseDocument;

  private one(kind: Person) {
    const n = countOf(this.doc, kind);
    const { one, many } = people[kind];
    const step = (by: 1 | -1) => () => this.dispatchEvent(new PersonStepped(kind, by));
    const least = kind === 'adult' ? 1 : 0;
    return html`<span class="stepper">
      <button type="button" aria-label="One ${one} less" ?disabled=${n <= least} @click=${step(-1)}>−</button>
      <span><span class="num">${n}</span> ${n === 1 ? one : many}</span>
      <button type="button" aria-label="One ${one} more" @click=${step(1)}>+</button>
    </span>`;
  }

  protected override render() {
    return html`<div class="steppers" role="group" aria-label="People and animals">
      ${kindsOfPeople.map((kind) => this.one(kind))}
    </div>`;
  }
}

customElements.define('people-steppers', PeopleSteppers);
