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

/** What people read off a label or a tape: a figure with three digits, rounded as told. */
function rounded(value: number, up: boolean, counted: boolean): number {
  const size = Math.abs(value);
  const step = counted ? 1 : size >= 1000 ? 10 : size >= 100 ? 5 : size >= 10 ? 0.5 : 0.1;
  const count = value / step;
  const tidy = Math.abs(count - Math.round(count)) < 1e-6 ? Math.round(count) : undefined;
  return Number(((tidy ?? (up ? Math.ceil(count) : Math.floor(count))) * step).toFixed(6));
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

function quantityCells(
  id: string,
  fact: Quantity,
  facts: FactsGiven,
  levelAt: LevelAt,
): readonly Cell[] {
  const { unit, least, most, counted = false } = fact;
  const written = (value: number) => `${value} ${unit}`.trim();
  const look = (at: number) => levelAt({ ...facts, [id]: written(Number(at.toFixed(6))) });
  const found = Array.from({ length: places + 1 }, (_, i): Place[] => {
    const at = least + ((most - least) * i) / places;
    const level = look(at);
    return level === undefined ? [] : [{ at, level }];
  }).flat();
  const [first] = found;
  if (!first) return [];
  const edges = found
    .slice(1)
    .flatMap((place, i) => edgesBetween(found[i] ?? place, place, look, steps));
  const ends = [-Infinity, ...edges.map(({ at }) => at), Infinity];
  return ends.slice(1).flatMap((end, i): Cell[] => {
    const begin = ends[i] ?? -Infinity;
    const level = edges[i - 1]?.after ?? first.level;
    const lo = Number.isFinite(begin) ? rounded(begin, true, counted) : begin;
    const hi = Number.isFinite(end) ? rounded(end, false, counted) : end;
    if (lo > hi || (lo === -Infinity && hi === Infinity)) return [];
    const value =
      lo === -Infinity
        ? `at most ${written(hi)}`
        : hi === Infinity
          ? `at least ${written(lo)}`
          : lo === hi
            ? written(lo)
            : `${lo}–${written(hi)}`;
    return [{ value, level, lo, hi }];
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
      return quantityCells(id, fact, facts, levelAt).filter(
        ({ value, level }) => levelAt({ ...facts, [id]: value }) === level,
      );
  }
}
