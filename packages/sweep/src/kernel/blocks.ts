import type { Like, Side } from './form';
import type { Ref } from './graph';
import { always, type Bound, bound, type Operand, oneOf, placeByPlace } from './lanes';
import type { Program } from './program';

/** What comes out for pairs, side by side. */
export type Found = {
  readonly levels: Uint8Array;
  /** The place of the binding limit among the topic's, or -1. */
  readonly bindings: Int8Array;
  readonly leftLo: Float64Array;
  readonly leftHi: Float64Array;
};

export const roomFor = (pairs: number): Found => ({
  levels: new Uint8Array(pairs),
  bindings: new Int8Array(pairs),
  leftLo: new Float64Array(pairs),
  leftHi: new Float64Array(pairs),
});

/** Written where a kernel cannot tell, and the engine itself must be asked. */
export const askEngine = 255;

/** Places gone through at once: what is reckoned in between stays close by. */
const block = 1024;

/** What a stage hands on, place by place. */
export function handedOn(program: Program, side: Side, { numbers, places }: Like) {
  const { graph, stages } = program;
  const kept = new Map<Ref, Float64Array>();
  const steps = stages[side].own;
  const operand = (ref: Ref): Operand => {
    const step = graph.steps[ref];
    if (step?.op === 'constant') return always(step.value);
    return placeByPlace(kept.get(ref) ?? new Float64Array(places.length));
  };
  for (const ref of steps) {
    const step = graph.steps[ref];
    if (!step) continue;
    if (step.op === 'input') {
      const told = numbers.get(step.name);
      if (!told) throw new Error(`There is nothing for “${step.name}”.`);
      kept.set(ref, told);
      continue;
    }
    const to = new Float64Array(places.length);
    bound(step, to, operand)(places.length);
    kept.set(ref, to);
  }
  return new Map(stages[side].kept.map((ref) => [ref, kept.get(ref) ?? new Float64Array(0)]));
}

export type Judge = (row: number, into: Found) => void;

/**
 * A program gone through step by step, a block of columns at a time: no code is made for it, so that
 * it runs wherever plain code does.
 */
export function judgeInBlocks(
  program: Program,
  rows: Like,
  columns: Like,
  withRoom: boolean,
): Judge {
  const { graph, out, stages } = program;
  const count = columns.places.length;
  const kept = {
    rows: handedOn(program, 'rows', rows),
    columns: handedOn(program, 'columns', columns),
  };
  const operands = new Map<Ref, Operand>();
  const ofRows: Operand[] = [];
  const ofColumns: Operand[] = [];
  const operand = (ref: Ref): Operand => {
    const before = operands.get(ref);
    if (before) return before;
    const step = graph.steps[ref];
    const [row, column] = [kept.rows.get(ref), kept.columns.get(ref)];
    const found =
      step?.op === 'constant'
        ? always(step.value)
        : row
          ? oneOf(row, 0)
          : placeByPlace(column ?? new Float64Array(block));
    if (row) ofRows.push(found);
    else if (column) ofColumns.push(found);
    operands.set(ref, found);
    return found;
  };
  const steps: Bound[] = stages.pairs.own.flatMap((ref) => {
    const step = graph.steps[ref];
    return step ? [bound(step, operand(ref).of, operand)] : [];
  });
  const [least, most] = [operand(out.least), operand(out.most)];
  const room = withRoom
    ? {
        binding: operand(out.binding),
        lo: operand(out.left.lo),
        hi: operand(out.left.hi),
        unsure: operand(out.unsure),
      }
    : undefined;
  const at = ({ of, by, from }: Operand, i: number): number => of[(i & by) + from] ?? Number.NaN;
  return (row, into) => {
    for (const each of ofRows) each.from = row;
    for (let from = 0; from < count; from += block) {
      for (const each of ofColumns) each.from = from;
      const n = Math.min(block, count - from);
      for (const step of steps) step(n);
      for (let i = 0; i < n; i += 1) {
        const level = at(least, i);
        into.levels[from + i] = level === at(most, i) ? level : askEngine;
      }
      if (!room) continue;
      for (let i = 0; i < n; i += 1) {
        if (at(room.unsure, i) !== 0) into.levels[from + i] = askEngine;
        into.bindings[from + i] = at(room.binding, i);
        into.leftLo[from + i] = at(room.lo, i);
        into.leftHi[from + i] = at(room.hi, i);
      }
    }
  };
}
