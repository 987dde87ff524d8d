import type { Using } from './grammar/kind';
import type { KindName, Node, NodeOf } from './grammar/nodes';
import type { Scope } from './grammar/scope';
import { kinds } from './kinds';
import { reckon } from './reckon';

export type Used = {
  /** What stands in the value: names in the branches taken, the tables that were looked up. */
  readonly from: readonly string[];
  /** What settled which branches those are, and does not stand in the value itself. */
  readonly decidedBy: readonly string[];
};

/** Everything that a value was really reckoned from. */
export function usedNames(node: Node, scope: Scope): Used {
  const from = new Set<string>();
  const decidedBy = new Set<string>();
  const using = (into: Set<string>, around: Scope, lists: readonly string[]): Using => {
    // A column means a cell of its row, and stands in the trace with its list.
    const isCell = (name: string) => lists.some((list) => name.startsWith(`${list}.`));
    const note = (to: Set<string>) => (name: string) => {
      if (!isCell(name)) to.add(name);
    };
    const walk = (at: Using) => {
      const part = <K extends KindName>(each: NodeOf<K>): void => kinds[each.kind].uses(each, at);
      return part;
    };
    const at: Using = {
      scope: around,
      reckon,
      from: note(into),
      decidedBy: note(decidedBy),
      part: (each) => walk(at)(each),
      decider: (each) => walk(using(decidedBy, around, lists))(each),
      inRow: ({ list, row }) => using(into, around.inRow(list, row), [...lists, list]),
    };
    return at;
  };
  using(from, scope, []).part(node);
  return { from: [...from], decidedBy: [...decidedBy].filter((name) => !from.has(name)) };
}
