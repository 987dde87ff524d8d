import type { Compiled } from '../formula/compile';
import type { Node } from '../formula/nodes';
import { reckon, type Scope } from '../formula/reckon';
import type { Run } from '../formula/run';
import { asTruth } from '../formula/truth';
import { cellKey, movedBy, type Value } from '../formula/values';
import {
  arithmetic,
  asNumbers,
  asTruths,
  compareNumbers,
  constant,
  everywhere,
  extreme,
  type Lanes,
  NotOverLanes,
  type Numbers,
  negative,
  type Program,
} from './lanes';
import { chooseNumbers, chooseTruths, combine, opposite } from './truths';

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

type Place = { readonly list: string; readonly row: number };

/** The same in every draw: settled, or moved by unknown facts alone. */
export function isFixed(value: Value, isDrawn: (key: string) => boolean): boolean {
  if (value.kind === 'number' && value.lo === value.hi) return true;
  if (value.kind === 'truth' && value.yes !== value.no) return true;
  if (value.kind === 'among' && value.options.length === 1) return true;
  const moved = movedBy(value);
  return moved.length > 0 && !moved.some(isDrawn);
}

/**
 * Turns formulas into steps over lanes; each name once. A formula with a kind that has no case here,
 * such as a table or a simulation, is reckoned draw by draw instead: a new kind is right before it
 * is fast.
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

  const all = (nodes: readonly Node[], scope: Scope, place?: Place): readonly Numbers[] =>
    nodes.map((node) => asNumbers(lanes(node, scope, place)));

  const lanes = (node: Node, scope: Scope, place?: Place): Lanes => {
    const whole = reckon(node, scope);
    if (isFixed(whole, isDrawn)) return everywhere(program, whole);
    const inner = (each: Node) => lanes(each, scope, place);
    const truths = (each: Node) => asTruths(program, inner(each));
    switch (node.kind) {
      case 'name': {
        if (!place || !node.id.startsWith(`${place.list}.`)) return named(node.id);
        return drawn.get(cellKey(node.id, place.row)) ?? everywhere(program, whole);
      }
      case 'negative':
        return negative(program, asNumbers(inner(node.of)));
      case 'arithmetic': {
        const under = node.op === '/' ? reckon(node.b, scope) : undefined;
        const mayBeZero = under?.kind === 'number' && under.lo <= 0 && under.hi >= 0;
        const [a, b] = [asNumbers(inner(node.a)), asNumbers(inner(node.b))];
        return arithmetic(program, node.op, a, b, mayBeZero);
      }
      case 'compare':
        return compareNumbers(program, node.op, asNumbers(inner(node.a)), asNumbers(inner(node.b)));
      case 'both':
      case 'either':
        return combine(program, node.kind, truths(node.a), truths(node.b));
      case 'not':
        return opposite(truths(node.of));
      case 'choose':
        return choose(node, scope, place);
      case 'min':
      case 'max':
        return all(node.of, scope, place).reduce((a, b) => extreme(program, node.kind, a, b));
      case 'largestKnown': {
        const known = node.of.filter((each) => scope.partKnown(each, reckon(each, scope)));
        if (known.length === 0) return everywhere(program, whole);
        return all(known, scope, place).reduce((a, b) => extreme(program, 'max', a, b));
      }
      case 'sum': {
        let total = constant(program, 0);
        for (let row = 0; row < scope.rows(node.list); row += 1) {
          const at = { list: node.list, row };
          const each = asNumbers(lanes(node.of, scope.inRow(node.list, row), at));
          total = arithmetic(program, '+', total, each, false);
        }
        return total;
      }
      case 'needs':
        return inner(node.of);
      default:
        throw new NotOverLanes(node.kind);
    }
  };

  const choose = (node: Node & { kind: 'choose' }, scope: Scope, place?: Place): Lanes => {
    const decision = asTruth(reckon(node.when, scope));
    if (!decision.no) return lanes(node.chosen, scope, place);
    if (!decision.yes) return lanes(node.otherwise, scope, place);
    const when = asTruths(program, lanes(node.when, scope, place));
    const a = lanes(node.chosen, scope, place);
    const b = lanes(node.otherwise, scope, place);
    if (a.kind === 'numbers' && b.kind === 'numbers') {
      // Each lane is decided where all that the choice hangs on is drawn.
      return chooseNumbers(program, when, [...decision.on].every(isDrawn), a, b);
    }
    return chooseTruths(program, when, asTruths(program, a), asTruths(program, b));
  };

  return named;
}
