import { unitOf } from '../../quantity';
import { unitOfName } from '../answer/named';
import { namesCompared } from '../condition/rules';
import type { Column, Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import { cellKey, type Input, type Inputs, type NumberInput } from '../value/values';
import type { OpenDecision, Setting } from './open';

/**
 * The values a fact may plausibly have, and the input for each. A number runs between two ends in
 * base units; several cells of a list run together, from 0 to 1; a choice has its options.
 */
export type Plausible =
  | {
      readonly kind: 'number';
      readonly from: number;
      readonly to: number;
      /** Of the one number that moves; absent where several cells do. */
      readonly unit?: string;
      readonly input: (at: number) => Input;
    }
  | {
      readonly kind: 'options';
      readonly options: readonly string[];
      readonly input: (option: string) => Input;
    };

/** The largest number of each unit that the case names or compares, in base units. */
export type Largest = ReadonlyMap<string, number>;

type Range = { readonly unit: string; readonly least: number; readonly most: number };

const factor = (unit: string): number => (unit === '' ? 1 : unitOf(unit).factor);

function* numbersIn(topic: Topic, inputs: Inputs): Generator<readonly [string, NumberInput]> {
  for (const [id, fact] of Object.entries(topic.facts)) {
    const input = inputs.get(id);
    if (input?.kind === 'number' && fact.kind === 'quantity') yield [fact.unit, input];
    if (input?.kind !== 'rows' || fact.kind !== 'rows') continue;
    for (const row of input.rows) {
      for (const [column, cell] of Object.entries(row)) {
        yield [fact.columns[column]?.unit ?? '', cell];
      }
    }
  }
}

export function largestKnown(
  { compiled, inputs }: Setting,
  run: Run,
  decisions: readonly OpenDecision[],
): Largest {
  const largest = new Map<string, number>();
  const note = (unit: string, value: number) => {
    if (Number.isFinite(value)) largest.set(unit, Math.max(value, largest.get(unit) ?? 0));
  };
  for (const [unit, cell] of numbersIn(compiled.topic, inputs)) if (!cell.open) note(unit, cell.hi);
  for (const { rule } of decisions) {
    for (const name of namesCompared(rule.conditions)) {
      const value = run.value(name);
      if (value.kind !== 'number') continue;
      note(unitOfName(compiled, name), value.lo);
      note(unitOfName(compiled, name), value.hi);
    }
  }
  return largest;
}

/**
 * The ends of what a number may plausibly be: what is known of it; where nothing is, from its
 * declared least to its declared most, or to twice the largest number of its unit that the case
 * names, if that is less.
 */
function ends(input: NumberInput, declared: Range, largest: Largest): [number, number] {
  const [least, most] = [declared.least, declared.most].map((end) => end * factor(declared.unit));
  const known = largest.get(declared.unit);
  // A place may lie on either side.
  const isEither = least !== undefined && least < 0 && known !== undefined;
  const from = isEither ? Math.max(least, -2 * known) : (least ?? 0);
  const top = known === undefined ? (most ?? 0) : Math.min(most ?? 0, 2 * known);
  if (input.open) return [from, top > from ? top : (most ?? 0)];
  if (input.bound === 'least') return [input.lo, top > input.lo ? top : input.hi];
  return [input.lo, input.hi];
}

const exact = (at: number): NumberInput => ({
  kind: 'number',
  lo: at,
  hi: at,
  status: 'known',
  open: false,
});

/** A cell that nobody filled. */
const untold: NumberInput = {
  kind: 'number',
  lo: 0,
  hi: Number.POSITIVE_INFINITY,
  status: 'silent',
  open: true,
};

type Cell = { readonly row: number; readonly column: string; readonly ends: [number, number] };

/** The cells of a list that a decision still moves with. */
function movingCells(
  list: string,
  rows: readonly Readonly<Record<string, NumberInput>>[],
  columns: Readonly<Record<string, Column>>,
  keys: readonly string[],
  largest: Largest,
): readonly Cell[] {
  return rows.flatMap((cells, row) =>
    Object.entries(columns).flatMap(([column, declared]) => {
      const name = `${list}.${column}`;
      const cell = cells[column] ?? untold;
      const moves = keys.includes(cellKey(name, row)) || (keys.includes(name) && cell.open);
      return moves ? [{ row, column, ends: ends(cell, declared, largest) }] : [];
    }),
  );
}

const nothingListed: Plausible = {
  kind: 'options',
  options: ['none'],
  input: () => ({ kind: 'rows', rows: [], status: 'known' }),
};

/** What a fact may plausibly be; undefined where there is nothing to vary. */
export function plausible(
  { compiled, inputs }: Setting,
  fact: string,
  keys: readonly string[],
  largest: Largest,
): Plausible | undefined {
  const declared = compiled.topic.facts[fact];
  const input = inputs.get(fact);
  if (input?.kind === 'among') {
    // What stands in where nobody said is one of all that may be told.
    const all = declared?.kind === 'choice' ? declared.options : ['yes', 'no'];
    const options = input.status === 'silent' ? all : input.options;
    return {
      kind: 'options',
      options,
      input: (only) => ({ ...input, options: [only], status: 'known' }),
    };
  }
  if (input?.kind === 'number' && declared?.kind === 'quantity') {
    const [from, to] = ends(input, declared, largest);
    return { kind: 'number', from, to, unit: declared.unit, input: exact };
  }
  if (declared?.kind !== 'rows') return undefined;
  // Of a list that nobody spoke of one may be told that there is nothing in it.
  if (input === undefined || input.status === 'silent') return nothingListed;
  if (input.kind !== 'rows') return undefined;
  const cells = movingCells(fact, input.rows, declared.columns, keys, largest);
  const [only, more] = cells;
  if (!only) return undefined;
  const withCells = (at: (cell: Cell) => number): Input => ({
    ...input,
    rows: input.rows.map((row, index) => {
      const set = cells.filter((cell) => cell.row === index);
      return { ...row, ...Object.fromEntries(set.map((cell) => [cell.column, exact(at(cell))])) };
    }),
  });
  if (!more) {
    const unit = declared.columns[only.column]?.unit ?? '';
    const [from, to] = only.ends;
    return { kind: 'number', from, to, unit, input: (at) => withCells(() => at) };
  }
  const between = ({ ends: [from, to] }: Cell, at: number) => from + at * (to - from);
  return { kind: 'number', from: 0, to: 1, input: (at) => withCells((cell) => between(cell, at)) };
}
