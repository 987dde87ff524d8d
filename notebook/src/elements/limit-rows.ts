import type { LimitAnswer } from '@tarebook/rules/engine';
import { show, showParts, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, svg } from 'lit';
import { mark, stateWords } from './marks';
import { PlainElement } from './plain-element';

const width = 400;

/** What a rail shows at the most: a tenth beyond the limit. */
const along = (share: number): number => (Math.min(1.1, Math.max(0, share)) / 1.1) * width;

/** One limit as a rail: used, the margin's notch, the limit; a range is drawn as one. */
function rail({ share, careAt, limit }: LimitAnswer) {
  const known = Number.isFinite(share.hi) && Number.isFinite(share.lo);
  const notch =
    careAt && limit.hi > 0 && Number.isFinite(limit.hi) ? along(careAt.hi / limit.hi) : undefined;
  const [from, to] = known ? [along(share.lo), along(share.hi)] : [0, width];
  return svg`
    <svg class="rail" viewBox="0 0 ${width} 18" preserveAspectRatio="none" aria-hidden="true">
      <rect class="ground" x="0" y="0" width=${along(1)} height="18" />
      ${known ? svg`<rect class="fill" x="0" y="2" width=${from} height="14" />` : nothing}
      ${known && to === from ? nothing : svg`<rect class="range" x=${from} y="3" width=${Math.max(1, to - from)} height="12" />`}
      ${notch === undefined ? nothing : svg`<line class="notch" x1=${notch} x2=${notch} y1="0" y2="18" />`}
      <line class="end" x1=${along(1)} x2=${along(1)} y1="0" y2="18" />
    </svg>`;
}

/** How close to each limit, the fullest first; those nobody asked in one line below. */
export class LimitRows extends PlainElement {
  static override properties = { limits: { attribute: false }, system: { attribute: false } };
  declare limits: readonly LimitAnswer[];
  declare system: UnitSystem;

  private left({ headroom, state }: LimitAnswer) {
    const over = headroom.hi < 0;
    const ends = over ? { lo: -headroom.hi, hi: -headroom.lo } : headroom;
    if (!Number.isFinite(ends.lo) || !Number.isFinite(ends.hi)) return stateWords[state];
    const { number, unit } = showParts(ends, headroom.unit, this.system);
    return html`<span class="num">${number}</span><span class="unit">${unit}</span> ${over ? 'over' : 'left'}`;
  }

  private row(limit: LimitAnswer) {
    const used = show(limit.used, limit.used.unit, this.system);
    const rating = show(limit.limit, limit.limit.unit, this.system);
    return html`
      <li class="level-${limit.state}">
        <span>${limit.label}</span>
        ${rail(limit)}
        <span class="left">${this.left(limit)}</span>
        <span class="of">${used} of ${rating}</span>
        <span class="state word-of">${mark(limit.state)}${stateWords[limit.state]}</span>
      </li>
    `;
  }

  protected override render() {
    const order = ['stop', 'unknown', 'care', 'ok'];
    const asked = this.limits
      .filter(({ state }) => state !== 'not-asked')
      .toSorted(
        (a, b) => order.indexOf(a.state) - order.indexOf(b.state) || b.roomUsed.hi - a.roomUsed.hi,
      );
    const silent = this.limits.filter(({ state }) => state === 'not-asked');
    return html`
      <ul class="limits">${asked.map((limit) => this.row(limit))}</ul>
      ${
        silent.length === 0
          ? nothing
          : html`<p class="soft small">
            Not asked, for want of a rating: ${silent.map(({ label }) => label.toLowerCase()).join(', ')}.
          </p>`
      }
    `;
  }
}

customElements.define('limit-rows', LimitRows);
