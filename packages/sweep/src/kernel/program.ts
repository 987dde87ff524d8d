import type { Compiled, Inputs } from '@tarebook/rules/engine';
import { graph } from './build';
import { type Reckoning, reckoning } from './formulas';
import type { Graph, Ref, Step } from './graph';
import { type Sides, sideBits } from './sides';
import { sourceOf } from './source';
import { type VerdictSteps, verdictSteps } from './verdict';

/** What is reckoned when: once for each row, once for each column, and for each pair. */
export type Stage = 'rows' | 'columns' | 'pairs';

/** Steps of one stage in the order in which they can be gone through, and what others take of them. */
export type Steps = { readonly own: readonly Ref[]; readonly kept: readonly Ref[] };

export type Program = {
  readonly graph: Graph;
  readonly of: Reckoning;
  readonly out: VerdictSteps;
  /** What comes in for each row and each column, in this order. */
  readonly inputs: Readonly<Record<'rows' | 'columns', readonly string[]>>;
  readonly stages: Readonly<Record<Stage, Steps>>;
};

export const stageOf = ({ side }: Step): Stage | 'nothing' =>
  (({ 0: 'nothing', 1: 'rows', 2: 'columns' }) as const)[side & sideBits.both] ?? 'pairs';

/** Every step that some others stand on, in their order. */
function reached(g: Graph, from: readonly Ref[]): readonly Ref[] {
  const seen = new Set<Ref>();
  const open = [...from];
  for (let ref = open.pop(); ref !== undefined; ref = open.pop()) {
    if (seen.has(ref)) continue;
    seen.add(ref);
    open.push(...(g.steps[ref]?.args ?? []));
  }
  return [...seen].sort((a, b) => a - b);
}

export const verdictOutputs = ({ least, most }: VerdictSteps): readonly Ref[] => [least, most];
export const roomOutputs = ({ binding, left, unsure }: VerdictSteps): readonly Ref[] => [
  ...[binding, left.lo, left.hi, unsure],
];

/**
 * The verdict of a topic as a program over rows and columns of one form.
 *
 * @param like inputs of a case, one row and one column: the numbers that its row and its column tell
 *   may be any of the same form, all else is as it is.
 * @throws NotHeld naming what a kernel cannot hold.
 */
export function programOf(
  compiled: Compiled,
  like: Inputs,
  parameters: ReadonlyMap<string, number>,
  sides: Sides,
  withRoom: boolean,
): Program {
  const g = graph();
  const of = reckoning(g, compiled, sourceOf(g, like, parameters, sides));
  const out = verdictSteps(g, compiled, of);
  const ends = [...verdictOutputs(out), ...(withRoom ? roomOutputs(out) : [])];
  const live = reached(g, ends);
  const stepAt = (ref: Ref): Step => {
    const step = g.steps[ref];
    if (!step) throw new Error(`There is no step ${ref}.`);
    return step;
  };
  const inStage = (stage: Stage) => live.filter((ref) => stageOf(stepAt(ref)) === stage);
  const taken = new Set(
    live.flatMap((ref) => {
      const stage = stageOf(stepAt(ref));
      return stepAt(ref).args.filter((arg) => stageOf(stepAt(arg)) !== stage);
    }),
  );
  for (const ref of ends) taken.add(ref);
  const steps = (stage: Stage): Steps => {
    const own = inStage(stage);
    return { own, kept: own.filter((ref) => taken.has(ref)) };
  };
  const inputs = (stage: Stage): readonly string[] =>
    inStage(stage).flatMap((ref) => (stepAt(ref).op === 'input' ? [stepAt(ref).name] : []));
  return {
    ...{ graph: g, of, out },
    inputs: { rows: inputs('rows'), columns: inputs('columns') },
    stages: { rows: steps('rows'), columns: steps('columns'), pairs: steps('pairs') },
  };
}
