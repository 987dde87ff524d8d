import { towFit } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { type Interval, point } from '@tarebook/rules/quantity';
import { compiledOf, reckoned } from '../../packages/rules/src/engine/answer/answer';
import { inBase, parametersOn } from '../../packages/rules/src/engine/answer/parameters';
import { type Run, run } from '../../packages/rules/src/engine/formula/run';
import {
  cellKey,
  type Input,
  type NumberInput,
} from '../../packages/rules/src/engine/value/values';
import { givenOf } from '../differential/given';
import type { PlainCase } from '../differential/plain-case';

const topic: Topic = towFit;
const asOf = '2026-11-01';
const parameters = inBase(parametersOn(topic, asOf), asOf);

/** Some inputs set: numbers by their key, choices by their option. */
type Held = { readonly pins: Map<string, Interval>; readonly inputs: Map<string, Input> };

/** One number or choice of a case that may move: at 0 its least, at 1 its most. */
type Handle = (held: Held, share: number) => void;

/** What stands in for the most of a number that has no upper end. */
const farOut = 20_000;

function numberHandle(key: string, cell: NumberInput): Handle {
  const least = Number.isFinite(cell.lo) ? cell.lo : -farOut;
  // Nothing is divided by what nobody knows: no axle at all is none.
  const lo = cell.open && least === 0 ? 1e-3 : least;
  const hi = Number.isFinite(cell.hi) ? cell.hi : Math.max(0, lo) + farOut;
  return ({ pins }, share) => {
    pins.set(key, point(share === 1 ? hi : lo + share * (hi - lo)));
  };
}

function handlesOf(all: ReadonlyMap<string, Input>): Handle[] {
  const handles: Handle[] = [];
  for (const [id, input] of all) {
    if (input.kind === 'number' && input.lo !== input.hi) handles.push(numberHandle(id, input));
    if (input.kind === 'among' && input.options.length > 1) {
      const { options } = input;
      handles.push(({ inputs }, share) => {
        const at = Math.min(options.length - 1, Math.floor(share * options.length));
        inputs.set(id, { ...input, options: [options[at] ?? ''] });
      });
    }
    if (input.kind !== 'rows') continue;
    input.rows.forEach((cells, row) => {
      for (const [column, cell] of Object.entries(cells)) {
        if (cell.lo !== cell.hi) handles.push(numberHandle(cellKey(`${id}.${column}`, row), cell));
      }
    });
  }
  return handles;
}

/** A case with ranges, its values, and its values at any point of the ranges (shares, 0 to 1). */
export type Rig = {
  readonly whole: Run;
  readonly size: number;
  readonly at: (shares: readonly number[]) => Run;
};

export function rigOf(plain: PlainCase): Rig {
  const { run: whole, inputs } = reckoned(topic, { facts: givenOf(plain) }, asOf);
  const handles = handlesOf(inputs);
  // A number held still does not become known by it: the whole case keeps its word on that.
  const at = (shares: readonly number[]): Run => {
    const held: Held = { pins: new Map(), inputs: new Map(inputs) };
    handles.forEach((handle, i) => {
      handle(held, shares[i] ?? 0);
    });
    return run(compiledOf(topic), held.inputs, parameters, held.pins, whole);
  };
  return { whole, size: handles.length, at };
}
