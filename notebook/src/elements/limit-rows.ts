import { againstOf, type Ends, type LimitAnswer } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { barOf } from '../state/bar';
import { figure, leftOf } from './figures';
import { limitBar } from './limit-bar';
import { mark, stateWords } from './marks';
import { PlainElement } from './plain-element';

/** A limit, what stands on it empty, and how it stood in the case as filed. */
export type LimitRow = {
  readonly limit: LimitAnswer;
  /** In the unit of the limit; absent: nothing that cannot be taken off. */
  readonly empty?: Ends;
  /** As filed; absent where it stands as it stood. */
  readonly before?: LimitAnswer;
};

/** How close to each limit, the fullest first; those nobody asked in one line below. */
export class LimitRows extends PlainElement {
  static override properties = { rows: { attribute: false }, system: { attribute: false } };
  declare rows: readonly LimitRow[];
  declare system: UnitSystem;

  private row({ limit, before, empty }: LimitRow) {
    return html`
      <li class="level-${limit.state}">
        <span class="word-of">${mark(limit.state)}<span class="hidden">${stateWords[limit.state]}: </span></span>
        <span class="name">${limit.label}</span>
        ${limitBar(barOf(limit, empty))}
        <span class="left">${leftOf(limit, this.system)}</span>
        <span class="of">
          ${againstOf(limit, this.system).says}${
            empty ? html`, of which empty ${figure(empty, this.system)}` : nothing
          }
          ${before ? html`<span class="moved">as filed: ${leftOf(before, this.system)}</span>` : nothing}
        </span>
      </li>
    `;
  }

  protected override render() {
    const order = ['stop', 'unknown', 'if', 'care', 'ok'];
    const asked = this.rows
      .filter(({ limit }) => limit.state !== 'not-asked')
      .toSorted(
        ({ limit: a }, { limit: b }) =>
          order.indexOf(a.state) - order.indexOf(b.state) || b.roomUsed.hi - a.roomUsed.hi || 0,
      );
    const silent = this.rows.filter(({ limit }) => limit.state === 'not-asked');
    return html`
      <ul class="limits">${asked.map((row) => this.row(row))}</ul>
      ${
        silent.length === 0
          ? nothing
          : html`<p class="soft small">
            Not asked, by what was told: ${silent.map(({ limit }) => limit.label.toLowerCase()).join(', ')}.
          </p>`
      }
    `;
  }
}

customElements.define('limit-rows', LimitRows);
