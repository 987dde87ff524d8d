import { type Interval, show, type UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { html, nothing, svg } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { axisTitle, bottomAxis, type Frame, leftAxis, shownIn } from './axes';
import { curveLabels } from './curve-labels';
import { hereMark, liftMarks, type Places, stopLines } from './curve-marks';
import { curveTable } from './curve-table';
import { curveSays, extents } from './curve-words';
import type { CurveFigure, Line, Point } from './figure';
import { MeasuredWidth } from './measured-width';

const usualHeight = 270;

const isExact = ({ y }: Point): boolean => y.lo === y.hi;

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
    const places: Places = { x: (value) => across(toX(value)), y: (value) => up(toY(value)) };
    return { across, up, places };
  }

  /** A line; a range between two lines where it is not known exactly. */
  private line({ points }: Line, i: number, { x, y }: Places) {
    const along = (edge: (y: Interval) => number) =>
      line<Point>(
        (point) => x(point.x),
        (point) => y(edge(point.y)),
      )([...points]) ?? '';
    const low = svg`<path class="line line-${i}" d=${along(({ lo }) => lo)} />`;
    if (points.every(isExact)) return low;
    const between = area<Point>(
      (point) => x(point.x),
      (point) => y(point.y.lo),
      (point) => y(point.y.hi),
    )([...points]);
    return svg`<path class="between between-${i}" d=${between ?? ''} />${low}
      <path class="line line-${i}" d=${along(({ hi }) => hi)} />`;
  }

  protected override render() {
    const { figure, system } = this;
    const { width, height = usualHeight } = this.measured;
    const frame: Frame = { left: 56, right: width - 12, top: 34, bottom: height - 46 };
    const { across, up, places } = this.scales(frame);
    const [wide, high] = [frame.right - frame.left, frame.bottom - frame.top];
    return html`<figure class="drawing curve">
      <svg viewBox="0 0 ${width} ${height}" role="img" aria-label=${curveSays(figure, system)}>
        ${leftAxis(up, frame, axisTitle(figure.y, system))}
        ${bottomAxis(across, frame, axisTitle(figure.x, system))}
        <svg x=${frame.left} y=${frame.top} width=${wide} height=${high}
          viewBox="${frame.left} ${frame.top} ${wide} ${high}">
          ${figure.lines.map((each, i) => this.line(each, i, places))}
        </svg>
        ${[stopLines, hereMark].map((each) => each(figure, frame, places))}
        ${liftMarks(figure, places)}
        ${curveLabels(figure, frame, places)}
      </svg>
      <figcaption class="small soft">
        ${figure.title}. ${figure.note ?? nothing}
        ${figure.lines.length > 1 ? figure.lines.map(({ label }, i) => html`<span class="key key-${i}">${label}</span> `) : nothing}
        ${figure.lifts ? html`<span class="lift-key">▲ ${figure.lifts.label}</span>` : nothing}
      </figcaption>
      ${curveTable(figure, (range, unit) => show(range, unit, system))}
    </figure>`;
  }
}

customElements.define('curve-drawing', CurveDrawing);
