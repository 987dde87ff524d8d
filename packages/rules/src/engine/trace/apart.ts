import type { Node } from '../formula/grammar/nodes';

export type Term = { readonly minus: boolean; readonly node: Node };

/** A sum taken apart. */
export function termsOf(node: Node, minus = false): Term[] {
  if (node.kind === 'arithmetic' && (node.op === '+' || node.op === '-')) {
    return [...termsOf(node.a, minus), ...termsOf(node.b, node.op === '-' ? !minus : minus)];
  }
  return node.kind === 'negative' ? termsOf(node.of, !minus) : [{ minus, node }];
}

export type Factors = { readonly over: readonly Node[]; readonly under: readonly Node[] };

/** A product taken apart: what it is multiplied of, and what it is divided by. */
export function factorsOf(node: Node): Factors {
  if (node.kind !== 'arithmetic' || (node.op !== '*' && node.op !== '/')) {
    return { over: [node], under: [] };
  }
  const [a, b] = [factorsOf(node.a), factorsOf(node.b)];
  return node.op === '*'
    ? { over: [...a.over, ...b.over], under: [...a.under, ...b.under] }
    : { over: [...a.over, ...b.under], under: [...a.under, ...b.over] };
}
