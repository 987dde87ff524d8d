import type { Catalogue } from '../define/catalogue';
import type { Inputs } from '../value/values';
import type { Compiled } from './compile';
import type { Node } from './grammar/nodes';
import { askedIn, namesIn } from './kinds';

/** The facts that a name rests on. */
type Rests = ReadonlySet<string>;

const nothing: Rests = new Set();

const joined = (all: readonly Rests[]): Rests => new Set(all.flatMap((each) => [...each]));

/**
 * The facts that a value can change with, through whatever formulas, decisions and simulations stand
 * between: `axle.rear` rests on the vehicle's own weights, on who rides where, on the trailer …
 */
function restsOn(compiled: Compiled): (name: string) => Rests {
  const { topic, formulas, simulations } = compiled;
  const { facts, catalogues = {}, decisions = {} } = topic;
  const kept = new Map<string, Rests>();

  const inside = (node: Node): Rests =>
    joined([...namesIn(node).map(of), ...askedIn(node).map(ofAsked)]);

  /** A catalogue reads choices and wishes by names of its own. */
  const ofOrder = ({ model, year, wishes }: Catalogue): Rests =>
    joined([model, year, ...Object.values(wishes)].map((name) => of(name)));

  const ofAsked = (id: string): Rests => {
    const catalogue = Object.hasOwn(catalogues, id) ? catalogues[id] : undefined;
    if (catalogue) return ofOrder(catalogue);
    const simulation = simulations.get(id);
    return simulation
      ? joined([...simulation.uses.map(of), ...simulation.asks.map(ofAsked)])
      : nothing;
  };

  const find = (name: string): Rests => {
    const formula = formulas.get(name);
    if (formula) return inside(formula.node);
    if (Object.hasOwn(decisions, name)) return joined((decisions[name]?.on ?? []).map(of));
    if (Object.hasOwn(facts, name)) return new Set([name, ...ofRows(name)]);
    const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
    // All others are parameters, or values of a simulation, which is asked by its own name.
    return Object.hasOwn(facts, list) ? of(list) : nothing;
  };

  /** A list to which a catalogue adds the rows of an order. */
  const ofRows = (list: string): Rests =>
    joined(
      Object.values(catalogues)
        .filter(({ rows }) => rows?.list === list)
        .map(ofOrder),
    );

  const of = (name: string): Rests => {
    const before = kept.get(name);
    if (before !== undefined) return before;
    const found = find(name);
    kept.set(name, found);
    return found;
  };
  return of;
}

const made = new WeakMap<Compiled, (name: string) => Rests>();

/** The same, found once for a topic. */
function restsIn(compiled: Compiled): (name: string) => Rests {
  const before = made.get(compiled);
  if (before) return before;
  const of = restsOn(compiled);
  made.set(compiled, of);
  return of;
}

/** Whether a name rests on none of the facts that differ. */
export function unmoved(
  compiled: Compiled,
  before: Inputs,
  now: Inputs,
): (name: string) => boolean {
  const rests = restsIn(compiled);
  const moved: string[] = [];
  for (const [fact, input] of now) if (before.get(fact) !== input) moved.push(fact);
  return (name) => {
    const facts = rests(name);
    return !moved.some((fact) => facts.has(fact));
  };
}

/** Whether a name rests on one of these facts, or on none at all, as a parameter does. */
export function restsOnAny(compiled: Compiled, name: string, facts: readonly string[]): boolean {
  const rests = restsIn(compiled)(name);
  return rests.size === 0 || facts.some((fact) => rests.has(fact));
}
