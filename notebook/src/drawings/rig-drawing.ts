import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type SVGTemplateResult, svg } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { arrowPath, limitPath, unsureBar } from './arrows';
import type { Load, RigFigure } from './figure';
import { characterWidth } from './label-places';
import { MeasuredWidth } from './measured-width';
import {
  curvedPath,
  type Place,
  roundedPath,
  trailerOpenings,
  trailerOutline,
  vehicleOutline,
} from './outlines';
import { arrowScale, levels, planOf, type RigPlan } from './rig-plan';
import { barsWords, rigSays, scaleSays, whole } from './rig-words';

const wheel = 14;
const trailerWheel = 13;
const axleGap = 33;
const ballHeight = 19;
const pinHeight = 50;
const top = 44;
const lineHeight = 16;

/** Everything of one drawing: inches to pixels, and the line it stands on. */
type Sheet = {
  readonly rig: RigFigure;
  readonly plan: RigPlan;
  readonly place: Place;
  /** Pixels of an inch. */
  readonly unit: number;
  readonly ground: number;
  readonly system: UnitSystem;
};

function wheels({ rig, plan, place, unit }: Sheet): SVGTemplateResult {
  const circle = (x: number, radius: number) => {
    const [cx, cy] = place([x, radius]);
    return svg`<circle class="wheel" cx=${cx} cy=${cy} r=${radius * unit} /><circle cx=${cx} cy=${cy} r=${radius * unit * 0.3} />`;
  };
  const first = plan.axles - (axleGap * (rig.trailerAxles - 1)) / 2;
  const trailers = Array.from({ length: rig.trailerAxles }, (_, i) => first + i * axleGap);
  return svg`${circle(0, wheel)}${circle(plan.rear, wheel)}${trailers.map((x) => circle(x, trailerWheel))}`;
}

function coupling({ rig, plan, place }: Sheet): SVGTemplateResult {
  const { ball, tail, nose } = plan;
  const points = (...all: (readonly [number, number])[]) =>
    all.map((each) => place(each).join(',')).join(' ');
  if (rig.trailer === 'fifth-wheel') {
    return svg`<polyline points=${points([ball - 7, 66], [ball, pinHeight], [ball + 7, 66])} />`;
  }
  const [x, y] = place([ball, ballHeight]);
  return svg`
    <polyline points=${points([tail - 4, 16], [ball, 16])} />
    <polyline points=${points([ball, ballHeight], [nose + 6, ballHeight + 4])} />
    <polyline points=${points([ball + 14, ballHeight], [ball + 14, 6])} />
    <circle class="solid" cx=${x} cy=${y} r="3" />`;
}

/** From the hitch head back under the frame: straight when tight, hanging when slack. */
function bars({ rig, plan, place }: Sheet): SVGTemplateResult | typeof nothing {
  if (rig.bars === 'none' || rig.trailer === 'fifth-wheel') return nothing;
  const far = plan.ball + Math.min(30, (plan.axles - plan.ball) / 4);
  const [x0, y0] = place([plan.ball, 14]);
  const [x1, y1] = place([far, rig.bars === 'slack' ? 5 : 13]);
  const [cx, cy] = place([(plan.ball + far) / 2, rig.bars === 'slack' ? 4 : 9]);
  const [hx, hy] = place([far, ballHeight + 3]);
  const chain =
    rig.bars === 'slack'
      ? `M${x1} ${y1}Q${x1 + 7} ${(y1 + hy) / 2} ${hx} ${hy}`
      : `M${x1} ${y1}L${hx} ${hy}`;
  return svg`<path class="bars ${rig.bars}" d="M${x0} ${y0}Q${cx} ${cy} ${x1} ${y1}${chain}" />`;
}

function bodies({ rig, plan, place, unit }: Sheet): SVGTemplateResult {
  const vehicle = vehicleOutline(rig.vehicle, plan);
  const trailer = trailerOutline(rig.trailer, plan);
  const round = 7 * unit;
  const path =
    rig.trailer === 'teardrop' ? curvedPath(trailer, place) : roundedPath(trailer, place, round);
  return svg`
    <path class="body" d=${path} />
    ${trailerOpenings(rig.trailer, plan).map((each) => svg`<path class="glass" d=${roundedPath(each, place, round / 2)} />`)}
    <path class="body" d=${roundedPath(vehicle.body, place, round)} />
    <path class="glass" d=${roundedPath(vehicle.glass, place, round / 2)} />`;
}

function arrow(load: Load, x: number, y: number, up: boolean, long: (v: number) => number) {
  const { used, limit, state } = load;
  const way = up ? 1 : -1;
  return svg`<g class="load level-${state}">
    ${limit ? svg`<path class="may" d=${limitPath(x, y, long(limit.hi), up)} />` : nothing}
    ${used && used.hi > used.lo ? unsureBar(x, y + way * long(used.lo), y + way * long(used.hi)) : nothing}
    ${used ? svg`<path class="is" d=${arrowPath(x, y, long(used.lo), up)} />` : nothing}
  </g>`;
}

