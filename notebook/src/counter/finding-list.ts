import { type Answer, gravestFirst } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';

/** The way to the topic that answers more of it. */
const more = (see: Answer['findings'][number]['see']) =>
  see === undefined ? '' : html` <a href="#/rules/${see.topic}">${see.says}</a>`;

/** What is said beside the limits, the gravest first; what is in order is not repeated. */
export class FindingList extends PlainElement {
  static override properties = { answer: { attribute: false }, system: { attribute: false } };
  declare answer: Answer;
  declare system: UnitSystem;

  protected override render() {
    return html`<ul class="findings">
      ${gravestFirst(this.answer.findings).map(
        ({ label, level, says, see }) =>
          html`<li class="level-${level}"><span class="word-of">${mark(level)}${label}</span> ${says}${more(see)}</li>`,
      )}
    </ul>`;
  }
}

customElements.define('finding-list', FindingList);
