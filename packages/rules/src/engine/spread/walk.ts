import type { Compiled } from '../formula/compile';
import { draws } from '../formula/draws';
import type { Drawing } from '../formula/grammar/kind';
import type { KindName, Node, NodeOf } from '../formula/grammar/nodes';
import type { Scope } from '../formula/grammar/scope';
import { reckon } from '../formula/reckon';
import type { Run } from '../formula/run';
import {
  asNumbers,
  asTruths,
  everywhere,
  type Lanes,
  NotOverLanes,
  type Numbers,
  type Program,
} from '../value/lanes';
import { movedBy, type Value } from '../value/values';

/** What a walk reads of its surroundings. `drawn` has the lanes of what is drawn, by key. */
export type Setting = {
  readonly compiled: Compiled;
  /** The case reckoned over its whole ranges: what does not move with a draw is taken from it. */
  readonly run: Run;
  readonly program: Program;
  readonly drawn: ReadonlyMap<string, Numbers>;
  /** The lanes of a name that has no way of its own here, reckoned draw by draw. */
  readonly slowly: (name: string) => Lanes;
};

/** The same in every draw: settled, or moved by unknown facts alone. */
export function isFixed(value: Value, isDrawn: (key: string) => boolean): boolean {
  if (value.kind === 'number' && value.lo === value.hi) return true;
  if (value.kind === 'truth' && value.yes !== value.no) return true;
  if (value.kind === 'among' && value.options.length === 1) return true;
  const moved = movedBy(value);
  return moved.length > 0 && !moved.some(isDrawn);
}

/**
 * Turns formulas into steps over lanes; each name once. A formula with a kind that has no way over
 * lanes, such as a table or a simulation, is reckoned draw by draw instead.
 */
export function walker(setting: Setting): (name: string) => Lanes {
  const { compiled, run, program, drawn, slowly } = setting;
  const kept = new Map<string, Lanes>();
  const isDrawn = (key: string) => drawn.has(key);

  const named = (name: string): Lanes => {
    const before = kept.get(name);
    if (before) return before;
    const found = find(name);
    kept.set(name, found);
    return found;
  };

  const find = (name: string): Lanes => {
    const value = run.value(name);
    if (isFixed(value, isDrawn)) return everywhere(program, value);
    const lanesDrawn = drawn.get(name);
    if (lanesDrawn) return lanesDrawn;
    const formula = compiled.formulas.get(name);
    if (!formula) return slowly(name);
    try {
      return lanes(formula.node, run.scope);
    } catch (problem) {
      if (!(problem instanceof NotOverLanes)) throw problem;
      return slowly(name);
    }
  };

  const lanes = <K extends KindName>(
    node: NodeOf<K>,
    scope: Scope,
    place?: Drawing['place'],
  ): Lanes => {
    const whole = reckon(node, scope);
    if (isFixed(whole, isDrawn)) return everywhere(program, whole);
    const drawing = (around: Scope, row: Drawing['place']): Drawing => {
      const part = (each: Node) => lanes(each, around, row);
      return {
        program,
        scope: around,
        reckon,
        whole,
        place: row,
        drawn,
        named,
        part,
        numbers: (each) => asNumbers(part(each)),
        truths: (each) => asTruths(program, part(each)),
        inRow: (inner) => drawing(around.inRow(inner.list, inner.row), inner),
      };
    };
    return draws[node.kind](node, drawing(scope, place));
  };

  return named;
}
