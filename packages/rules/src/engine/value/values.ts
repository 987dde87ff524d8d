import type { Interval } from '../../quantity';
import { add, anything, hull, multiply, point } from '../../quantity';

/**
 * Values on their way through the formulas, in base units.
 *
 * A number is a range together with its slopes: for each input that is itself a range, how fast the
 * number can change with it anywhere within the ranges. A slope that keeps one sign says at which
 * end of the input the number is least; see tighten.ts.
 */
export type Slopes = ReadonlyMap<string, Interval>;

export type NumberValue = {
  readonly kind: 'number';
  readonly lo: number;
  readonly hi: number;
  readonly slopes: Slopes;
};

/** May it hold, may it fail; and if both, which inputs decide. */
export type TruthValue = {
  readonly kind: 'truth';
  readonly yes: boolean;
  readonly no: boolean;
  readonly on: ReadonlySet<string>;
};

export type AmongValue = {
  readonly kind: 'among';
  readonly options: readonly string[];
  readonly on: ReadonlySet<string>;
};

export type Value = NumberValue | TruthValue | AmongValue;

export type Status = 'known' | 'unknown' | 'silent';

/** A number as given. `open`: nobody knows it and nothing stands in. */
export type NumberInput = {
  readonly kind: 'number';
  readonly lo: number;
  readonly hi: number;
  readonly status: Status;
  readonly open: boolean;
  /** “At least” or “at most” was said: the other end is as far away as it can be. */
  readonly bound?: 'least' | 'most';
};

export type AmongInput = {
  readonly kind: 'among';
  readonly options: readonly string[];
  readonly status: Status;
};

export type RowsInput = {
  readonly kind: 'rows';
  readonly rows: readonly Readonly<Record<string, NumberInput>>[];
  readonly status: Status;
};

export type Input = NumberInput | AmongInput | RowsInput;
export type Inputs = ReadonlyMap<string, Input>;

export const noSlopes: Slopes = new Map();
export const nothing: ReadonlySet<string> = new Set();

export const exactly = (value: number): NumberValue => ({
  kind: 'number',
  lo: value,
  hi: value,
  slopes: noSlopes,
});

export const settled = (yes: boolean): TruthValue => ({
  kind: 'truth',
  yes,
  no: !yes,
  on: nothing,
});

/** Rising without end and falling without end may come to anything. */
function together(a: Interval, b: Interval): Interval {
  const { lo, hi } = add(a, b);
  return Number.isNaN(lo) || Number.isNaN(hi) ? anything : { lo, hi };
}

/** The slopes of `a·ka + b·kb`, where the factors are ranges too. */
export function blend(a: Slopes, ka: Interval, b: Slopes, kb: Interval): Slopes {
  if (a.size === 0 && b.size === 0) return noSlopes;
  const made = new Map<string, Interval>();
  for (const [key, slope] of a) made.set(key, multiply(slope, ka));
  for (const [key, slope] of b) {
    const scaled = multiply(slope, kb);
    const before = made.get(key);
    made.set(key, before ? together(before, scaled) : scaled);
  }
  return made;
}

const flat = point(0);

/** Slopes of a value that is one of two. */
export function eitherSlopes(a: Slopes, b: Slopes): Slopes {
  if (a.size === 0 && b.size === 0) return noSlopes;
  const made = new Map<string, Interval>();
  for (const [key, slope] of a) made.set(key, hull(slope, b.get(key) ?? flat));
  for (const [key, slope] of b) if (!a.has(key)) made.set(key, hull(slope, flat));
  return made;
}

/** The same, when which of the two it is hangs on inputs: over those it may jump. */
export function jumpSlopes(slopes: Slopes, on: ReadonlySet<string>): Slopes {
  if (on.size === 0) return slopes;
  const made = new Map(slopes);
  for (const key of on) made.set(key, anything);
  return made;
}

export function joinOn(a: ReadonlySet<string>, b: ReadonlySet<string>): ReadonlySet<string> {
  if (a.size === 0) return b;
  if (b.size === 0) return a;
  return new Set([...a, ...b]);
}

/** The inputs a value really moves with. */
export function movedBy(value: Value): readonly string[] {
  if (value.kind !== 'number') return [...value.on];
  return [...value.slopes].filter(([, s]) => s.lo !== 0 || s.hi !== 0).map(([key]) => key);
}

/** `load.cargo.weight#2`: the cell of one row, as slopes name it. */
export const cellKey = (column: string, row: number): string => `${column}#${row}`;

/** The fact or column a slope's key belongs to. */
export const keyName = (key: string): string => {
  const mark = key.indexOf('#');
  return mark < 0 ? key : key.slice(0, mark);
};
