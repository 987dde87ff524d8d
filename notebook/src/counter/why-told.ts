import { type Answer, type Topic, why } from '@tarebook/rules/engine';
import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';

/** Why the verdict is what it is, from the working. */
export class WhyTold extends PlainElement {
  static override properties = { topic: { attribute: false }, answer: { attribute: false } };
  declare topic: Topic;
  declare answer: Answer;

  protected override render() {
    return html`<p class="why">${why(this.topic, this.answer, 'verdict', 'full')}</p>`;
  }
}

customElements.define('why-told', WhyTold);
