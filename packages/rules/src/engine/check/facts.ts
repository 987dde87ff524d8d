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
import type { Column, Fact, Topic } from '../define/shapes';
import type { AmongInput, Input, Inputs, NumberInput, RowsInput } from '../value/values';
import { type CellGiven, isCell, isRows } from './given';
import { nearest } from './near';
import type { Problem } from './problem';

type Place = { readonly fact: string; readonly row?: number; readonly column?: string };
type Note = (problem: Problem) => void;

/** How a quantity of a unit is written, for messages. */
function example(unit: string): string {
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

type Quantity = Pick<Column, 'unit' | 'least' | 'most'>;

function dimensionOf(unit: string): Dimension {
  return unit === '' ? plain : unitOf(unit).dimension;
}

const differences: readonly string[] = ['F°', 'C°'];

/** A difference of temperature is no temperature, though both have one dimension. */
const fits = ({ symbol, dimension }: Unit, want: string): boolean =>
  sameDimension(dimension, dimensionOf(want)) &&
  differences.includes(symbol) === differences.includes(want);

/** Ends in `unit`, in base units, with what lies outside the sensible refused. */
function bounded(lo: number, hi: number, unit: Unit, want: Quantity, place: Place, note: Note) {
  const target = want.unit === '' ? unitOf('1') : unitOf(want.unit);
  const ends = { lo: toBase(lo, unit), hi: toBase(hi, unit) };
  const [least, most] = [toBase(want.least, target), toBase(want.most, target)];
  const slack = 1e-9 * Math.max(1, Math.abs(least), Math.abs(most));
  if (ends.lo < least - slack || ends.hi > most + slack) {
    const found = show({ lo, hi }, unit.symbol === '1' && want.unit === '' ? '' : unit.symbol);
    const wanted = show({ lo: want.least, hi: want.most }, want.unit);
    note({ ...place, code: 'out-of-range', found, wanted });
    return undefined;
  }
  return ends;
}

function readCell(given: CellGiven, want: Quantity, place: Place, note: Note) {
  const wanted = example(want.unit);
  if (typeof given !== 'string') {
    const unit = findUnit(given.unit === '' ? '1' : given.unit);
    if (!unit || !fits(unit, want.unit)) {
      note({ ...place, code: 'wrong-unit', found: given.unit, wanted: kindOf(want.unit) });
      return undefined;
    }
    if (!(given.lo <= given.hi)) {
      note({ ...place, code: 'back-to-front', found: `${given.lo}–${given.hi}`, wanted });
      return undefined;
    }
    return bounded(given.lo, given.hi, unit, want, place, note);
  }
  const read = readQuantity(given);
  if (wasMisread(read)) {
    const near = read.code === 'no-such-unit' ? nearest(read.found, unitSymbols) : undefined;
    note({ ...place, code: read.code, found: read.found, wanted, ...(near && { near }) });
    return undefined;
  }
  if (read.unclear) {
    note({ ...place, code: 'two-ways', found: given.trim(), wanted });
    return undefined;
  }
  const { from, to, within = 0 } = read;
  if (!read.unit && want.unit !== '') {
    note({ ...place, code: 'no-unit', found: given.trim(), wanted });
    return undefined;
  }
  const unit = read.unit ?? unitOf('1');
  if (!fits(unit, want.unit)) {
    note({ ...place, code: 'wrong-unit', found: given.trim(), wanted: kindOf(want.unit) });
    return undefined;
  }
  return bounded(from - within, to + within, unit, want, place, note);
}

const kindOf = (unit: string): string =>
  unit === '' ? 'a plain count' : `a ${dimensionName(dimensionOf(unit))}, as “${sample(unit)}” is`;

const isUnknown = (given: unknown): boolean =>
  typeof given === 'string' && given.trim().toLowerCase() === 'unknown';

function openNumber(want: Quantity, status: 'unknown' | 'silent'): NumberInput {
  const factor = want.unit === '' ? 1 : unitOf(want.unit).factor;
  // Nobody knows it: anything from its least up, with no upper end, unless nature sets one.
  const hi = want.unit === '%' ? want.most * factor : Infinity;
  const lo = want.least < 0 ? -Infinity : want.least > 0 ? 0 : want.least * factor;
  return { kind: 'number', lo, hi, status, open: true };
}

function readNumber(given: CellGiven, want: Quantity, place: Place, note: Note): NumberInput {
  if (isUnknown(given)) return openNumber(want, 'unknown');
  const ends = readCell(given, want, place, note);
  return ends
    ? { kind: 'number', ...ends, status: 'known', open: false }
    : openNumber(want, 'unknown');
}

function readOption(
  given: unknown,
  options: readonly string[],
  fact: string,
  note: Note,
): AmongInput {
  if (isUnknown(given)) return { kind: 'among', options, status: 'unknown' };
  const text = typeof given === 'string' ? given.trim() : '';
  const option = options.find((each) => each === text.toLowerCase());
  if (option) return { kind: 'among', options: [option], status: 'known' };
  const wanted = [...options, 'unknown'].join(', ');
  const near = nearest(text, options);
  const found = typeof given === 'string' ? text.slice(0, 60) : 'something else';
  note({ code: 'no-such-option', fact, found, wanted, ...(near && { near }) });
  return { kind: 'among', options, status: 'unknown' };
}

/** A loading list has a tenth of it; what is reckoned for each row grows with the rows. */
const mostRows = 100;

function readRows(
  given: unknown,
  id: string,
  fact: Fact & { kind: 'rows' },
  note: Note,
): RowsInput {
  if (!isRows(given)) {
    const wanted = `rows with the columns ${Object.keys(fact.columns).join(', ')}`;
    note({ code: 'not-rows', fact: id, found: typeof given, wanted });
    return { kind: 'rows', rows: [], status: 'unknown' };
  }
  if (given.length > mostRows) {
    note({ code: 'too-many-rows', fact: id, found: `${given.length}`, wanted: `${mostRows}` });
    return { kind: 'rows', rows: [], status: 'unknown' };
  }
  const rows = given.map((row, index) => {
    const cells: Record<string, NumberInput> = {};
    const at = { fact: id, row: index + 1 };
    for (const column of Object.keys(row)) {
      if (column === 'label' || Object.hasOwn(fact.columns, column)) continue;
      const wanted = Object.keys(fact.columns).join(', ');
      note({ ...at, code: 'no-such-column', found: column, wanted });
    }
    for (const [column, want] of Object.entries(fact.columns)) {
      const cell = row[column];
      const place = { ...at, column: want.label };
      if (cell !== undefined && cell !== '') cells[column] = readNumber(cell, want, place, note);
      else {
        cells[column] = openNumber(want, 'silent');
        if (want.required) {
          note({
            ...place,
            code: 'missing-cell',
            found: '',
            wanted: `${example(want.unit)}, or unknown`,
          });
        }
      }
    }
    return cells;
  });
  return { kind: 'rows', rows, status: 'known' };
}

function silentInput(fact: Fact): Input {
  switch (fact.kind) {
    case 'rows':
      return { kind: 'rows', rows: [], status: 'silent' };
    case 'quantity': {
      if (!fact.silent) return openNumber(fact, 'silent');
      const value = fact.silent.value * (fact.unit === '' ? 1 : unitOf(fact.unit).factor);
      return { kind: 'number', lo: value, hi: value, status: 'silent', open: false };
    }
    case 'choice':
      return {
        kind: 'among',
        options: fact.silent ? [fact.silent.value] : fact.options,
        status: 'silent',
      };
    case 'yes-no':
      return {
        kind: 'among',
        options: fact.silent ? [fact.silent.value] : ['yes', 'no'],
        status: 'silent',
      };
  }
}

function readFact(given: unknown, id: string, fact: Fact, note: Note): Input {
  switch (fact.kind) {
    case 'rows':
      return readRows(given, id, fact, note);
    case 'choice':
      return readOption(given, fact.options, id, note);
    case 'yes-no':
      return readOption(given, ['yes', 'no'], id, note);
    case 'quantity': {
      if (isCell(given)) return readNumber(given, fact, { fact: id }, note);
      note({ code: 'not-plain', fact: id, found: typeof given, wanted: example(fact.unit) });
      return openNumber(fact, 'unknown');
    }
  }
}

export type Read = { readonly inputs: Inputs; readonly problems: readonly Problem[] };

/** Reads all facts of a case against its topic; all problems are told at once. */
export function readFacts(topic: Topic, given: Readonly<Record<string, unknown>>): Read {
  const problems: Problem[] = [];
  const note: Note = (problem) => problems.push(problem);
  for (const id of Object.keys(given)) {
    if (Object.hasOwn(topic.facts, id)) continue;
    const near = nearest(id, Object.keys(topic.facts));
    note({ code: 'no-such-fact', fact: id, found: id, wanted: topic.id, ...(near && { near }) });
  }
  const inputs = new Map<string, Input>();
  for (const [id, fact] of Object.entries(topic.facts)) {
    const mentioned = Object.hasOwn(given, id) && given[id] !== undefined;
    inputs.set(id, mentioned ? readFact(given[id], id, fact, note) : silentInput(fact));
  }
  return { inputs, problems };
}
