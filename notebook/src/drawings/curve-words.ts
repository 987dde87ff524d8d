import { type Interval, show, type UnitSystem } from '@tarebook/rules/quantity';
import type { CurveFigure } from './figure';

function around(values: readonly number[]): Interval {
  const known = values.filter((value) => Number.isFinite(value));
  if (known.length === 0) return { lo: 0, hi: 1 };
  const [lo, hi] = [Math.min(...known), Math.max(...known)];
  return lo === hi ? { lo: lo - 1, hi: hi + 1 } : { lo, hi };
}

/** What the axes have to reach: the lines, the stop, and where it stands. */
export function extents({ lines, stop, here }: CurveFigure): { x: Interval; y: Interval } {
  const points = lines.flatMap((each) => each.points);
  const stopX = stop?.along === 'x' ? [stop.at] : [];
  const stopY = stop?.along === 'y' ? [stop.at] : [];
  return {
    x: around([...points.map(([x]) => x), ...stopX, ...(here ? [here.x.lo, here.x.hi] : [])]),
    y: around([...points.map(([, y]) => y), ...stopY, ...(here?.y === undefined ? [] : [here.y])]),
  };
}

/** The drawing in words: each line from end to end, the stop, and where it stands. */
export function curveSays(figure: CurveFigure, system: UnitSystem): string {
  const { title, x, y, lines, stop, here } = figure;
  const at = (value: number, unit: string) => show({ lo: value, hi: value }, unit, system);
  const told = lines.flatMap(({ label, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const from = `${at(first[1], y.unit)} at ${at(first[0], x.unit)}`;
    return [`${label}: from ${from} to ${at(last[1], y.unit)} at ${at(last[0], x.unit)}.`];
  });
  const stops = stop
    ? [`${stop.label}: ${at(stop.at, stop.along === 'x' ? x.unit : y.unit)}.`]
    : [];
  const stands = here
    ? [
        `${here.label}: ${show(here.x, x.unit, system)}${here.y === undefined ? '' : `, ${at(here.y, y.unit)}`}.`,
      ]
    : [];
  return [`${title}.`, ...told, ...stops, ...stands].join(' ');
}
