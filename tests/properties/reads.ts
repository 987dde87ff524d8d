import { simulationOf } from '../../packages/rules/src/engine/define/topic';
import type { Compiled } from '../../packages/rules/src/engine/formula/compile';
import type { Scope } from '../../packages/rules/src/engine/formula/grammar/scope';
import { reckon } from '../../packages/rules/src/engine/formula/reckon';
import type { Run } from '../../packages/rules/src/engine/formula/run';
import { simulate } from '../../packages/rules/src/engine/formula/simulate';
import type { Value } from '../../packages/rules/src/engine/value/values';

/**
 * Reckons a name of a run once more and notes everything that is looked at meanwhile: each fact,
 * list, parameter and table, by the name that the trace has for it.
 */
export function readsOf(compiled: Compiled, run: Run): (name: string) => ReadonlySet<string> {
  const { topic, formulas, simulations } = compiled;

  /** What a catalogue said before; looking through all of its orders takes long. */
  const said = new Map<object, Value>();

  return (of) => {
    const read = new Set<string>();
    const seen = new Set<string>();
    const note = (name: string): void => {
      const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
      // A state or value of a simulation is no reading; what it is reckoned from is.
      if (simulationOf(topic, name)) return;
      read.add(topic.facts[list]?.kind === 'rows' ? list : name);
    };
    const noted = (scope: Scope): Scope => {
      const value = (name: string): Value => {
        const formula = formulas.get(name);
        const decision = topic.decisions?.[name];
        if (formula && !seen.has(name)) {
          seen.add(name);
          reckon(formula.node, here);
        }
        if (formula) return scope.value(name);
        if (decision) for (const each of decision.on) value(each);
        else note(name);
        return scope.value(name);
      };
      const looked = (name: string): void => {
        if (formulas.has(name)) value(name);
        else note(name);
      };
      const here: Scope = {
        ...scope,
        value,
        given: (name) => {
          looked(name);
          return scope.given(name);
        },
        known: (name) => {
          looked(name);
          return scope.known(name);
        },
        rows: (list) => {
          note(list);
          return scope.rows(list);
        },
        inRow: (list, row) => noted(scope.inRow(list, row)),
        table: (name) => {
          note(name);
          return scope.table(name);
        },
        wordValue: (table, word) => {
          note(table);
          return scope.wordValue(table, word);
        },
        catalogue: (name) => {
          note(name);
          return scope.catalogue(name);
        },
        catalogued: (node) => {
          note(node.catalogue);
          const found = said.get(node) ?? scope.catalogued(node);
          said.set(node, found);
          return found;
        },
        simulation: (name) => {
          const simulation = simulations.get(name);
          if (!simulation) throw new Error(`There is no simulation “${name}”.`);
          if (typeof simulation.simulation.steps === 'string') note(simulation.simulation.steps);
          return simulate(name, simulation, here);
        },
      };
      return here;
    };
    noted(run.scope).value(of);
    return read;
  };
}
