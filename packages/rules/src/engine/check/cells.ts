import {
  type Dimension,
  dimensionName,
  findUnit,
  plain,
  readQuantity,
  sameDimension,
  show,
  toBase,
  type Unit,
  unitOf,
  unitSymbols,
  wasMisread,
} from '../../quantity';
import type { Column } from '../define/shapes';
import type { NumberInput } from '../value/values';
import { asWritten, type CellGiven, described, isCell } from './given';
import { nearest } from './near';
import type { Problem } from './problem';

export type Place = {
  readonly fact: string;
  readonly row?: number;
  readonly column?: string;
  readonly columnId?: string;
};
export type Note = (problem: Problem) => void;

/** How a quantity of a unit is written, for messages. */
export function example(unit: string): string {
  return unit === '' ? 'a count such as “2”' : `a number with its unit, such as “${sample(unit)}”`;
}

const samples: Readonly<Record<string, string>> = {
  lb: '1,250 lb',
  gal: '12 gal',
  in: '48 in',
  ft: '18 ft',
  '%': '50 %',
  'ft²': '60 ft²',
};
const sample = (unit: string): string => samples[unit] ?? `10 ${unit}`;

/** The same for a program, which may give data too. */
const exampleOfData = (unit: string): string =>
  unit === ''
    ? 'a count such as 2 or “2”'
    : `text such as “${sample(unit)}”, { value, unit } or { lo, hi, unit } with numbers and a unit`;

/** “1” is the unit of a share, which nobody who wrote letters meant. */
const unitsMeant = unitSymbols.filter((symbol) => symbol !== '1');

type Quantity = Pick<Column, 'unit' | 'least' | 'most'>;

function dimensionOf(unit: string): Dimension {
  return unit === '' ? plain : unitOf(unit).dimension;
}

const differences: readonly string[] = ['F°', 'C°'];

/** A difference of temperature is no temperature, though both have one dimension. */
const fits = ({ symbol, dimension }: Unit, want: string): boolean =>
  sameDimension(dimension, dimensionOf(want)) &&
  differences.includes(symbol) === differences.includes(want);

const kindOf = (unit: string): string =>
  unit === '' ? 'a plain count' : `a ${dimensionName(dimensionOf(unit))}, as “${sample(unit)}” is`;

/** What a cell says, in its own unit. */
type Told = {
  readonly lo: number;
  readonly hi: number;
  readonly unit: Unit;
  /** “About” was said: what then lies beyond what can be is not meant. */
  readonly about?: boolean;
};

/** A number in base units, with what lies outside the sensible refused. */
function bounded({ lo, hi, unit, about }: Told, want: Quantity, place: Place, note: Note) {
  const target = want.unit === '' ? unitOf('1') : unitOf(want.unit);
  const [least, most] = [toBase(want.least, target), toBase(want.most, target)];
  const slack = 1e-9 * Math.max(1, Math.abs(least), Math.abs(most));
  const ends = { lo: toBase(lo, unit), hi: toBase(hi, unit) };
  const middle = (ends.lo + ends.hi) / 2;
  const meant =
    about && middle >= least - slack && middle <= most + slack
      ? { lo: Math.max(ends.lo, least), hi: Math.min(ends.hi, most) }
      : ends;
  // Of “at least” and “at most” the other end is as far away as it can be.
  const [from, to] = [lo === -Infinity ? least : meant.lo, hi === Infinity ? most : meant.hi];
  if (from < least - slack || to > most + slack || from > to + slack) {
    const symbol = unit.symbol === '1' && want.unit === '' ? '' : unit.symbol;
    const found = Number.isFinite(lo)
      ? Number.isFinite(hi)
        ? { lo, hi }
        : { lo, hi: lo }
      : { lo: hi, hi };
    const wanted = show({ lo: want.least, hi: want.most }, want.unit);
    note({ ...place, code: 'out-of-range', found: show(found, symbol), wanted });
    return undefined;
  }
  const bound: NumberInput['bound'] =
    hi === Infinity ? 'least' : lo === -Infinity ? 'most' : undefined;
  return { lo: from, hi: to, ...(bound && { bound }) };
}

