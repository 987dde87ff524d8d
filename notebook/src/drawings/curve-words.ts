import { type Interval, show, type UnitSystem } from '@tarebook/rules/quantity';
import type { Axis, CurveFigure } from './figure';
import { sentence } from './sentence';

function around(values: readonly number[], { most, fromZero }: Axis): Interval {
  const known = [...values, ...(fromZero ? [0] : [])].filter((value) => Number.isFinite(value));
  if (known.length === 0) return { lo: 0, hi: 1 };
  const [lo, end] = [Math.min(...known), Math.max(...known)];
  const hi = Math.min(end, most ?? end);
  return lo === hi ? { lo: lo - 1, hi: hi + 1 } : { lo, hi };
}

/** What the axes have to reach: the lines, the stops, and where it stands. */
export function extents({ lines, stops, here, x, y }: CurveFigure): { x: Interval; y: Interval } {
  const points = lines.flatMap((each) => each.points);
  const along = (axis: 'x' | 'y') =>
    (stops ?? []).filter((stop) => stop.along === axis).map(({ at }) => at);
  const stands = here ? [here.x.lo, here.x.hi] : [];
  return {
    x: around([...points.map((each) => each.x), ...along('x'), ...stands], x),
    y: around(
      [
        ...points.flatMap((each) => [each.y.lo, each.y.hi]),
        ...along('y'),
        ...(here?.y === undefined ? [] : [here.y]),
      ],
      y,
    ),
  };
}

/** The drawing in words: each line from end to end, what lifts it, the stops, where it stands. */
export function curveSays(figure: CurveFigure, system: UnitSystem): string {
  const { title, x, y, lines, stops, here, lifts, note } = figure;
  const at = (value: number, unit: string) => show({ lo: value, hi: value }, unit, system);
  const up = (range: Interval) => show(range, y.unit, system);
  const told = lines.flatMap(({ label, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const from = `${up(first.y)} at ${at(first.x, x.unit)}`;
    return [`${label}: from ${from} to ${up(last.y)} at ${at(last.x, x.unit)}.`];
  });
  const lifted = (lifts?.at ?? []).map(
    (lift) =>
      `${sentence(lifts?.label ?? '')}: from ${up(lift.from)} to ${up(lift.to)} at ${at(lift.x, x.unit)}.`,
  );
  const stopped = (stops ?? []).map(
    (stop) => `${sentence(stop.label)}: ${at(stop.at, stop.along === 'x' ? x.unit : y.unit)}.`,
  );
  const stands = here
    ? [
        `${sentence(here.label)}: ${show(here.x, x.unit, system)}${here.y === undefined ? '' : `, ${at(here.y, y.unit)}`}.`,
      ]
    : [];
  return [`${title}.`, ...told, ...lifted, ...stopped, ...stands, ...(note ? [note] : [])].join(
    ' ',
  );
}
