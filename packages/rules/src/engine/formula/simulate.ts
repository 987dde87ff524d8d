import { exactly, type Value } from '../value/values';
import type { CompiledSimulation } from './compile';
import type { Scope } from './grammar/scope';
import { reckon } from './reckon';

/** The scopes of all steps, and of the states once the last is done. */
export type Simulated = {
  readonly steps: readonly Scope[];
  readonly end: Scope;
  readonly isState: (name: string) => boolean;
};

/**
 *     start ─► state ─ step 0 ─► next ─► state ─ step 1 ─► … ─► end
 *                  └ values of the step
 */
export function simulate(id: string, compiled: CompiledSimulation, around: Scope): Simulated {
  const { simulation, states, values } = compiled;
  const list = typeof simulation.steps === 'string' ? simulation.steps : undefined;
  const count = typeof simulation.steps === 'number' ? simulation.steps : around.rows(list ?? '');
  const scopeAt = (step: number, now: ReadonlyMap<string, Value>): Scope => {
    const inRow = list !== undefined && step < count ? around.inRow(list, step) : around;
    const kept = new Map<string, Value>(now).set(`${id}.step`, exactly(step));
    const value = (name: string): Value => {
      const before = kept.get(name);
      if (before) return before;
      const node = values.get(name);
      if (!node) return inRow.value(name);
      const found = reckon(node, scope);
      kept.set(name, found);
      return found;
    };
    const scope: Scope = {
      ...around,
      given: inRow.given,
      known: inRow.known,
      value,
      inRow: (inner, row) => {
        const cells = around.inRow(inner, row);
        const own = (name: string) => name.startsWith(`${inner}.`);
        return {
          ...scope,
          given: cells.given,
          known: cells.known,
          value: (name) => (own(name) ? cells.value(name) : value(name)),
        };
      },
    };
    return scope;
  };
  const steps: Scope[] = [];
  let now = new Map([...states].map(([name, { start }]) => [name, reckon(start, around)]));
  for (let step = 0; step < count; step += 1) {
    const scope = scopeAt(step, now);
    steps.push(scope);
    now = new Map([...states].map(([name, { next }]) => [name, reckon(next, scope)]));
  }
  return { steps, end: scopeAt(count, now), isState: (name) => states.has(name) };
}
