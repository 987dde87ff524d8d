import type { Using } from './grammar/kind';
import type { KindName, Node, NodeOf } from './grammar/nodes';
import type { Scope } from './grammar/scope';
import { kinds } from './kinds';
import { reckon } from './reckon';

/** Everything that a value was really reckoned from: names in the branches taken. */
export function usedNames(node: Node, scope: Scope): readonly string[] {
  const found = new Set<string>();
  const part = <K extends KindName>(each: NodeOf<K>): void => kinds[each.kind].uses(each, at);
  const at: Using = { scope, reckon, from: (name) => found.add(name), part };
  part(node);
  return [...found];
}
