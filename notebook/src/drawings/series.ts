import type { Ends } from '@tarebook/rules/engine';
import { convert, type Interval, readQuantity, unitOf, wasMisread } from '@tarebook/rules/quantity';
import type { Drawn, Point } from './figure';

export const isKnown = ({ lo, hi }: Interval): boolean =>
  Number.isFinite(lo) && Number.isFinite(hi);

export const middle = ({ lo, hi }: Interval): number => (lo + hi) / 2;

/** Step after step of one line; undefined as soon as one of them is not known. */
export function stepsOf({ answer }: Drawn, series: string, name: string) {
  const ends = answer.series[series]?.lines[name]?.ends;
  return ends && ends.length > 0 && ends.every(isKnown) ? ends : undefined;
}

/** A result; undefined where it is not known. */
export function resultOf({ answer }: Drawn, name: string): Ends | undefined {
  const ends = answer.values[name];
  return ends && isKnown(ends) ? ends : undefined;
}

/** A fact as it was told, in a unit; undefined where it was not. */
export function toldIn({ doc }: Drawn, fact: string, unit: string): Interval | undefined {
  const given = doc.facts[fact];
  const read = typeof given === 'string' ? readQuantity(given) : undefined;
  if (!read || wasMisread(read)) return undefined;
  const from = read.unit ?? unitOf(unit === '' ? '1' : unit);
  const to = unitOf(unit === '' ? '1' : unit);
  return { lo: convert(read.from, from, to), hi: convert(read.to, from, to) };
}

/** What there is at x = 0 and what of it is left until it is used up, both of them ranges. */
export function usedUp(start: Interval, end: Interval): readonly Point[] {
  const left = (of: number, until: number, x: number) =>
    until > 0 ? of * Math.max(0, 1 - x / until) : 0;
  const at = (x: number): Point => ({
    x,
    y: { lo: left(start.lo, end.lo, x), hi: left(start.hi, end.hi, x) },
  });
  return [...new Set([0, end.lo, end.hi])].map(at);
}

/** How high an edge of a line is at x, by straight lines between its points. */
export function heightAt(
  points: readonly Point[],
  x: number,
  edge: (y: Interval) => number = middle,
): number | undefined {
  const i = points.findIndex((point) => point.x >= x);
  const [before, after] = [points[Math.max(0, i - 1)], points[i]];
  if (!before || !after) return undefined;
  const [low, high] = [edge(before.y), edge(after.y)];
  const long = after.x - before.x;
  return long === 0 ? high : low + ((x - before.x) / long) * (high - low);
}

/** The first x at which a rising edge of a line comes up to a level; undefined where it never does. */
export function reaches(
  points: readonly Point[],
  level: number,
  edge: (y: Interval) => number,
): number | undefined {
  const i = points.findIndex(({ y }) => edge(y) >= level);
  const [before, after] = [points[i - 1], points[i]];
  if (!after) return undefined;
  if (!before) return after.x;
  const [low, high] = [edge(before.y), edge(after.y)];
  return before.x + ((level - low) / (high - low)) * (after.x - before.x);
}
