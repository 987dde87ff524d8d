import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import '../today/today.css';
import '../today/one-line';
import '../today/open-calls';
import { PlainElement } from '../elements/plain-element';

/** The first page: what somebody just said, and what is open. */
export class TodayPage extends PlainElement {
  static override properties = { system: { attribute: false } };
  declare system: UnitSystem;

  protected override render() {
    return html`<h1 class="today-head">Today</h1>
      <one-line .system=${this.system}></one-line>
      <div class="of-today">
        <!-- What is urgent among the questions that came, and the next round, stand here, before the calls. -->
        <open-calls></open-calls>
      </div>`;
  }
}

customElements.define('today-page', TodayPage);
