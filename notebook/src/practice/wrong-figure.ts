import type { Answer, Step } from '@tarebook/rules/engine';
import { readQuantity, showNumber, wasMisread } from '@tarebook/rules/quantity';
import { oneOf, seeded, shuffled } from './seeded';

/** A line of a working: what, from which figures, and what it is said to come to. */
export type Line = {
  readonly id: string;
  readonly label: string;
  readonly working: string;
  readonly says: string;
};

/** A working of a few lines, in one of which the result does not follow from the figures in it. */
export type WrongFigure = {
  readonly lines: readonly Line[];
  readonly wrong: string;
  /** What the wrong line should say. */
  readonly right: string;
};

const mostLines = 6;
const fewest = 3;
const figure = /^(\d[\d,]*(?:\.\d+)?)(.*)$/;

/** A line that a person can reckon again: one figure out of at least two. */
function canBeChecked({ kind, ends, working, value }: Step): boolean {
  if (kind !== 'formula' || !ends || ends.lo !== ends.hi || !Number.isFinite(ends.lo)) return false;
  if (working === undefined || working === value || working.includes('unknown')) return false;
  const figures = working.match(/\d[\d,]*(?:\.\d+)?/g) ?? [];
  return figures.length >= 2 && /[+−×÷]/.test(working) && (figure.exec(value)?.[1] ?? '0') !== '0';
}

/** By a share that no rounding explains, as slips are: a part left out, a digit taken wrongly. */
const slips = [0.7, 0.8, 0.9, 1.1, 1.2, 1.3] as const;

/** @returns the figure as it would stand with a slip; undefined where rounding would hide it */
function slipped(value: string, times: number): string | undefined {
  const [, written = '', rest = ''] = figure.exec(value) ?? [];
  const read = readQuantity(`${written}`);
  if (written === '' || wasMisread(read)) return undefined;
  const places = written.split('.')[1]?.length ?? 0;
  const made = `${showNumber(read.from * times, places)}${rest}`;
  return made === value ? undefined : made;
}

/** @returns undefined where a working has too few lines that can be reckoned again */
export function wrongFigureOf({ trace }: Answer, seed: number): WrongFigure | undefined {
  const draw = seeded(seed);
  const seen = new Set<string>();
  const all = Object.entries(trace.steps).flatMap(([id, step]): Line[] => {
    const { label, working = '', value } = step;
    if (!canBeChecked(step) || seen.has(working)) return [];
    seen.add(working);
    return [{ id, label, working, says: value }];
  });
  if (all.length < fewest) return undefined;
  const lines = shuffled(draw, all).slice(0, mostLines);
  const may = lines.flatMap((line) => {
    const says = slipped(line.says, oneOf(draw, slips) ?? 1.1);
    return says === undefined ? [] : [{ line, says }];
  });
  const chosen = oneOf(draw, may);
  if (!chosen) return undefined;
  const order = all.filter((line) => lines.includes(line));
  return {
    lines: order.map((line) => (line === chosen.line ? { ...line, says: chosen.says } : line)),
    wrong: chosen.line.id,
    right: chosen.line.says,
  };
}
