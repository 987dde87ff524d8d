import type { Answer } from '@tarebook/rules/engine';
import { html } from 'lit';
import { cited } from '../elements/cited';
import { PlainElement } from '../elements/plain-element';

/** Every source that an answer stands on, once, and the rules' version and day. */
export class SourceList extends PlainElement {
  static override properties = { answer: { attribute: false } };
  declare answer: Answer;

  protected override render() {
    const { trace, topic, rules, asOf } = this.answer;
    const all = Object.values(trace.steps).flatMap(({ source }) =>
      source ? [`${source.class.replace('-', ' ')}: ${cited(source)}`] : [],
    );
    return html`<ul class="small soft">${[...new Set(all)].toSorted().map((each) => html`<li>${each}</li>`)}</ul>
      <p class="small soft">Rules ${topic} ${rules}, as of ${asOf}.</p>`;
  }
}

customElements.define('source-list', SourceList);