/** A unit by name, held against the one that is wanted. */
function unitGiven(symbol: string, found: string, want: Quantity, place: Place, note: Note) {
  const unit = findUnit(symbol === '' ? '1' : symbol);
  if (!unit) {
    const near = nearest(symbol, unitsMeant);
    note({
      ...place,
      code: 'no-such-unit',
      found: symbol.slice(0, 40),
      wanted: example(want.unit),
      ...(near && { near }),
    });
  } else if (fits(unit, want.unit)) return unit;
  else if (symbol === '') note({ ...place, code: 'no-unit', found, wanted: example(want.unit) });
  else note({ ...place, code: 'wrong-unit', found, wanted: kindOf(want.unit) });
  return undefined;
}

function readData(
  given: Exclude<CellGiven, string>,
  want: Quantity,
  place: Place,
  note: Note,
): Told | undefined {
  const found = asWritten(given);
  const unit = unitGiven(typeof given === 'number' ? '' : given.unit, found, want, place, note);
  if (!unit) return undefined;
  if (typeof given === 'number') return { lo: given, hi: given, unit };
  if ('value' in given) return { lo: given.value, hi: given.value, unit };
  const [lo, hi] = [given.lo ?? -Infinity, given.hi ?? Infinity];
  if (lo <= hi) return { lo, hi, unit };
  note({ ...place, code: 'back-to-front', found, wanted: example(want.unit) });
  return undefined;
}

function readText(given: string, want: Quantity, place: Place, note: Note): Told | undefined {
  const wanted = example(want.unit);
  const found = given.trim();
  const read = readQuantity(given);
  if (wasMisread(read)) {
    const near = read.code === 'no-such-unit' ? nearest(read.found, unitsMeant) : undefined;
    note({ ...place, code: read.code, found: read.found, wanted, ...(near && { near }) });
    return undefined;
  }
  if (read.unclear) {
    note({ ...place, code: 'two-ways', found, wanted });
    return undefined;
  }
  const { from, to, within = 0, about = false } = read;
  const unit = unitGiven(read.unit?.symbol ?? '', found, want, place, note);
  return unit && { lo: from - within, hi: to + within, unit, about };
}

const isOpen = (given: CellGiven): boolean =>
  typeof given === 'string'
    ? given.trim().toLowerCase() === 'unknown'
    : typeof given === 'object' && 'lo' in given && given.lo === null && given.hi === null;

export function openNumber(want: Quantity, status: 'unknown' | 'silent'): NumberInput {
  const factor = want.unit === '' ? 1 : unitOf(want.unit).factor;
  // Nobody knows it: anything from its least up, with no upper end, unless nature sets one.
  const hi = want.unit === '%' ? want.most * factor : Infinity;
  const lo = want.least < 0 ? -Infinity : want.least > 0 ? 0 : want.least * factor;
  return { kind: 'number', lo, hi, status, open: true };
}

/** One number as given, of a fact of its own or in a row of a list. */
export function readNumber(given: unknown, want: Quantity, at: Place, note: Note): NumberInput {
  // Every refusal says as data too what would be right.
  const place = { ...at, unit: want.unit, least: want.least, most: want.most };
  const unknown = openNumber(want, 'unknown');
  if (!isCell(given)) {
    const wanted = exampleOfData(want.unit);
    note({ ...place, code: 'not-plain', found: described(given), wanted });
    return unknown;
  }
  if (isOpen(given)) return unknown;
  const told =
    typeof given === 'string'
      ? readText(given, want, place, note)
      : readData(given, want, place, note);
  const ends = told && bounded(told, want, place, note);
  return ends ? { kind: 'number', ...ends, status: 'known', open: false } : unknown;
}
