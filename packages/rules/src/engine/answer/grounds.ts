import { isClosed } from '../../quantity';
import { factsRead } from '../catalogue/facts-read';
import type { Level, State, Topic } from '../define/shapes';
import { simulationOf } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Node } from '../formula/grammar/nodes';
import { namesIn, below as nodesBelow } from '../formula/kinds';
import { restsOnKnown } from '../formula/reckon';
import type { Run } from '../formula/run';
import { overall } from './levels';
import { endsOf } from './named';
import { isNothing } from './room';

/** What a name is reckoned from, one step down. */
function below(compiled: Compiled, name: string): readonly string[] {
  const { topic, formulas, simulations } = compiled;
  const formula = formulas.get(name);
  if (formula) return [...namesIn(formula.node), ...cataloguesIn(topic, formula.node)];
  const inside = simulationOf(topic, name);
  if (inside) return simulations.get(inside[0])?.uses ?? [];
  return topic.decisions?.[name]?.on ?? [];
}

/** The facts that a catalogue is asked with. */
function cataloguesIn(topic: Topic, node: Node): readonly string[] {
  const inner = nodesBelow(node).flatMap((each) => cataloguesIn(topic, each));
  if (node.kind !== 'catalogued') return inner;
  const catalogue = topic.catalogues?.[node.catalogue];
  return catalogue ? [...inner, ...factsRead(catalogue)] : inner;
}

const factOf = (topic: Topic, name: string): string | undefined => {
  if (Object.hasOwn(topic.facts, name)) return name;
  const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
  return topic.facts[list]?.kind === 'rows' ? list : undefined;
};

const kept = new WeakMap<Compiled, Map<string, ReadonlySet<string>>>();

/** Every fact that a name may be reckoned from. */
export function factsBelow(compiled: Compiled, name: string): ReadonlySet<string> {
  const all = kept.get(compiled) ?? new Map<string, ReadonlySet<string>>();
  kept.set(compiled, all);
  const before = all.get(name);
  if (before) return before;
  const facts = new Set<string>();
  const seen = new Set<string>();
  const visit = (each: string): void => {
    if (seen.has(each)) return;
    seen.add(each);
    const fact = factOf(compiled.topic, each);
    if (fact !== undefined) facts.add(fact);
    else for (const inner of below(compiled, each)) visit(inner);
  };
  visit(name);
  all.set(name, facts);
  return facts;
}

/** Whether something told moves a name; one that no fact moves needs nothing told. */
function isTold(compiled: Compiled, run: Run, name: string): boolean {
  const facts = factsBelow(compiled, name);
  return [...facts].some((fact) => run.given(fact));
}

function isCompared(compiled: Compiled, run: Run, id: string): boolean {
  const limit = compiled.topic.limits[id];
  if (!limit || !isTold(compiled, run, limit.used)) return false;
  const isRated =
    factsBelow(compiled, limit.limit).size === 0 || isTold(compiled, run, limit.limit);
  if (!isRated || !restsOnKnown(run.value(limit.limit), run.isOpen)) return false;
  const used = endsOf(compiled, run, limit.used);
  return isClosed(used) && !isNothing(used);
}

/** Whether a finding answers by itself: a decision that came to one result, or one declared so. */
function isSettled(compiled: Compiled, run: Run, id: string, state: State): boolean {
  const finding = compiled.topic.findings[id];
  if (!finding || state === 'unknown') return false;
  const { settles, decision, askedBy = [], askedByKnown = [] } = finding;
  if (settles) {
    const by = settles === true ? [...askedBy, ...askedByKnown] : settles;
    return by.some(run.known);
  }
  if (decision === undefined) return false;
  const value = run.value(decision);
  return value.kind === 'among' && value.options.length === 1 && isTold(compiled, run, decision);
}

/** Whether the verdict rests on something: a limit compared, or a decision settled, by what was told. */
export function isGrounded(
  compiled: Compiled,
  run: Run,
  states: ReadonlyMap<string, State>,
): boolean {
  return [...states].some(([of, state]) => {
    if (state === 'not-asked') return false;
    if (of.startsWith('limit.')) return isCompared(compiled, run, of.slice('limit.'.length));
    return isSettled(compiled, run, of.slice('finding.'.length), state);
  });
}

/** The level of a verdict: the gravest found, and never a clean one where nothing was compared. */
export function verdictLevel(
  compiled: Compiled,
  run: Run,
  states: ReadonlyMap<string, State>,
): Level {
  const level = overall(states.values());
  if (level === 'stop' || level === 'unknown') return level;
  return isGrounded(compiled, run, states) ? level : 'unknown';
}
