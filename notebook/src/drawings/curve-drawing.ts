import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { html, nothing, svg } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { axisTitle, bottomAxis, type Frame, leftAxis, shownIn } from './axes';
import { curveSays, extents } from './curve-words';
import type { CurveFigure } from './figure';
import { MeasuredWidth } from './measured-width';

/** Lines over x, where to stop, and where this case stands: a point, or a band for a range. */
export class CurveDrawing extends PlainElement {
  static override properties = { figure: { attribute: false }, system: { attribute: false } };
  declare figure: CurveFigure;
  declare system: UnitSystem;
  private readonly measured = new MeasuredWidth(this, 720);

  private scales(frame: Frame) {
    const { figure, system } = this;
    const [toX, toY] = [shownIn(figure.x, system), shownIn(figure.y, system)];
    const { x, y } = extents(figure);
    const across = scaleLinear()
      .domain([toX(x.lo), toX(x.hi)])
      .range([frame.left, frame.right]);
    const up = scaleLinear()
      .domain([toY(y.lo), toY(y.hi)])
      .nice(4)
      .range([frame.bottom, frame.top]);
    return {
      across,
      up,
      atX: (value: number) => across(toX(value)),
      atY: (value: number) => up(toY(value)),
    };
  }

  private stop(frame: Frame, atX: (v: number) => number, atY: (v: number) => number) {
    const { stop } = this.figure;
    if (!stop) return nothing;
    if (stop.along === 'y') {
      const y = atY(stop.at);
      return svg`<line class="stopping" x1=${frame.left} x2=${frame.right} y1=${y} y2=${y} />
        <text class="stopping end" x=${frame.right} y=${y - 5}>${stop.label}</text>`;
    }
    const x = atX(stop.at);
    return svg`<line class="stopping" x1=${x} x2=${x} y1=${frame.top} y2=${frame.bottom} />
      <text class="stopping ${x > (frame.left + frame.right) / 2 ? 'end' : 'start'}" x=${x} y=${frame.top - 4}>${stop.label}</text>`;
  }

  private here(frame: Frame, atX: (v: number) => number, atY: (v: number) => number) {
    const { here } = this.figure;
    if (!here || !Number.isFinite(here.x.lo) || !Number.isFinite(here.x.hi)) return nothing;
    const [from, to] = [atX(here.x.lo), atX(here.x.hi)];
    const side = from > (frame.left + frame.right) / 2 ? 'end' : 'start';
    const y = here.y === undefined ? frame.bottom : atY(here.y);
    const mark =
      from === to
        ? svg`<line class="leader" x1=${from} x2=${from} y1=${y} y2=${frame.bottom} /><circle class="here" cx=${from} cy=${y} r="5" />`
        : svg`<rect class="band" x=${Math.min(from, to)} y=${frame.top} width=${Math.abs(to - from)} height=${frame.bottom - frame.top} />`;
    return svg`${mark}<text class=${side} x=${from + (side === 'end' ? -8 : 8)} y=${Math.max(frame.top + 14, y - 10)}>${here.label}</text>`;
  }

  protected override render() {
    const { figure, system } = this;
    const width = this.measured.width;
    const frame: Frame = { left: 48, right: width - 12, top: 34, bottom: 224 };
    const { across, up, atX, atY } = this.scales(frame);
    const path = line<readonly [number, number]>(
      ([x]) => atX(x),
      ([, y]) => atY(y),
    );
    return html`<figure class="drawing curve">
      <svg viewBox="0 0 ${width} 270" role="img" aria-label=${curveSays(figure, system)}>
        ${leftAxis(up, frame, axisTitle(figure.y, system))}
        ${bottomAxis(across, frame, axisTitle(figure.x, system))}
        ${this.here(frame, atX, atY)}
        ${figure.lines.map(({ points }, i) => svg`<path class="line line-${i}" d=${path([...points]) ?? ''} />`)}
        ${this.stop(frame, atX, atY)}
      </svg>
      <figcaption class="small soft">
        ${figure.title}.
        ${figure.lines.length > 1 ? figure.lines.map(({ label }, i) => html`<span class="key key-${i}">${label}</span> `) : nothing}
      </figcaption>
      <details class="small">
        <summary>The same as a table</summary>
        ${figure.lines.map(
          ({ label, points }) => html`<table>
            <caption>${label}</caption>
            <thead><tr><th scope="col">${figure.x.label}</th><th scope="col">${figure.y.label}</th></tr></thead>
            <tbody>${points.map(
              ([x, y]) =>
                html`<tr><td class="num">${show({ lo: x, hi: x }, figure.x.unit, system)}</td><td class="num">${show({ lo: y, hi: y }, figure.y.unit, system)}</td></tr>`,
            )}</tbody>
          </table>`,
        )}
      </details>
    </figure>`;
  }
}

customElements.define('curve-drawing', CurveDrawing);
