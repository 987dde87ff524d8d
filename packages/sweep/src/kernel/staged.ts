import type { Ref, Step } from './graph';
import { type Bound, bound, fillWith, partOf, type Vector, vector } from './lanes';

/** What is reckoned when: once for the case, once for each row and each column, and for each pair. */
export const stages = ['case', 'rows', 'columns', 'pairs'] as const;
export type Stage = (typeof stages)[number];

/** Steps of one stage in the order in which they can be gone through, what comes in, and what others take. */
export type StageSteps = {
  readonly own: readonly Ref[];
  readonly inputs: readonly Ref[];
  readonly kept: readonly Ref[];
};

export type Staged = {
  readonly steps: readonly Step[];
  readonly stages: Readonly<Record<Stage, StageSteps>>;
};

export const stageOf = ({ side }: Step): Stage => stages[side & 3] ?? 'pairs';

/** Every step that some others stand on, in their order. */
export function reached(steps: readonly Step[], from: readonly Ref[]): readonly Ref[] {
  const seen = new Uint8Array(steps.length);
  const open = [...from];
  for (let ref = open.pop(); ref !== undefined; ref = open.pop()) {
    if (seen[ref] === 1) continue;
    seen[ref] = 1;
    open.push(...(steps[ref]?.args ?? []));
  }
  return steps.flatMap((_, ref) => (seen[ref] === 1 ? [ref] : []));
}

/** The steps below some outputs, stage by stage. */
export function staged(steps: readonly Step[], outputs: readonly Ref[]): Staged {
  const live = reached(steps, outputs).filter((ref) => steps[ref]?.op !== 'constant');
  const taken = new Set<Ref>(outputs);
  for (const ref of live) {
    const step = steps[ref];
    if (!step) continue;
    for (const arg of step.args) {
      const other = steps[arg];
      if (other && stageOf(other) !== stageOf(step)) taken.add(arg);
    }
  }
  const inStage = (stage: Stage): StageSteps => {
    const all = live.filter((ref) => {
      const step = steps[ref];
      return step !== undefined && stageOf(step) === stage;
    });
    return {
      own: all.filter((ref) => steps[ref]?.op !== 'input'),
      inputs: all.filter((ref) => steps[ref]?.op === 'input'),
      kept: all.filter((ref) => taken.has(ref)),
    };
  };
  return {
    steps,
    stages: {
      case: inStage('case'),
      rows: inStage('rows'),
      columns: inStage('columns'),
      pairs: inStage('pairs'),
    },
  };
}

/** Places gone through at once: what is reckoned in between stays close by. */
export const block = 256;

/**
 * Steps bound one after another. A vector that nobody reads any more serves a later step.
 *
 * @param leaf what comes from elsewhere, constants among it
 * @param out where a step's values are wanted for good
 */
export function bindAll(
  steps: readonly Step[],
  own: readonly Ref[],
  n: number,
  leaf: (ref: Ref) => Vector,
  out: (ref: Ref) => Vector | undefined,
): readonly Bound[] {
  const lastRead = new Map<Ref, Ref>();
  for (const ref of own) for (const arg of steps[ref]?.args ?? []) lastRead.set(arg, ref);
  const free: Record<Vector['sort'], Vector[]> = { number: [], bits: [], truth: [] };
  const at = new Map<Ref, Vector>();
  const mine = new Set<Vector>();
  const bounds: Bound[] = [];
  for (const ref of own) {
    const step = steps[ref];
    if (!step) continue;
    const args = step.args.map((arg) => at.get(arg) ?? leaf(arg));
    const wanted = out(ref);
    const to = wanted ?? free[step.sort].pop() ?? vector(step.sort, n);
    if (!wanted) mine.add(to);
    at.set(ref, to);
    bounds.push(bound(step, to, args));
    for (const arg of new Set(step.args)) {
      const read = at.get(arg);
      if (lastRead.get(arg) !== ref || !read || !mine.has(read)) continue;
      free[read.sort].push(read);
    }
  }
  return bounds;
}

/** A value of a constant, or of a stage that is gone through once for many places. */
export type Single = (ref: Ref) => number;

/** A stage bound to its places: gone through again whenever what comes in is another. */
export type ReadyStage = {
  /** What others take of it, in the same vectors each time. */
  readonly kept: ReadonlyMap<Ref, Vector>;
  readonly run: (single: Single) => void;
};

/** Steps that come to something else with every case; all others stand until they are reckoned anew. */
export type Moving = ReadonlySet<Ref>;

