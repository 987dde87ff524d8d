import {
  type Compiled,
  compiledOf,
  type Inputs,
  type NumberInput,
  type Topic,
} from '@tarebook/rules/engine';
import { graph } from './build';
import { reckoning } from './formulas';
import type { Ref, Step } from './graph';
import { fillWith, type Vector, vector } from './lanes';
import { isOutside, type Places, type Side, toldOf } from './places';
import { sumName, sumParts } from './program';
import type { Sides } from './sides';
import { drawnCell, listedSource } from './source';
import { movingIn, onePlace, readySides, type Stage, type Staged, staged } from './staged';
import { sumsOf } from './sums';
import type { NumberSteps } from './values';

type BothPlaces = Readonly<Record<Side, Places>>;

/** What cases, rows and columns are of, and the parameters of the day. */
export type Setting = {
  readonly topic: Topic;
  readonly sides: Sides;
  readonly parameters: ReadonlyMap<string, number>;
  /** Cells of the case’s lists that are another number with each draw. */
  readonly moving?: ReadonlySet<NumberInput> | undefined;
};

const sameEverywhere = (sort: Vector['sort'], places: number, value: number): Vector => {
  const made = vector(sort, places);
  fillWith(made, value);
  return made;
};

const ofCase = ({ topic, parameters }: Setting, facts: Inputs, name: string): number | undefined =>
  name.endsWith(' value')
    ? parameters.get(name.slice(0, -' value'.length))
    : (drawnCell(facts, name) ?? toldOf(topic, facts, name));

type SideStage = Exclude<Stage, 'pairs'>;

/** Whether it is told by the rows of a case's list: people, cargo. Those are what moves most. */
function isListed({ topic }: Setting, name: string): boolean {
  if (/^(?:sum|cell) /.test(name)) return true;
  const fact = name.slice(0, Math.max(0, name.lastIndexOf(' ')));
  const list = fact.slice(0, Math.max(0, fact.lastIndexOf('.')));
  return [fact, list].some((id) => topic.facts[id]?.kind === 'rows');
}

/** Puts in what is told now, and says whether that is another than before. */
function isOther(into: Vector, value: number | Vector): boolean {
  const { of } = into;
  let isSame = true;
  for (let i = 0; i < of.length; i += 1) {
    const now = typeof value === 'number' ? value : (value.of[i] ?? 0);
    if (!Object.is(of[i], now)) isSame = false;
    of[i] = now;
  }
  return !isSame;
}

type Beside = (name: string, stage: SideStage) => Vector | undefined;

/** What a program comes to for the case, for each row and for each column. */
export function throughSides(all: Staged, setting: Setting, places: BothPlaces) {
  const { steps, stages } = all;
  const told = {
    case: new Map<Ref, Vector>(),
    rows: new Map<Ref, Vector>(),
    columns: new Map<Ref, Vector>(),
  };
  /** What is another with each case. */
  const moving: {
    readonly ref: Ref;
    readonly step: Step;
    readonly stage: SideStage;
    readonly into: Vector;
  }[] = [];
  const standing: { readonly step: Step; readonly own: Vector }[] = [];
  for (const stage of ['case', 'rows', 'columns'] as const) {
    for (const ref of stages[stage].inputs) {
      const step = steps[ref];
      if (!step) continue;
      const own = stage === 'case' ? undefined : places[stage].inputs.get(step.name);
      const slots = stage === 'case' ? onePlace : places[stage].slots;
      const into = own ?? vector(step.sort, slots);
      if (!own) moving.push({ ref, step, stage, into });
      else standing.push({ step, own });
      told[stage].set(ref, into);
    }
  }
  const slots = { rows: places.rows.slots, columns: places.columns.slots };
  const lists = new Set<Ref>();
  for (const stage of ['case', 'rows', 'columns'] as const) {
    for (const ref of stages[stage].inputs) {
      if (isListed(setting, steps[ref]?.name ?? '')) lists.add(ref);
    }
  }
  const byLists = movingIn(all, (ref) => lists.has(ref));
  const ready = readySides(all, byLists, slots, (stage, ref) => told[stage].get(ref));
  const isOut = (): boolean => standing.some(({ step, own }) => isOutside(step, own));
  const wasOut = isOut();
  /** How often all of it was reckoned, what stands among it. */
  let times = 0;
  return {
    kept: ready.kept,
    byLists,
    times: (): number => times,
    /**
     * False where something lies outside the bounds on which the program was built. Where a case
     * differs from the one before in its lists alone, what does not hang on them stays as it is.
     *
     * @param isRefilled rows and columns are others than when it was made ready, in the same vectors
     */
    run: (facts: Inputs, beside: Beside, isRefilled = false): boolean => {
      let isWithin = !(isRefilled ? isOut() : wasOut);
      let isAll = isRefilled || times === 0;
      for (const { ref, step, stage, into } of moving) {
        const told = beside(step.name, stage) ?? ofCase(setting, facts, step.name);
        if (told === undefined) throw new Error(`There is nothing for “${step.name}”.`);
        if (isOther(into, told) && !lists.has(ref)) isAll = true;
        if (isOutside(step, into)) isWithin = false;
      }
      if (isAll) times += 1;
      ready.run(isAll);
      return isWithin;
    },
  };
}

const refOf = (sum: NumberSteps, part: (typeof sumParts)[number][0]): Ref => {
  const { lo, hi, open, loose } = sum;
  const { closed: rises, endless: risesEndless } = sum.rises;
  const { closed: falls, endless: fallsEndless } = sum.falls;
  return { lo, hi, open, loose, rises, risesEndless, falls, fallsEndless }[part];
};

/**
 * The sums over a case's lists, row by row, for the case and for every row and column they hang on;
 * undefined where a kernel is not sure of them.
 *
 * @throws NotHeld naming what a kernel cannot hold.
 */
export const sumsIn = (setting: Setting, facts: Inputs, places: BothPlaces): Beside | undefined =>
  sumsReady(setting, facts, places)(false);

/** The same, ready to be reckoned again once other rows or columns stand in the same vectors. */
export function sumsReady(
  setting: Setting,
  facts: Inputs,
  places: BothPlaces,
): (isRefilled: boolean) => Beside | undefined {
  const compiled: Compiled = compiledOf(setting.topic);
  const g = graph();
  const of = reckoning(
    g,
    compiled,
    listedSource(g, setting.topic, setting.sides, facts, setting.moving),
  );
  const outputs = new Map<string, { readonly ref: Ref; readonly sort: Step['sort'] }>();
  sumsOf(compiled).forEach((sum, at) => {
    const total = of.total(sum);
    for (const [part, sort] of sumParts) {
      outputs.set(sumName(at, part), { ref: refOf(total, part), sort });
    }
  });
  const all = staged(
    g.steps,
    [...outputs.values()].map(({ ref }) => ref),
  );
  const { kept, run } = throughSides(all, setting, places);
  const beside: Beside = (name, stage) => {
    const output = outputs.get(name);
    if (!output) return undefined;
    const { ref, sort } = output;
    const own = kept[stage].get(ref);
    if (own) return own;
    const value = kept.case.get(ref)?.of[0] ?? g.steps[ref]?.value ?? 0;
    return sameEverywhere(sort, stage === 'case' ? onePlace : places[stage].slots, value);
  };
  return (isRefilled) => (run(facts, () => undefined, isRefilled) ? beside : undefined);
}
