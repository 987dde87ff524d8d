import type { Compiled, Node } from '@tarebook/rules/engine';
import type { Sides } from './sides';
import { sideOf } from './sides';
import type { SumNode } from './source';

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'kind' in value;

/** What stands directly in a node. */
const partsOf = (node: Node): readonly Node[] =>
  Object.values(node).flatMap((each: unknown) =>
    Array.isArray(each) ? each.filter(isNode) : isNode(each) ? [each] : [],
  );

const within = (node: Node): readonly Node[] => [node, ...partsOf(node).flatMap(within)];

const found = new WeakMap<Compiled, readonly SumNode[]>();

/** Every sum of a topic's formulas, in their order; looked for once, as every case asks for them. */
export function sumsOf(compiled: Compiled): readonly SumNode[] {
  const before = found.get(compiled);
  if (before) return before;
  const all = [...compiled.formulas.values()].flatMap(({ node }) => within(node));
  const sums = all.flatMap((node) => (node.kind === 'sum' ? [node] : []));
  found.set(compiled, sums);
  return sums;
}

const namesIn = (node: Node): readonly string[] =>
  within(node).flatMap((each) => {
    if (each.kind === 'name') return [each.id];
    return 'names' in each && Array.isArray(each.names) ? each.names : [];
  });

/** The sides that a sum hangs on. */
export function sideOfSum({ topic, formulas }: Compiled, sides: Sides, sum: SumNode): number {
  const seen = new Set<string>();
  const open = [...namesIn(sum.of)];
  let side = 0;
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    if (seen.has(name)) continue;
    seen.add(name);
    const fact = topic.facts[name];
    if (fact && fact.kind !== 'rows') side |= sideOf(sides, name);
    const formula = formulas.get(name);
    if (formula) open.push(...namesIn(formula.node));
  }
  return side;
}
