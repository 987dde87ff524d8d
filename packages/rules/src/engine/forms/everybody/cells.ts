import type { FactsGiven } from '../../check/given';
import type { Fact, Level } from '../../define/shapes';
import type { LevelAt } from './bench';

/** A value or range of one fact over which the verdict is the same. */
export type Cell = {
  /** As a case writes it. */
  readonly value: string;
  readonly level: Level;
  /** Of a quantity, both ends in its unit; an end that goes on is infinite. */
  readonly lo: number;
  readonly hi: number;
};

/** A quantity is looked at in so many places before the edges between them are sought. */
const places = 32;
const steps = 40;
/** As often the part that is proved is halved toward its edge. */
const shrinks = 10;

/** The steps in which people read a label or a tape: a figure with three digits or so. */
function stepAt(value: number, counted: boolean): number {
  const size = Math.abs(value);
  if (counted) return 1;
  return size >= 1000 ? 10 : size >= 100 ? 5 : size >= 10 ? 0.5 : 0.1;
}

/** A figure that people read, the nearest to an edge on the side of the cell that has it. */
function readable(
  edge: number,
  step: number,
  up: boolean,
  isInside: (at: number) => boolean,
): number {
  const at = (count: number) => Number((count * step).toFixed(6));
  const near = Math.round(edge / step);
  const way = up ? 1 : -1;
  const found = [near - way, near, near + way].find((count) => isInside(at(count)));
  return at(found ?? near + way);
}

type Edge = { readonly at: number; readonly before: Level; readonly after: Level };
type Place = { readonly at: number; readonly level: Level };

/** The edges between two places, with whatever lies between them. */
function edgesBetween(
  a: Place,
  b: Place,
  look: (at: number) => Level | undefined,
  left: number,
): Edge[] {
  if (a.level === b.level) return [];
  if (left === 0) return [{ at: (a.at + b.at) / 2, before: a.level, after: b.level }];
  const at = (a.at + b.at) / 2;
  const level = look(at) ?? a.level;
  const middle = { at, level };
  return [...edgesBetween(a, middle, look, left - 1), ...edgesBetween(middle, b, look, left - 1)];
}

type Quantity = Fact & { readonly kind: 'quantity' };

type Span = { readonly level: Level; readonly lo: number; readonly hi: number };

/** A span as a case writes it. */
function written({ lo, hi }: Span, unit: string): string {
  const ended = (value: number) => `${value} ${unit}`.trim();
  if (lo === -Infinity) return `at most ${ended(hi)}`;
  if (hi === Infinity) return `at least ${ended(lo)}`;
  return lo === hi ? ended(lo) : `${lo}–${ended(hi)}`;
}

function quantityCells(
  id: string,
  fact: Quantity,
  facts: FactsGiven,
  levelAt: LevelAt,
): readonly Cell[] {
  const { unit, least, most, counted = false } = fact;
  const look = (at: number) => levelAt({ ...facts, [id]: { lo: at, hi: at, unit } });
  const apart = counted ? Math.ceil((most - least) / places) : (most - least) / places;
  const found = Array.from({ length: places + 1 }, (_, i): Place[] => {
    const at = Math.min(most, least + apart * i);
    const level = look(at);
    return level === undefined ? [] : [{ at, level }];
  }).flat();
  const [first] = found;
  if (!first) return [];
  const edges = found
    .slice(1)
    .flatMap((place, i) => edgesBetween(found[i] ?? place, place, look, steps));
  const ends = [-Infinity, ...edges.map(({ at }) => at), Infinity];
  const spans = ends.slice(1).flatMap((end, i): Span[] => {
    const begin = ends[i] ?? -Infinity;
    const level = edges[i - 1]?.after ?? first.level;
    const isInside = (at: number) => at > begin - 1e-6 && at < end + 1e-6 && look(at) === level;
    const near = (edge: number, up: boolean) =>
      Number.isFinite(edge) ? readable(edge, stepAt(edge, counted), up, isInside) : edge;
    const [lo, hi] = [near(begin, true), near(end, false)];
    return lo > hi || (lo === -Infinity && hi === Infinity) ? [] : [{ level, lo, hi }];
  });
  const isProved = (span: Span) => levelAt({ ...facts, [id]: written(span, unit) }) === span.level;
  // A range may be judged harder than each figure in it; then as much of it is said as is proved.
  const shrunk = (span: Span): Span | undefined => {
    if (span.level === 'unknown' || (span.lo !== -Infinity && span.hi !== Infinity)) return;
    const isLow = span.lo === -Infinity;
    const upTo = (at: number): Span => (isLow ? { ...span, hi: at } : { ...span, lo: at });
    const steady = (at: number): Span =>
      upTo(readable(at, stepAt(at, counted), !isLow, () => true));
    let [far, near] = isLow ? [least, span.hi] : [most, span.lo];
    if (!isProved(steady(far))) return;
    for (let left = shrinks; left > 0; left -= 1) {
      const middle = (far + near) / 2;
      if (isProved(steady(middle))) far = middle;
      else near = middle;
    }
    return steady(far);
  };
  return spans.flatMap((span, i): Cell[] => {
    // One that is careful may reach as far as the next begins, so that no figure lies between them.
    const [before, after] = [spans[i - 1], spans[i + 1]];
    const wider = [
      { ...span, lo: before?.hi ?? span.lo, hi: after?.lo ?? span.hi },
      { ...span, hi: after?.lo ?? span.hi },
      { ...span, lo: before?.hi ?? span.lo },
      span,
    ];
    // What is split further stays as narrow as it is: at its edges another fact would settle nothing.
    const proved = (span.level === 'unknown' ? [span] : wider).find(isProved) ?? shrunk(span);
    return proved ? [{ ...proved, value: written(proved, unit) }] : [];
  });
}

/** What a fact may be, by what comes out; each cell is proved over the whole of it, or left out. */
export function cellsOf(
  id: string,
  fact: Fact,
  facts: FactsGiven,
  levelAt: LevelAt,
): readonly Cell[] {
  const none = { lo: Number.NaN, hi: Number.NaN };
  const option = (value: string): Cell[] => {
    const level = levelAt({ ...facts, [id]: value });
    return level === undefined ? [] : [{ value, level, ...none }];
  };
  switch (fact.kind) {
    case 'rows':
      return [];
    case 'choice':
      return fact.options.flatMap(option);
    case 'yes-no':
      return ['yes', 'no'].flatMap(option);
    case 'quantity':
      return quantityCells(id, fact, facts, levelAt);
  }
}
