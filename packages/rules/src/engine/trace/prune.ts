import { isPoint } from '../../quantity';
import type { Node } from '../formula/grammar/nodes';
import type { Scope } from '../formula/grammar/scope';
import { reckon } from '../formula/reckon';
import { branchTaken } from '../formula/words';

export function isExactly(scope: Scope, node: Node, at: number): boolean {
  const value = reckon(node, scope);
  return value.kind === 'number' && isPoint(value) && value.lo === at;
}

/** Of several, those of which one may be the largest or least. */
function standing(kind: 'min' | 'max' | 'largestKnown', of: readonly Node[], scope: Scope) {
  const ends = of.map((node) => {
    const value = reckon(node, scope);
    return value.kind === 'number' ? value : { lo: -Infinity, hi: Infinity };
  });
  const bounded = of.filter((_, i) => ends[i]?.lo !== Infinity);
  if (kind === 'min') return bounded.length === 0 ? of.slice(0, 1) : bounded;
  const best = Math.max(...ends.map(({ lo }) => lo));
  // Of several known figures each is worth a word; a bare number that bounds is not, unless alone.
  const worth = of.filter((node, i) => node.kind !== 'number' || (ends[i]?.hi ?? 0) > best);
  return worth.length === 0 ? of.slice(0, 1) : worth;
}

/**
 * A formula as it is worth telling: choices made, nothing added or taken off, nothing multiplied
 * by one, no bound that does not bind. Its value is the same.
 */
export function pruned(node: Node, scope: Scope): Node {
  const taken = branchTaken(node, scope);
  switch (taken.kind) {
    case 'arithmetic': {
      const [a, b] = [pruned(taken.a, scope), pruned(taken.b, scope)];
      const { op } = taken;
      if ((op === '+' || op === '-') && isExactly(scope, b, 0)) return a;
      if (op === '+' && isExactly(scope, a, 0)) return b;
      if ((op === '*' || op === '/') && isExactly(scope, b, 1) && b.kind !== 'arithmetic') return a;
      if (op === '*' && isExactly(scope, a, 1) && a.kind !== 'arithmetic') return b;
      return { ...taken, a, b };
    }
    case 'min':
    case 'max':
    case 'largestKnown': {
      const known =
        taken.kind === 'largestKnown'
          ? taken.of.filter((each) => scope.partKnown(each, reckon(each, scope)))
          : taken.of;
      if (known.length === 0) return taken;
      const of = standing(taken.kind, known, scope).map((each) => pruned(each, scope));
      const [only, more] = of;
      return only && !more ? only : { ...taken, of };
    }
    case 'between': {
      const [a, b] = [reckon(taken.a, scope), reckon(taken.b, scope)];
      const isOne =
        a.kind === 'number' && b.kind === 'number' && isPoint(a) && a.lo === b.lo && isPoint(b);
      return isOne ? pruned(taken.a, scope) : taken;
    }
    default:
      return taken;
  }
}
