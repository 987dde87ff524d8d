import type { Catalogue, OptionRule } from '../define/catalogue';
import { buildsOf, type Order, orderClauses } from './builds';
import { countWays } from './count';

/** What stands against an order: a wish that is not offered; or wishes and rules that clash. */
export type Against =
  | { readonly kind: 'not-offered' | 'wanted' | 'unwanted'; readonly option: string }
  | { readonly kind: 'rule'; readonly rule: OptionRule };

/**
 * Wishes that are not offered; where there are none, wishes and rules that cannot hold together and
 * of which none can be left out: each is tried, and left out if the rest still cannot hold.
 */
export function standsAgainst(catalogue: Catalogue, order: Order): readonly Against[] {
  const { sold, count, offered } = buildsOf(catalogue, order);
  if (!sold || count > 0n) return [];
  const { standard, optional } = offered;
  const missing = order.wanted.filter((each) => !standard.has(each) && !optional.includes(each));
  if (missing.length > 0) return missing.map((option) => ({ kind: 'not-offered', option }));
  let kept: readonly Against[] = [
    ...catalogue.rules.map((rule) => ({ kind: 'rule', rule }) as const),
    ...order.wanted.map((option) => ({ kind: 'wanted', option }) as const),
    ...order.unwanted.map((option) => ({ kind: 'unwanted', option }) as const),
  ];
  const named = (among: readonly Against[], kind: Against['kind']) =>
    among.flatMap((each) => (each.kind === kind && each.kind !== 'rule' ? [each.option] : []));
  const clash = (among: readonly Against[]): boolean => {
    const rules = among.flatMap((each) => (each.kind === 'rule' ? [each.rule] : []));
    const wishes = { wanted: named(among, 'wanted'), unwanted: named(among, 'unwanted') };
    const clauses = orderClauses({ ...catalogue, rules }, offered, wishes);
    return countWays(optional.length, clauses) === 0n;
  };
  for (const each of kept) {
    const rest = kept.filter((other) => other !== each);
    if (clash(rest)) kept = rest;
  }
  return kept.toSorted((a, b) => Number(a.kind === 'rule') - Number(b.kind === 'rule'));
}
