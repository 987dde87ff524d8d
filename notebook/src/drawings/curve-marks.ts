import { nothing, svg } from 'lit';
import type { Frame } from './axes';
import type { CurveFigure } from './figure';
import { isKnown, middle } from './series';

/** From the units of a figure to its pixels. */
export type Places = {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
};

/** Where not to pass. */
export const stopLines = ({ stops }: CurveFigure, frame: Frame, places: Places) =>
  (stops ?? []).map(({ along, at }) => {
    const [x, y] = [places.x(at), places.y(at)];
    return along === 'y'
      ? svg`<line class="stopping" x1=${frame.left} x2=${frame.right} y1=${y} y2=${y} />`
      : svg`<line class="stopping" x1=${x} x2=${x} y1=${frame.top} y2=${frame.bottom} />`;
  });

/** Where it stands: a point on its level, a line all the way up, or a band. */
export function hereMark({ here }: CurveFigure, frame: Frame, places: Places) {
  if (!here || !isKnown(here.x)) return nothing;
  const [from, to] = [places.x(here.x.lo), places.x(here.x.hi)];
  if (from !== to) {
    return svg`<rect class="band" x=${Math.min(from, to)} y=${frame.top} width=${Math.abs(to - from)} height=${frame.bottom - frame.top} />`;
  }
  const y = here.y === undefined ? frame.top : places.y(here.y);
  return svg`<line class="leader" x1=${from} x2=${from} y1=${y} y2=${frame.bottom} />
    ${here.y === undefined ? nothing : svg`<circle class="here" cx=${from} cy=${y} r="5" />`}`;
}

/** An arrow head where a line is lifted. */
export function liftMarks({ lifts }: CurveFigure, { x, y }: Places) {
  return (lifts?.at ?? []).map((lift) => {
    const [at, up] = [x(lift.x), (y(middle(lift.from)) + y(middle(lift.to))) / 2];
    return svg`<path class="lift" d="M${at},${up - 6} l6,11 h-12 z" />`;
  });
}
