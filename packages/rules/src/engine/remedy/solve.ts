import type { Level } from '../define/shapes';
import type { Inputs } from '../value/values';
import { crossings } from './crossings';
import {
  type Bench,
  comparedIn,
  gaps,
  inTheWay,
  isSpent,
  type Judged,
  judge,
  upset,
  worth,
} from './trial';
import type { Way } from './way';

/** A change carried so far, and what comes of it. */
export type Turned = { readonly x: number; readonly level: Level };

/** Onto the grid of the step, away from the start so that the edge is met or passed. */
function outward(x: number, start: number, step: number, end: number): readonly number[] {
  const up = end > start;
  const on = (up ? Math.ceil(x / step - 1e-7) : Math.floor(x / step + 1e-7)) * step;
  const next = up ? on + step : on - step;
  const within = (at: number): number => (up ? Math.min(at, end) : Math.max(at, end));
  const tidy = (at: number): number => Math.round(within(at) * 1e9) / 1e9;
  return [tidy(on), tidy(next)];
}

/**
 * What can be better of what stands in the way: nothing can when something in the way does not move
 * along the line at all.
 */
function moves(bench: Bench, inputs: Inputs, before: Judged, way: Way): boolean {
  const { line } = way;
  if (!line || line.startCounts) return true;
  const points = line.ends.flatMap((end) => [line.start + (end - line.start) * 0.37, end]);
  const trials = points.map((x) => way.edit(inputs, x));
  return inTheWay(before, before.level).every((of) => {
    const compared = comparedIn(bench, before, (each) => each === of);
    const now = gaps(bench, way.edit(inputs, line.start), compared);
    return trials.some((trial) =>
      gaps(bench, trial, compared).some((gap, i) => Math.abs(gap - (now[i] ?? gap)) > 1e-9),
    );
  });
}

/** Where along a line the level may change, the nearest to the start first. */
function edges(bench: Bench, inputs: Inputs, before: Judged, way: Way): readonly number[] {
  const { line } = way;
  if (!line) return [0];
  const { start, ends, startCounts, step } = line;
  const compared = comparedIn(bench, before);
  const found = ends.flatMap((end) => {
    // Of what is not tried any more nothing is known.
    const along = (x: number) => (isSpent(bench) ? [] : gaps(bench, way.edit(inputs, x), compared));
    const zeros = crossings(along, start, end, step / 4);
    return [...zeros.flatMap((x) => outward(x, start, step, end)), end];
  });
  const away = (x: number): number => Math.abs(x - start);
  return [...new Set([...(startCounts ? [start] : []), ...found])]
    .filter((x) => startCounts || x !== start)
    .sort((a, b) => away(a) - away(b));
}

/**
 * How far a change must go for each better level that it can reach, the least first. The edges are
 * solved for, rounded outward to the step, and judged: nothing counts that the rules do not confirm.
 *
 * @param inputs the facts as they are
 * @param before what they come to, with whatever else `way` changes beside its own line
 * @param only stop at the first better level
 * @param asTheyWere what the facts came to before any change: no finding may be worse than there
 */
export function turns(
  bench: Bench,
  inputs: Inputs,
  before: Judged,
  way: Way,
  only = false,
  asTheyWere = before,
): readonly Turned[] {
  if (!moves(bench, inputs, before, way)) return [];
  const kept = new Map<number, Level>();
  const levelAt = (x: number): Level => {
    const known = kept.get(x);
    if (known) return known;
    const after = judge(bench, way.edit(inputs, x));
    // What is not sound is no better than what was.
    const sound = upset(after, asTheyWere, way.change.rights).length === 0;
    const level = sound ? after.level : before.level;
    kept.set(x, level);
    return level;
  };
  const found: Turned[] = [];
  let best = before.level;
  for (const x of edges(bench, inputs, before, way)) {
    const level = levelAt(x);
    if (worth[level] >= worth[best]) continue;
    const least = stepBack(way, x, (at) => worth[levelAt(at)] <= worth[level]);
    found.push({ x: least, level: levelAt(least) });
    best = level;
    if (only || best === 'ok') break;
  }
  return found;
}

/** A step or two less, where that is enough after all. */
function stepBack({ line }: Way, x: number, enough: (x: number) => boolean): number {
  if (!line) return x;
  let least = x;
  for (let i = 0; i < 3; i += 1) {
    const toward = least > line.start ? -line.step : line.step;
    const back = Math.round((least + toward) * 1e9) / 1e9;
    const passes = least > line.start ? back <= line.start : back >= line.start;
    if (passes || !enough(back)) return least;
    least = back;
  }
  return least;
}