/** All steps that stand on what moves, from one side to the next. */
export function movingIn({ steps, stages }: Staged, isMoving: (input: Ref) => boolean): Moving {
  const found = new Set<Ref>();
  const all = Object.values(stages).flatMap(({ own, inputs }) => [...inputs, ...own]);
  for (const ref of all.sort((a, b) => a - b)) {
    const { op, args } = steps[ref] ?? { op: 'input', args: [] };
    if (op === 'input' ? isMoving(ref) : args.some((arg) => found.has(arg))) found.add(ref);
  }
  return found;
}

/**
 * One stage made ready for all of its places.
 *
 * @param inputs what comes in, place by place; all else is the same at every place
 */
export function readyStage(
  steps: readonly Step[],
  { own, kept }: StageSteps,
  places: number,
  inputs: (ref: Ref) => Vector | undefined,
): ReadyStage {
  const found = new Map<Ref, Vector>();
  for (const ref of kept) {
    const step = steps[ref];
    if (step) found.set(ref, inputs(ref) ?? vector(step.sort, places));
  }
  const same: { readonly ref: Ref; readonly into: Vector }[] = [];
  const bounds: Bound[] = [];
  for (let from = 0; from < places; from += block) {
    const n = Math.min(block, places - from);
    const filled = new Map<Ref, Vector>();
    const leaf = (ref: Ref): Vector => {
      const told = inputs(ref);
      const before = told ? partOf(told, from, n) : filled.get(ref);
      if (before) return before;
      const into = vector(steps[ref]?.sort ?? 'number', n);
      same.push({ ref, into });
      filled.set(ref, into);
      return into;
    };
    const out = (ref: Ref): Vector | undefined => {
      const whole = found.get(ref);
      return whole && partOf(whole, from, n);
    };
    bounds.push(...bindAll(steps, own, n, leaf, out));
  }
  return {
    kept: found,
    run: (single) => {
      for (const { ref, into } of same) fillWith(into, single(ref));
      for (const step of bounds) step();
    },
  };
}

export type Kept = Readonly<Record<Exclude<Stage, 'pairs'>, ReadonlyMap<Ref, Vector>>>;

/** A case is one place; a vector has room for four. */
export const onePlace = 4;

type SideStage = Exclude<Stage, 'pairs'>;

/** One stage in two: what stands, and what moves on top of it. */
function readyInTwo(
  steps: readonly Step[],
  { own, kept, inputs: told }: StageSteps,
  moving: Moving,
  places: number,
  inputs: (ref: Ref) => Vector | undefined,
) {
  const moved = own.filter((ref) => moving.has(ref));
  const wanted = new Set([...kept, ...moved.flatMap((ref) => steps[ref]?.args ?? [])]);
  const stands = own.filter((ref) => !moving.has(ref));
  const lasting = [...stands, ...told].filter((ref) => wanted.has(ref) && !moving.has(ref));
  const still = readyStage(steps, { own: stands, inputs: [], kept: lasting }, places, inputs);
  const over = (ref: Ref): Vector | undefined => still.kept.get(ref) ?? inputs(ref);
  const last = kept.filter((ref) => moving.has(ref));
  const anew = readyStage(steps, { own: moved, inputs: [], kept: last }, places, over);
  const all = new Map<Ref, Vector>();
  for (const ref of kept) {
    const found = anew.kept.get(ref) ?? still.kept.get(ref);
    if (found) all.set(ref, found);
  }
  return {
    kept: all,
    run: (single: Single, isAll: boolean): void => {
      if (isAll) still.run(single);
      anew.run(single);
    },
  };
}

/**
 * The stages of a case, its rows and its columns, ready to be gone through one after another: all of
 * them, or what moves and nothing else.
 */
export function readySides(
  { steps, stages: found }: Staged,
  moving: Moving,
  places: Readonly<Record<'rows' | 'columns', number>>,
  inputs: (stage: SideStage, ref: Ref) => Vector | undefined,
): { readonly kept: Kept; readonly run: (isAll: boolean) => void } {
  const ready = (stage: SideStage, n: number) =>
    readyInTwo(steps, found[stage], moving, n, (ref) => inputs(stage, ref));
  const ofCase = ready('case', onePlace);
  const rows = ready('rows', places.rows);
  const columns = ready('columns', places.columns);
  const fixed: Single = (ref) => steps[ref]?.value ?? 0;
  const single: Single = (ref) => ofCase.kept.get(ref)?.of[0] ?? fixed(ref);
  return {
    kept: { case: ofCase.kept, rows: rows.kept, columns: columns.kept },
    run: (isAll) => {
      ofCase.run(fixed, isAll);
      rows.run(single, isAll);
      columns.run(single, isAll);
    },
  };
}
