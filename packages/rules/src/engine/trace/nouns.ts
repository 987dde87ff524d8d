import { unitOfName } from '../answer/named';
import type { Formula } from '../define/shapes';
import { calendarUnits } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Node } from '../formula/grammar/nodes';
import type { Scope } from '../formula/grammar/scope';
import { reckon } from '../formula/reckon';
import { branchTaken, namedSaid, valueSaid, type Wording, working } from '../formula/words';
import { message } from '../words/message';
import { nounOr, own, type Sayable } from '../words/value';
import { pruned } from './prune';

/** What telling a formula in words needs beside its numbers. */
export type Telling = Wording & {
  readonly compiled: Compiled;
  readonly readFrom: Readonly<Record<string, string>>;
};

/** How a name is called inside a sentence. */
export function nounOf({ topic, formulas }: Compiled, name: string): Sayable {
  if (Object.hasOwn(calendarUnits, name)) {
    return message(name === 'asOf.year' ? 'year-now' : 'day-now', {});
  }
  const list = name.slice(0, name.lastIndexOf('.'));
  const entry =
    formulas.get(name)?.formula ?? topic.facts[name] ?? topic.parameters[name] ?? topic.facts[list];
  return nounOr(entry, name);
}

type Shown = {
  readonly node: Node;
  readonly formula: Formula;
  /** The formulas on the way to it, itself included. */
  readonly way: readonly Node[];
};

/** What a formula came down to, once every decided choice is made: that other formula, or itself. */
export function shownFormula(compiled: Compiled, scope: Scope, name: string): Shown | undefined {
  const found = compiled.formulas.get(name);
  if (!found) return undefined;
  const node = branchTaken(found.node, scope);
  const inner = node.kind === 'name' ? shownFormula(compiled, scope, node.id) : undefined;
  const way = [found.node, ...(inner?.way ?? [])];
  return inner ? { ...inner, way } : { node, formula: found.formula, way };
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
export function nameTold(telling: Telling, name: string): Sayable {
  const { compiled, scope, isYear } = telling;
  const value = scope.value(name);
  const noun = nounOf(compiled, name);
  const isOpen = value.kind === 'number' && value.lo <= 0 && value.hi === Infinity;
  if (isOpen) return message('noun-unknown', { noun });
  const from = origin(telling, name);
  const shown = namedSaid(value, unitOfName(compiled, name), isYear(name));
  return message('noun-is', { noun, value: shown, from: from ? own(from) : null });
}

/** “usual diameter by rated pounds (12 in at 20 lb)” */
export function tableTold(telling: Telling, node: Node & { kind: 'lookup' | 'pick' }): Sayable {
  const { compiled, scope, tableUnit } = telling;
  const { tables, wordTables = {} } = compiled.topic;
  const noun = nounOr(tables[node.table] ?? wordTables[node.table], node.table);
  const value = valueSaid(reckon(node, scope), tableUnit(node.table));
  return message('by-table', { noun, value, at: working(node.at, telling) });
}
