import { unitOfName } from '../answer/named';
import { lowered } from '../answer/phrases';
import type { Formula } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { Node } from '../formula/grammar/nodes';
import type { Scope } from '../formula/grammar/scope';
import { reckon } from '../formula/reckon';
import { branchTaken, inWords, namedInWords, type Wording, working } from '../formula/words';
import { pruned } from './prune';

/** What telling a formula in words needs beside its numbers. */
export type Telling = Wording & {
  readonly compiled: Compiled;
  readonly readFrom: Readonly<Record<string, string>>;
};

/** How a name is called inside a sentence. */
export function nounOf({ topic, formulas }: Compiled, name: string): string {
  const list = name.slice(0, name.lastIndexOf('.'));
  const entry =
    formulas.get(name)?.formula ?? topic.facts[name] ?? topic.parameters[name] ?? topic.facts[list];
  if (!entry) return name;
  return entry.noun ?? lowered(entry.label);
}

/** What a formula came down to, once every decided choice is made: that other formula, or itself. */
export function shownFormula(
  compiled: Compiled,
  scope: Scope,
  name: string,
): { readonly node: Node; readonly formula: Formula } | undefined {
  const found = compiled.formulas.get(name);
  if (!found) return undefined;
  const node = branchTaken(found.node, scope);
  const inner = node.kind === 'name' ? shownFormula(compiled, scope, node.id) : undefined;
  return inner ?? { node, formula: found.formula };
}

/** Where a name was read, if it is a fact or a formula that came down to one. */
export function origin(telling: Telling, name: string): string | undefined {
  const { compiled, scope, readFrom } = telling;
  const shown = shownFormula(compiled, scope, name);
  if (!shown) return readFrom[name];
  const node = pruned(shown.node, scope);
  return node.kind === 'name' ? origin(telling, node.id) : undefined;
}

/** “the dry tongue (430 lb, brochure)” */
export function nameTold(telling: Telling, name: string): string {
  const { compiled, scope, system } = telling;
  const value = scope.value(name);
  const isOpen = value.kind === 'number' && value.lo <= 0 && value.hi === Infinity;
  if (isOpen) return `${nounOf(compiled, name)} (not known)`;
  const from = origin(telling, name);
  const shown = namedInWords(name, value, unitOfName(compiled, name), system);
  return `${nounOf(compiled, name)} (${shown}${from ? `, ${lowered(from)}` : ''})`;
}

/** “usual diameter by rated pounds (12 in at 20 lb)”; what a label adds after a halt is left out. */
export function tableTold(telling: Telling, node: Node & { kind: 'lookup' | 'pick' }): string {
  const { compiled, scope, system, tableUnit } = telling;
  const { tables, wordTables = {} } = compiled.topic;
  const label = (tables[node.table] ?? wordTables[node.table])?.label ?? node.table;
  const value = inWords(reckon(node, scope), tableUnit(node.table), system);
  const noun = label.replace(/;.*/, '');
  // A letter of a formula keeps its size.
  return `${/^\p{Lu} /u.test(noun) ? noun : lowered(noun)} (${value} at ${working(node.at, telling)})`;
}