/**
 * The rig from the side, heading left, drawn from its distances: what presses on each axle and on
 * the ball as arrows to one scale, with the ratings as dashed cups.
 */
export class RigDrawing extends PlainElement {
  static override properties = { figure: { attribute: false }, system: { attribute: false } };
  declare figure: RigFigure;
  declare system: UnitSystem;
  private readonly measured = new MeasuredWidth(this, 720);

  private axleLabels(sheet: Sheet, y: number) {
    const { rig, plan, place, system } = sheet;
    const labels = (
      [
        [rig.front, 0],
        [rig.rear, plan.rear],
        [rig.axles, plan.axles],
      ] as const
    ).map(([load, at]) => {
      const words = load.used ? whole(load.used, system) : 'not known';
      const of = load.limit ? `of ${whole(load.limit, system)}` : '';
      const width = Math.max(words.length, of.length) * characterWidth;
      const x = Math.min(this.measured.width - width / 2, Math.max(width / 2, place([at, 0])[0]));
      return { x, width, words, of };
    });
    const rows = levels(labels);
    const deep = Math.max(...rows) + 1;
    return {
      height: deep * 2.3 * lineHeight,
      drawn: labels.map(({ x, words, of }, i) => {
        const line = y + lineHeight + (rows[i] ?? 0) * 2.3 * lineHeight;
        return svg`<text x=${x} y=${line}>${words}</text><text class="of" x=${x} y=${line + lineHeight}>${of}</text>`;
      }),
    };
  }

  /** Where the drawing is low for its width: each label beside its arrow, the foremost ahead of it. */
  private labelsBeside({ rig, plan, place, ground, system }: Sheet) {
    const all = [
      [rig.front, 0],
      [rig.rear, plan.rear],
      [rig.axles, plan.axles],
    ] as const;
    return all.map(([{ used, limit }, at], i) => {
      const side = i === 0 ? 'end' : 'start';
      const x = place([at, 0])[0] + (i === 0 ? -16 : 16);
      const y = ground + 18;
      return svg`<text class=${side} x=${x} y=${y}>${used ? whole(used, system) : 'not known'}</text>
        <text class="of ${side}" x=${x} y=${y + lineHeight}>${limit ? `of ${whole(limit, system)}` : ''}</text>`;
    });
  }

  private ballLabel({ rig, plan, place, system }: Sheet, long: (v: number) => number) {
    const { used, limit } = rig.ball;
    if (!used) return nothing;
    const [x, y] = place([plan.ball, (rig.trailer === 'fifth-wheel' ? pinHeight : ballHeight) + 4]);
    const words = `${whole(used, system)}${limit ? ` of ${whole(limit, system)}` : ''}`;
    const most = Math.max(long(used.hi), limit ? long(limit.hi) : 0);
    return svg`
      <line class="leader" x1=${x} x2=${x} y1=${top - 20} y2=${y - most - 3} />
      ${arrow(rig.ball, x, y, false, long)}
      <text x=${x} y=${top - 26}>${words}</text>`;
  }

  protected override render() {
    const { figure: rig, system } = this;
    const plan = planOf(rig);
    const { width, height: given } = this.measured;
    const wide = plan.to - plan.from;
    const longest = given !== undefined ? 40 : width < 520 ? 56 : 84;
    const high = given === undefined ? 2.2 : (given - top - longest - 10) / plan.height;
    const unit = Math.max(0.1, Math.min(width / wide, 2.2, high));
    const ground = top + plan.height * unit;
    const ahead = given === undefined ? 0 : (width - wide * unit) / 2;
    const place: Place = ([x, y]) => [ahead + (x - plan.from) * unit, ground - y * unit];
    const sheet: Sheet = { rig, plan, place, unit, ground, system };
    const long = arrowScale(rig, longest);
    const labels =
      given === undefined
        ? this.axleLabels(sheet, ground + longest + 8)
        : { height: 0, drawn: this.labelsBeside(sheet) };
    const height = given ?? ground + longest + 8 + labels.height + 6;
    const under = (load: Load, at: number) =>
      arrow(load, place([at, 0])[0], ground + 5, true, long);
    return html`<figure class="drawing rig ${plan.unknown.length > 0 ? 'plain' : ''}">
      <svg viewBox="0 0 ${width} ${height}" role="img" aria-label=${rigSays(rig, plan, system)}>
        <line class="ground" x1="0" x2=${width} y1=${ground} y2=${ground} />
        <g class="ink">${bodies(sheet)}${coupling(sheet)}${bars(sheet)}${wheels(sheet)}</g>
        ${under(rig.front, 0)}${under(rig.rear, plan.rear)}${under(rig.axles, plan.axles)}
        ${this.ballLabel(sheet, long)}${labels.drawn}
      </svg>
      <figcaption class="small soft">
        ${scaleSays(plan)} An arrow’s length is the load, on one scale for all; a dashed outline is the rating. ${barsWords(rig.bars)}
      </figcaption>
    </figure>`;
  }
}

customElements.define('rig-drawing', RigDrawing);
