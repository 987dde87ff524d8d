import { findUnit } from '../../quantity';
import type { Formula, Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { below, type Node, namesIn } from './nodes';
import { FormulaError, parseFormula } from './parse';

export type CompiledFormula = {
  readonly name: string;
  readonly formula: Formula;
  readonly node: Node;
  /** Base units in one of the declared unit; 1 for yes/no. */
  readonly factor: number;
  /** Whether some input enters it more than once, so that plain ranges come out too wide. */
  readonly repeats: boolean;
};

/** The formulas of a topic, parsed and in an order in which each comes after what it uses. */
export type Compiled = {
  readonly topic: Topic;
  readonly formulas: ReadonlyMap<string, CompiledFormula>;
};

/** How often each input stands in a formula once all formulas it uses are written out; 2 is many. */
function occurrences(
  node: Node,
  counts: ReadonlyMap<string, ReadonlyMap<string, number>>,
): Map<string, number> {
  const total = new Map<string, number>();
  const note = (id: string, n: number) => total.set(id, Math.min(2, (total.get(id) ?? 0) + n));
  const walk = (each: Node): void => {
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
 * @throws FormulaError when a formula cannot be read, its unit is none, or formulas go in a circle.
 */
export function compile(topic: Topic): Compiled {
  const declared = allFormulas(topic);
  const nodes = new Map([...declared].map(([name, { is }]) => [name, parseFormula(is)]));
  const counts = new Map<string, ReadonlyMap<string, number>>();
  const formulas = new Map<string, CompiledFormula>();
  const open: string[] = [];
  const visit = (name: string): void => {
    const formula = declared.get(name);
    const node = nodes.get(name);
    if (!formula || !node || formulas.has(name)) return;
    if (open.includes(name)) {
      const circle = [...open.slice(open.indexOf(name)), name].join(' → ');
      throw new FormulaError(`Formulas go in a circle: ${circle}.`);
    }
    open.push(name);
    for (const used of namesIn(node)) visit(used);
    open.pop();
    const found = occurrences(node, counts);
    counts.set(name, found);
    const bare = formula.unit === 'yes-no' || formula.unit === '';
    const unit = findUnit(bare ? '1' : formula.unit);
    if (!unit) throw new FormulaError(`“${name}”: there is no unit “${formula.unit}”.`);
    const { factor } = unit;
    const repeats = [...found.values()].some((n) => n > 1);
    formulas.set(name, { name, formula, node, factor, repeats });
  };
  for (const name of declared.keys()) visit(name);
  return { topic, formulas };
}
