import { againstOf, type Ends, type LimitAnswer } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, svg } from 'lit';
import { figure, leftOf } from './figures';
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

const width = 400;
/** A bar ends a tenth beyond its limit; further over looks the same and is told in figures. */
const beyond = 1.1;
const along = (share: number): number => (Math.min(Math.max(share, 0), beyond) / beyond) * width;

/** Where the margin begins, as a share of the room between empty and the limit. */
function notchOf({ limit: { careAt, limit }, empty }: LimitRow): number | undefined {
  if (!careAt || !Number.isFinite(limit.hi) || !Number.isFinite(careAt.hi)) return undefined;
  const floor = empty?.hi ?? 0;
  if (!Number.isFinite(floor) || limit.hi <= floor) return undefined;
  return (careAt.hi - floor) / (limit.hi - floor);
}

/** One limit as a bar: used, the margin's notch, the limit; a range is drawn as one. */
function rail(row: LimitRow) {
  const { lo, hi } = row.limit.roomUsed;
  const known = Number.isFinite(lo) && Number.isFinite(hi);
  const [from, to] = known ? [along(lo), along(hi)] : [0, width];
  const notch = notchOf(row);
  const at = notch === undefined ? undefined : along(notch);
  return svg`
    <svg class="rail" viewBox="0 0 ${width} 18" preserveAspectRatio="none" aria-hidden="true">
      <rect class="ground" x="0" y="0" width=${along(1)} height="18" />
      ${known ? svg`<rect class="fill" x="0" y="2" width=${from} height="14" />` : nothing}
      ${known && to === from ? nothing : svg`<rect class="range" x=${from} y="3" width=${Math.max(2, to - from)} height="12" />`}
      ${at === undefined ? nothing : svg`<line class="notch-ground" x1=${at} x2=${at} y1="0" y2="18" /><line class="notch" x1=${at} x2=${at} y1="0" y2="18" />`}
      <line class="end" x1=${along(1)} x2=${along(1)} y1="0" y2="18" />
    </svg>`;
}

/** How close to each limit, the fullest first; those nobody asked in one line below. */
export class LimitRows extends PlainElement {
  static override properties = { rows: { attribute: false }, system: { attribute: false } };
  declare rows: readonly LimitRow[];
  declare system: UnitSystem;

  private row(row: LimitRow) {
    const { limit, before, empty } = row;
    return html`
      <li class="level-${limit.state}">
        <span>${limit.label}</span>
        ${rail(row)}
        <span class="left">${leftOf(limit, this.system)}</span>
        <span class="of">
          ${againstOf(limit, this.system).says}${
            empty ? html`, of which empty ${figure(empty, this.system)}` : nothing
          }
          ${before ? html`<span class="moved">as filed: ${leftOf(before, this.system)}</span>` : nothing}
        </span>
        <span class="state word-of">${mark(limit.state)}${stateWords[limit.state]}</span>
      </li>
    `;
  }

  protected override render() {
    const order = ['stop', 'unknown', 'care', 'ok'];
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
            Not asked, for want of a rating: ${silent.map(({ limit }) => limit.label.toLowerCase()).join(', ')}.
          </p>`
      }
    `;
  }
}

customElements.define('limit-rows', LimitRows);
