import type { UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { area, curveStepAfter } from 'd3-shape';
import { html, nothing, svg } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { axisTitle, bottomAxis, type Frame, shownIn } from './axes';
import type { SpreadFigure } from './figure';
import { MeasuredWidth } from './measured-width';
import { spreadSays } from './spread-words';

const usualHeight = 236;

/** Where many draws fell, as steps whose area is their number, with the limit on them. */
export class SpreadDrawing extends PlainElement {
  static override properties = { figure: { attribute: false }, system: { attribute: false } };
  declare figure: SpreadFigure;
  declare system: UnitSystem;
  private readonly measured = new MeasuredWidth(this, 720);

  protected override render() {
    const { figure, system } = this;
    const { bins, limit, x: axis } = figure;
    const { width, height = usualHeight } = this.measured;
    const frame: Frame = { left: 8, right: width - 8, top: 30, bottom: height - 46 };
    const shown = shownIn(axis, system);
    const at = limit ? [limit.at] : [];
    const ends = [...bins.flatMap(({ from, to }) => [from, to]), ...at].map((each) => shown(each));
    const across = scaleLinear()
      .domain(ends.length > 0 ? [Math.min(...ends), Math.max(...ends)] : [0, 1])
      .range([frame.left, frame.right]);
    const density = ({ from, to, count }: SpreadFigure['bins'][number]) =>
      to > from ? count / (to - from) : 0;
    const up = scaleLinear()
      .domain([0, Math.max(Number.MIN_VALUE, ...bins.map(density))])
      .range([frame.bottom, frame.top]);
    const last = bins.at(-1);
    const steps: readonly (readonly [number, number])[] = [
      ...bins.map((bin) => [bin.from, density(bin)] as const),
      ...(last ? [[last.to, density(last)] as const] : []),
    ];
    const shape = area<readonly [number, number]>()
      .x(([value]) => across(shown(value)))
      .y0(frame.bottom)
      .y1(([, value]) => up(value))
      .curve(curveStepAfter);
    const path = shape([...steps]) ?? '';
    const edge = limit ? across(shown(limit.at)) : frame.right;
    const side = edge > width / 2 ? 'end' : 'start';
    return html`<figure class="drawing spread">
      <svg viewBox="0 0 ${width} ${height}" role="img" aria-label=${spreadSays(figure, system)}>
        <clipPath id="within-limit"><rect x="0" y="0" width=${edge} height=${height} /></clipPath>
        <clipPath id="over-limit"><rect x=${edge} y="0" width=${Math.max(0, width - edge)} height=${height} /></clipPath>
        <path class="within" clip-path="url(#within-limit)" d=${path} />
        <path class="over" clip-path="url(#over-limit)" d=${path} />
        ${
          limit
            ? svg`<line class="stopping" x1=${edge} x2=${edge} y1=${frame.top - 8} y2=${frame.bottom} />
              <text class="stopping ${side}" x=${edge + (side === 'end' ? -6 : 6)} y=${frame.top - 10}>${limit.label}</text>`
            : nothing
        }
        ${bottomAxis(across, frame, axisTitle(axis, system))}
      </svg>
      <figcaption class="small soft">${spreadSays(figure, system)}</figcaption>
    </figure>`;
  }
}

customElements.define('spread-drawing', SpreadDrawing);
