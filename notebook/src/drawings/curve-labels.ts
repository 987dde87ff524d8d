import { svg } from 'lit';
import type { Frame } from './axes';
import type { Places } from './curve-marks';
import type { CurveFigure, Stop } from './figure';
import { type Pixel, type Place, placeLabels, type Stroke } from './label-places';
import { isKnown } from './series';

const sides = ['start', 'end'] as const;

/** Beside a place on x, from the top down. */
function beside(x: number, { top, left, right }: Frame): readonly Place[] {
  const near = x > (left + right) / 2 ? sides.toReversed() : sides;
  return [0, 1, 2, 3, 4].flatMap((row) =>
    near.map((side) => ({ side, x: x + (side === 'end' ? -6 : 6), y: top + 12 + 16 * row })),
  );
}

/** At either end of a level, above or below it. */
const along = (y: number, { left, right }: Frame): readonly Place[] =>
  [y - 5, y + 14].flatMap((at): readonly Place[] => [
    { side: 'end', x: right, y: at },
    { side: 'start', x: left + 4, y: at },
    { side: 'start', x: left + (right - left) / 3, y: at },
  ]);

/** Around a point; where the edge is too near for that, up to the edge. */
const around = (x: number, y: number, { right }: Frame): readonly Place[] =>
  [y - 10, y + 20, y - 26, y - 42].flatMap((at): readonly Place[] => [
    { side: 'start', x: x + 8, y: at },
    { side: 'end', x: x - 8, y: at },
    { side: 'end', x: right + 10, y: at },
  ]);

const between = (pixels: readonly Pixel[]): readonly Stroke[] =>
  pixels.slice(1).flatMap((to, i): readonly Stroke[] => {
    const from = pixels[i];
    return from ? [[from, to]] : [];
  });

/** All that is drawn in strokes: the edges of lines, the axis, the stops, and where it stands. */
function strokesOf({ lines, stops, here }: CurveFigure, frame: Frame, { x, y }: Places) {
  const edges = lines.flatMap(({ points }) => [
    ...between(points.map((point) => [x(point.x), y(point.y.lo)] as const)),
    ...between(points.map((point) => [x(point.x), y(point.y.hi)] as const)),
  ]);
  const upright = (at: number): Stroke => [
    [at, frame.top],
    [at, frame.bottom],
  ];
  const level = (at: number): Stroke => [
    [frame.left, at],
    [frame.right, at],
  ];
  return [
    ...edges,
    level(frame.bottom),
    ...(stops ?? []).map((stop) => (stop.along === 'x' ? upright(x(stop.at)) : level(y(stop.at)))),
    ...(here && isKnown(here.x) && here.y === undefined
      ? [upright(x(here.x.lo)), upright(x(here.x.hi))]
      : []),
  ];
}

/** What the stops and the place where it stands are called, clear of the lines. */
export function curveLabels(figure: CurveFigure, frame: Frame, places: Places) {
  const { stops, here } = figure;
  const { x, y } = places;
  const ofStop = (stop: Stop) => ({
    words: stop.label,
    tone: 'stopping',
    wishes: stop.along === 'x' ? beside(x(stop.at), frame) : along(y(stop.at), frame),
  });
  const ofHere = here &&
    isKnown(here.x) && {
      words: here.label,
      tone: '',
      wishes:
        here.y === undefined
          ? [...beside(x(here.x.lo), frame), ...beside(x(here.x.hi), frame)]
          : around(x(here.x.lo), y(here.y), frame),
    };
  const labels = [...(ofHere ? [ofHere] : []), ...(stops ?? []).map(ofStop)];
  const found = placeLabels(labels, strokesOf(figure, frame, places), {
    lo: frame.left,
    hi: frame.right + 12,
  });
  return labels.map(({ words, tone }, i) => {
    const at = found[i];
    return at && svg`<text class="${tone} ${at.side}" x=${at.x} y=${at.y}>${words}</text>`;
  });
}
