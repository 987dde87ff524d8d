import { unitOf } from '../../quantity';
import type { Fact, Topic } from '../define/shapes';
import type { Input, Inputs, NumberInput } from '../value/values';
import { plausiblyOff } from './off';

/** A number, or the numbers of one column of a list together, and how far off they may be. */
export type Varied = {
  readonly fact: string;
  /** `trailer.dryWeight`, or `trailer.cargo.weight`. */
  readonly name: string;
  readonly unit: string;
  /** How far off, in base units; of a column, all its rows together. */
  readonly off: number;
  /** The input moved by so many times that far. */
  readonly moved: (by: -1 | 1) => Input;
};

const isRange = ({ lo, hi }: NumberInput): boolean => lo !== hi;

/** Of a bound, what was said; halfway to what could be at all is nobody's guess. */
function middle(cell: NumberInput): NumberInput {
  if (cell.open || !isRange(cell)) return cell;
  const { lo, hi, bound } = cell;
  const at = bound === 'least' ? lo : bound === 'most' ? hi : (lo + hi) / 2;
  return { ...cell, lo: at, hi: at };
}

/** Every range at its middle; what is unknown stays so. */
export function atMiddle(inputs: Inputs): Inputs {
  return new Map(
    [...inputs].map(([id, input]): [string, Input] => {
      if (input.kind === 'number') return [id, middle(input)];
      if (input.kind !== 'rows') return [id, input];
      const rows = input.rows.map((row) =>
        Object.fromEntries(Object.entries(row).map(([column, cell]) => [column, middle(cell)])),
      );
      return [id, { ...input, rows }];
    }),
  );
}

const clipped = (value: number, least: number, most: number): number =>
  Math.min(Math.max(value, least), most);

type Bounds = { readonly unit: string; readonly least: number; readonly most: number };

function movedCell(cell: NumberInput, by: number, { unit, least, most }: Bounds): NumberInput {
  const factor = unit === '' ? 1 : unitOf(unit).factor;
  const at = clipped(cell.lo + by, least * factor, most * factor);
  return { ...cell, lo: at, hi: at };
}

/** A cell that is known and has a value of its own; defaults that nobody named are not doubted. */
const isTold = (cell: NumberInput): boolean =>
  !cell.open && cell.status === 'known' && cell.bound === undefined;

function variedFact(id: string, fact: Fact, input: Input, readFrom: string) {
  const varied: Varied[] = [];
  if (input.kind === 'number' && fact.kind === 'quantity' && isTold(input)) {
    const at = middle(input);
    const doubt = fact.exact ? 0 : plausiblyOff(readFrom, at.lo, fact.unit);
    const off = isRange(input) ? (input.hi - input.lo) / 2 : doubt;
    const moved = (by: -1 | 1) => movedCell(at, by * off, fact);
    if (off > 0) varied.push({ fact: id, name: id, unit: fact.unit, off, moved });
  }
  if (input.kind !== 'rows' || fact.kind !== 'rows') return varied;
  for (const [column, bounds] of Object.entries(fact.columns)) {
    const name = `${id}.${column}`;
    const offs = input.rows.map((row) => {
      const cell = row[column];
      if (!cell || !isTold(cell)) return 0;
      if (isRange(cell)) return (cell.hi - cell.lo) / 2;
      return fact.exact ? 0 : plausiblyOff(readFrom, cell.lo, bounds.unit);
    });
    const off = offs.reduce((a, b) => a + b, 0);
    if (off === 0) continue;
    const moved = (by: -1 | 1): Input => ({
      ...input,
      rows: input.rows.map((row, i) => {
        const cell = row[column];
        return cell && isTold(cell)
          ? { ...row, [column]: movedCell(middle(cell), by * (offs[i] ?? 0), bounds) }
          : row;
      }),
    });
    varied.push({ fact: id, name, unit: bounds.unit, off, moved });
  }
  return varied;
}

/** Everything told that may be off, with how far. */
export function variedOf(
  topic: Topic,
  inputs: Inputs,
  readFrom: Readonly<Record<string, string>>,
): readonly Varied[] {
  return Object.entries(topic.facts).flatMap(([id, fact]) => {
    const input = inputs.get(id);
    return input ? variedFact(id, fact, input, readFrom[id] ?? '') : [];
  });
}
