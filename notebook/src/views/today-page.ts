import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import '../today/today.css';
import '../today/one-line';
import { idle } from '../elements/idle';
import { PlainElement } from '../elements/plain-element';

/** The first page: what somebody just said, and what is open. */
export class TodayPage extends PlainElement {
  static override properties = { system: { attribute: false } };
  declare system: UnitSystem;

  override connectedCallback(): void {
    super.connectedCallback();
    // What waits, and the cases that are near, come once the line can be typed in.
    idle()
      .then(() =>
        Promise.all([
          import('../today/questions-at-hand'),
          import('../today/open-calls'),
          import('../today/near-cases'),
        ]),
      )
      .catch(() => undefined);
  }

  protected override render() {
    return html`<h1 class="today-head">Today</h1>
      <one-line .system=${this.system}></one-line>
      <div class="of-today">
        <questions-at-hand></questions-at-hand>
        <open-calls></open-calls>
      </div>`;
  }
}

customElements.define('today-page', TodayPage);
