import type { Ends } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { html, nothing, svg } from 'lit';
import { PlainElement } from '../elements/plain-element';
import './pounds.css';
import type { PoundsWay } from '../state/pounds';

const width = 640;
const high = 34;
const upper = 26;
const lower = 122;

/** A range is drawn to its heavier end, as everything here is that may be too much. */
const heavy = ({ hi }: Ends): number => hi;

/**
 * Where each pound goes. What rests on the ball is drawn twice, and joined: it is part of the trailer,
 * and of what the vehicle carries.
 *
 *     trailer   ├ ball ┼──────── its axles ────────┤
 *                ╲      ╲
 *     payload   ├─ aboard ─┼ ball ┤      │ limit
 */
export class PoundsWayDrawing extends PlainElement {
  static override properties = { way: { attribute: false }, system: { attribute: false } };
  declare way: PoundsWay;
  declare system: UnitSystem;

  private shown(ends: Ends): string {
    return show(ends, ends.unit, this.system);
  }

  /** The same in a sentence, which is what a reader of the screen is told. */
  private says(): string {
    const { aboard, tongue, trailer, axles, payload } = this.way;
    const used = { lo: aboard.lo + tongue.lo, hi: aboard.hi + tongue.hi, unit: aboard.unit };
    const of = payload ? ` of ${this.shown(payload)} it may carry` : '';
    return `Of the trailer’s ${this.shown(trailer)}, ${this.shown(axles)} rest on its own axles and ${this.shown(tongue)} on the ball. With ${this.shown(aboard)} of people and things the vehicle then carries ${this.shown(used)}${of}.`;
  }

  protected override render() {
    const { aboard, tongue, trailer, payload } = this.way;
    const carried = heavy(aboard) + heavy(tongue);
    const most = Math.max(heavy(trailer), carried, payload?.lo ?? 0);
    const x = scaleLinear([0, most], [0, width]);
    const [from, to] = [x(heavy(aboard)), x(carried)];
    const ball = x(heavy(tongue));
    const bar = (name: string, at: number, start: number, end: number) =>
      svg`<rect class=${name} x=${start} y=${at} width=${Math.max(1, end - start)} height=${high} />`;
    return html`<figure class="pounds">
      <svg viewBox="0 0 ${width} ${lower + high + 8}" role="img" aria-label=${this.says()}>
        ${bar('axles', upper, ball, x(heavy(trailer)))}${bar('ball', upper, 0, ball)}
        <path class="joined" d="M0 ${upper + high}H${ball}L${to} ${lower}H${from}Z" />
        ${bar('aboard', lower, 0, from)}${bar('ball', lower, from, to)}
        ${payload ? svg`<path class="line" d="M${x(payload.lo)} ${lower - 8}V${lower + high + 8}" />` : nothing}
      </svg>
      <dl aria-hidden="true">
        <div class="ball"><dt>On the ball</dt><dd class="num">${this.shown(tongue)}</dd></div>
        <div class="axles"><dt>On the trailer’s axles</dt><dd class="num">${this.shown(this.way.axles)}</dd></div>
        <div class="aboard"><dt>People and things</dt><dd class="num">${this.shown(aboard)}</dd></div>
        ${payload ? html`<div class="line"><dt>The vehicle may carry</dt><dd class="num">${this.shown(payload)}</dd></div>` : nothing}
      </dl>
      <figcaption class="small soft">${this.says()} Above the trailer, below what the vehicle carries, on one scale; the thick stroke is its limit.</figcaption>
    </figure>`;
  }
}

customElements.define('pounds-way', PoundsWayDrawing);
