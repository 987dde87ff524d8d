import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { type CaseView, isAnswered } from '../sections/case-view';
import './fact-picker';
import { folds, thisCase } from './folds';
import './load-keys';
import { toYard } from './to-yard';

/** All that stands behind a ticket, a line each; with the named loads and the choice of one fact more it comes once the verdict is drawn. */
export class CaseBehind extends PlainElement {
  static override properties = { view: { attribute: false } };
  declare view: CaseView;

  protected override render() {
    const { view } = this;
    return html`${toYard(view.topic, view.doc)}${isAnswered(view) ? folds(view) : ''}${thisCase(view)}`;
  }
}

customElements.define('case-behind', CaseBehind);
