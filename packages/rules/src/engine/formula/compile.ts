import { unitOf } from '../../quantity';
import type { Formula, Simulation, Topic } from '../define/shapes';
import { allFormulas, simulationOf } from '../define/topic';
import type { Node } from './grammar/nodes';
import { FormulaError } from './grammar/problem';
import { askedIn, below, namesIn } from './kinds';
import { parseFormula } from './parse';

export type CompiledFormula = {
  readonly name: string;
  readonly formula: Formula;
  readonly node: Node;
  /** Base units in one of the declared unit; 1 for yes/no. */
  readonly factor: number;
  /** Whether some input enters it more than once, so that plain ranges come out too wide. */
  readonly repeats: boolean;
  /** Whether a simulation stands in it or below it, so that reckoning it again takes long. */
  readonly stepwise: boolean;
};

/** The formulas of a topic, parsed and in an order in which each comes after what it uses. */
export type Compiled = {
  readonly topic: Topic;
  readonly formulas: ReadonlyMap<string, CompiledFormula>;
  readonly simulations: ReadonlyMap<string, CompiledSimulation>;
};

/** A simulation with its formulas parsed; a state's own name stands for its value at the start. */
export type CompiledSimulation = {
  readonly simulation: Simulation;
  readonly states: ReadonlyMap<string, { readonly start: Node; readonly next: Node }>;
  readonly values: ReadonlyMap<string, Node>;
  /** Every name from outside that it uses. */
  readonly uses: readonly string[];
  /** Every table that it looks up, and whatever else it asks. */
  readonly asks: readonly string[];
};

function compileSimulation(id: string, simulation: Simulation): CompiledSimulation {
  const states = new Map(
    Object.entries(simulation.states).map(([name, { start, next }]) => [
      name,
      { start: parseFormula(start), next: parseFormula(next) },
    ]),
  );
  const values = new Map(
    Object.entries(simulation.values).map(([name, { is }]) => [name, parseFormula(is)]),
  );
  const nodes = [...[...states.values()].flatMap((s) => [s.start, s.next]), ...values.values()];
  const names = new Set(nodes.flatMap(namesIn));
  const uses = [...names].filter((name) => !name.startsWith(`${id}.`));
  if (typeof simulation.steps === 'string') uses.push(simulation.steps);
  const asks = [...new Set(nodes.flatMap(askedIn))];
  return { simulation, states, values, uses, asks };
}

const hasSteps = (node: Node): boolean => node.kind === 'over' || below(node).some(hasSteps);

/** How often each input stands in a formula once all formulas it uses are written out; 2 is many. */
function occurrences(
  node: Node,
  counts: ReadonlyMap<string, ReadonlyMap<string, number>>,
): Map<string, number> {
  const total = new Map<string, number>();
  const note = (id: string, n: number) => total.set(id, Math.min(2, (total.get(id) ?? 0) + n));
  const walk = (each: Node): void => {
    if (each.kind === 'over') {
      // A simulation comes back to its inputs at every step.
      for (const [id] of counts.get(each.simulation) ?? []) note(id, 2);
    }
    if (each.kind === 'name') {
      const inner = counts.get(each.id);
      if (inner) for (const [id, n] of inner) note(id, n);
      else note(each.id, 1);
    }
    for (const child of below(each)) walk(child);
  };
  walk(node);
  return total;
}

/**
 * @param parsed the topic's formulas, where somebody has read them already
 * @throws FormulaError when a formula cannot be read, or formulas go in a circle.
 */
export function compile(topic: Topic, parsed?: ReadonlyMap<string, Node>): Compiled {
  const declared = allFormulas(topic);
  const nodes = parsed ?? new Map([...declared].map(([name, { is }]) => [name, parseFormula(is)]));
  const counts = new Map<string, ReadonlyMap<string, number>>();
  const formulas = new Map<string, CompiledFormula>();
  const simulations = new Map(
    Object.entries(topic.simulations ?? {}).map(([id, each]) => [id, compileSimulation(id, each)]),
  );
  const open: string[] = [];
  const circle = (name: string): void => {
    if (!open.includes(name)) return;
    const names = [...open.slice(open.indexOf(name)), name].join(' → ');
    throw new FormulaError(names, 'circular-formulas');
  };
  const visitSimulation = (id: string): void => {
    const simulation = simulations.get(id);
    if (!simulation || counts.has(id)) return;
    circle(id);
    open.push(id);
    for (const used of simulation.uses) visit(used);
    open.pop();
    const total = new Map<string, number>();
    for (const used of simulation.uses) {
      for (const input of counts.get(used)?.keys() ?? [used]) total.set(input, 2);
    }
    counts.set(id, total);
  };
  const visitDecision = (name: string): void => {
    circle(name);
    open.push(name);
    for (const used of topic.decisions?.[name]?.on ?? []) visit(used);
    open.pop();
  };
  const visit = (name: string): void => {
    const inside = simulationOf(topic, name);
    if (inside) visitSimulation(inside[0]);
    if (topic.decisions?.[name]) visitDecision(name);
    const formula = declared.get(name);
    const node = nodes.get(name);
    if (!formula || !node || formulas.has(name)) return;
    circle(name);
    open.push(name);
    const uses = namesIn(node);
    for (const used of uses) visit(used);
    open.pop();
    const found = occurrences(node, counts);
    counts.set(name, found);
    const bare = formula.unit === 'yes-no' || formula.unit === '';
    const { factor } = unitOf(bare ? '1' : formula.unit);
    const repeats = [...found.values()].some((n) => n > 1);
    const stepwise = hasSteps(node) || uses.some((used) => formulas.get(used)?.stepwise ?? false);
    formulas.set(name, { name, formula, node, factor, repeats, stepwise });
  };
  for (const name of declared.keys()) visit(name);
  for (const id of simulations.keys()) visitSimulation(id);
  return { topic, formulas, simulations };
}
