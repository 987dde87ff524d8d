import type { Less, Shift } from '../define/changes';
import type { Column, QuantityFact } from '../define/shapes';
import type { NumberInput } from '../value/values';
import { edited, exactInput, withCell } from './edits';
import {
  exactly,
  factorOf,
  inUnit,
  isPointInput,
  type Line,
  type Place,
  rowNameIn,
  rowsOf,
  tidy,
  toldOf,
  type Way,
} from './way';

/** Along a line of one number: a fact of its own, or the cell of a row. */
function along(
  change: Less | Shift,
  input: NumberInput,
  unit: string,
  line: Line,
  at: { readonly row?: number; readonly rowName: string },
): Way {
  const factor = factorOf(unit);
  const { fact, column } = change;
  const { row } = at;
  return {
    change,
    ...at,
    unit,
    line,
    from: toldOf(input, unit),
    to: (x) => exactly(x, unit),
    edit: (inputs, x) => {
      const made = exactInput(x * factor);
      return row === undefined || column === undefined
        ? edited(inputs, fact, made)
        : withCell(inputs, fact, row, column, made);
    },
    size: (x) => (input.open ? x * factor : Math.abs(input.hi - x * factor)),
  };
}

export function lessOf(place: Place, change: Less): readonly Way[] {
  const { fact, column, step } = change;
  if (column !== undefined) {
    return rowsOf(place, fact, column).flatMap(({ cell, index, want }) => {
      const start = inUnit(cell.lo, want.unit);
      // The whole row is another change: it is left out, and no row of nothing stays behind.
      if (!isPointInput(cell) || start <= step) return [];
      const line: Line = { start, ends: [step], startCounts: false, step };
      const rowName = rowNameIn(place, fact, index);
      return [along(change, cell, want.unit, line, { row: index, rowName })];
    });
  }
  const input = place.inputs.get(fact);
  const declared = place.bench.topic.facts[fact];
  if (input?.kind !== 'number' || declared?.kind !== 'quantity' || input.open) return [];
  const start = inUnit(input.lo, declared.unit);
  const startCounts = input.lo < input.hi;
  if (start <= declared.least && !startCounts) return [];
  const line: Line = { start, ends: [declared.least], startCounts, step };
  return [along(change, input, declared.unit, line, { rowName: '' })];
}

/** How far a place or setting may go, in its unit; undefined where that cannot be told. */
function reach(
  { inputs }: Place,
  { within }: Shift,
  want: Column | QuantityFact,
): readonly [least: number, most: number] | undefined {
  if (!within) return [want.least, want.most];
  if (within.of === undefined) return [within.least, within.most];
  const of = inputs.get(within.of);
  if (of?.kind !== 'number' || !isPointInput(of)) return undefined;
  const length = of.lo / factorOf(want.unit);
  return [tidy(within.least * length), tidy(within.most * length)];
}

function lineBetween(start: number, [least, most]: readonly [number, number], step: number): Line {
  const ends = start < least ? [most] : start > most ? [least] : [most, least];
  return { start, ends: ends.filter((end) => end !== start), startCounts: false, step };
}

export function shifting(place: Place, change: Shift): readonly Way[] {
  const { fact, column, step } = change;
  if (column !== undefined) {
    return rowsOf(place, fact, column).flatMap(({ cell, index, want }) => {
      const between = reach(place, change, want);
      if (!isPointInput(cell) || !between) return [];
      const line = lineBetween(inUnit(cell.lo, want.unit), between, step);
      const rowName = rowNameIn(place, fact, index);
      return [along(change, cell, want.unit, line, { row: index, rowName })];
    });
  }
  const input = place.inputs.get(fact);
  const declared = place.bench.topic.facts[fact];
  if (input?.kind !== 'number' || declared?.kind !== 'quantity') return [];
  const between = reach(place, change, declared);
  if (!between) return [];
  const [least, most] = between;
  const line = isPointInput(input)
    ? lineBetween(inUnit(input.lo, declared.unit), between, step)
    : { start: least, ends: [most], startCounts: true, step };
  return [along(change, input, declared.unit, line, { rowName: '' })];
}
