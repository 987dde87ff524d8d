import { namesCompared } from '../condition/rules';
import type { Topic } from '../define/shapes';
import { simulationOf } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Node } from '../formula/grammar/nodes';
import { namesIn, below as nodesBelow } from '../formula/kinds';
import type { Inputs, NumberInput } from '../value/values';
import type { OpenDecision, Setting } from './open';

/** Every fact and column of which a formula asks whether it is told, in this node and below. */
function testedIn(node: Node): readonly string[] {
  const own = node.kind === 'known' || node.kind === 'given' ? node.names : [];
  return [...own, ...nodesBelow(node).flatMap(testedIn)];
}

const kept = new WeakMap<Compiled, Map<string, ReadonlySet<string>>>();

/** The same for a name, down to the facts it is reckoned from. */
function testedBelow(compiled: Compiled, name: string): ReadonlySet<string> {
  const all = kept.get(compiled) ?? new Map<string, ReadonlySet<string>>();
  kept.set(compiled, all);
  const before = all.get(name);
  if (before) return before;
  const tested = new Set<string>();
  const seen = new Set<string>();
  const visit = (each: string): void => {
    if (seen.has(each)) return;
    seen.add(each);
    const formula = compiled.formulas.get(each);
    if (formula) {
      for (const found of testedIn(formula.node)) tested.add(found);
      for (const inner of namesIn(formula.node)) visit(inner);
    } else {
      const inside = simulationOf(compiled.topic, each);
      const names = inside
        ? compiled.simulations.get(inside[0])?.uses
        : compiled.topic.decisions?.[each]?.on;
      for (const inner of names ?? []) visit(inner);
    }
  };
  visit(name);
  all.set(name, tested);
  return tested;
}

/** The column of a list, `trailer.cargo` and `ahead`; undefined for a fact of its own. */
export function columnIn(
  topic: Topic,
  name: string,
): readonly [list: string, column: string] | undefined {
  if (Object.hasOwn(topic.facts, name)) return undefined;
  const dot = name.lastIndexOf('.');
  const list = name.slice(0, dot);
  return topic.facts[list]?.kind === 'rows' ? [list, name.slice(dot + 1)] : undefined;
}

/** Whether a fact, or some cell of a column, was not told. */
function isUntold(topic: Topic, inputs: Inputs, name: string): boolean {
  const column = columnIn(topic, name);
  const input = inputs.get(column ? column[0] : name);
  if (!column) return input === undefined || input.status === 'silent';
  const isSilent = (cell: NumberInput | undefined) =>
    cell === undefined || cell.status === 'silent';
  return input?.kind === 'rows' && input.rows.some((row) => isSilent(row[column[1]]));
}

/**
 * The open decision with what nobody told in the place of what it moves with: the facts and columns of
 * which its formulas ask whether they are known, and go another way for want of them.
 */
export function untoldIn({ compiled, inputs }: Setting, decision: OpenDecision): OpenDecision {
  const { rule } = decision;
  const { topic } = compiled;
  const relief = topic.limits[rule.event.params.of.replace(/^limit\./, '')]?.relief;
  const compared = [...namesCompared(rule.conditions), ...(relief ? [relief.when] : [])];
  const names = compared.flatMap((name) => [...testedBelow(compiled, name)]);
  const facts = new Map<string, string[]>();
  for (const name of new Set(names)) {
    if (!isUntold(topic, inputs, name)) continue;
    const fact = columnIn(topic, name)?.[0] ?? name;
    if (Object.hasOwn(topic.facts, fact)) facts.set(fact, [...(facts.get(fact) ?? []), name]);
  }
  return { ...decision, facts };
}
