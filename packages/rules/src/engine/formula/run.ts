import { common, hull, type Interval, isClosed, isPoint, point } from '../../quantity';
import type { Read } from '../catalogue/orders';
import type { Catalogue } from '../define/catalogue';
import { asNumber, asTruth } from '../value/truth';
import {
  cellKey,
  exactly,
  type Inputs,
  keyName,
  type NumberValue,
  type Value,
} from '../value/values';
import { brought, withCatalogues } from './brought';
import type { Compiled } from './compile';
import { decide } from './decide';
import type { Node } from './grammar/nodes';
import type { Scope } from './grammar/scope';
import {
  cellOf,
  column,
  inputValue,
  isOpenIn,
  noPins,
  numberValue,
  type Pins,
  tableOf,
  wordValue,
} from './inputs';
import { reckon, restsOnKnown } from './reckon';
import { unmoved } from './rests-on';
import { type Simulated, simulate } from './simulate';

/** All values of one case, in base units. */
export type Run = {
  readonly value: (name: string) => Value;
  readonly given: (name: string) => boolean;
  readonly known: (name: string) => boolean;
  readonly scope: Scope;
  readonly isOpen: (key: string) => boolean;
  /** What it was reckoned from. */
  readonly inputs: Inputs;
  /** Whether a part of a formula rests on nothing unknown, for a run that narrows this one. */
  readonly partKnown: Scope['partKnown'];
};

export type ParameterValues = ReadonlyMap<string, number>;

/**
 * Reckons a case. Values are found when first asked for and kept.
 *
 * @param pins inputs narrowed for this run; `parent` is then the run without them, whose word on
 *   what is known stands: holding an unknown weight still does not make it known.
 * @param like a run of the same topic and parameters; what rests on none of the inputs that differ
 *   is taken from it.
 */
export function run(
  compiled: Compiled,
  given: Inputs,
  parameters: ParameterValues,
  pins: Pins = noPins,
  parent?: Run,
  like?: Run,
): Run {
  const inputs = withCatalogues(compiled.topic, given);
  const isAsBefore = like ? unmoved(compiled, like.inputs, inputs) : undefined;
  const kept = new Map<string, Value>();
  const quarterRuns = new Map<string, Run>();
  const partsKnown = new Map<Node, boolean>();
  const simulations = new Map<string, Simulated>();
  const pinnedRuns = new Map<string, Run>();
  const withSlopes = parent === undefined;
  const isOpen = (key: string) => isOpenIn(inputs, key);

  const value = (name: string): Value => {
    const before = kept.get(name);
    if (before) return before;
    const found = find(name);
    kept.set(name, found);
    return found;
  };

  const find = (name: string): Value => {
    const settledBefore = parent?.value(name);
    if (settledBefore?.kind === 'number' && isPoint(settledBefore)) return settledBefore;
    const formula = compiled.formulas.get(name);
    if (formula) {
      if (like && isAsBefore?.(name)) return like.value(name);
      const plain = reckon(formula.node, scope);
      if (!withSlopes || !formula.repeats || plain.kind !== 'number') return plain;
      kept.set(name, plain);
      return tighten(name, plain, formula.stepwise);
    }
    const parameter = parameters.get(name);
    if (parameter !== undefined) return exactly(parameter);
    const decision = compiled.topic.decisions?.[name];
    if (decision) return decide(decision, decision.on.map(value));
    const input = inputs.get(name);
    if (!input) throw new Error(`There is no value “${name}”.`);
    return inputValue(name, input, pins, withSlopes);
  };

  /**
   * Where a slope keeps one sign, the least and the most are found with that input at its ends; so
   * an input that enters twice no longer counts against itself. An input that may move the result
   * either way is held at its middle, and moves it from there by no more than its steepest slope
   * times half its range: the mean value theorem, whose bounds stand beside the plain ones. Where
   * that is still wide, the range of the worst such input is taken in four parts, unless a simulation
   * would have to be gone through for each.
   */
  const tighten = (name: string, plain: NumberValue, stepwise: boolean): NumberValue => {
    if (isPoint(plain) || plain.slopes.size === 0) return plain;
    const low = new Map<string, Interval>(pins);
    const high = new Map<string, Interval>(pins);
    const middle = new Map<string, Interval>();
    let swing = 0;
    let widest: { readonly key: string; readonly range: Interval; readonly by: number } | undefined;
    for (const [key, slope] of plain.slopes) {
      const range = inputRange(key);
      if (!range || isPoint(range)) continue;
      if (slope.lo < 0 && slope.hi > 0) {
        const by = (Math.max(-slope.lo, slope.hi) * (range.hi - range.lo)) / 2;
        swing += by;
        if (isClosed(range) && by > (widest?.by ?? 0)) widest = { key, range, by };
        hold(middle, key, (range.lo + range.hi) / 2);
        continue;
      }
      const rising = slope.lo >= 0;
      hold(low, key, rising ? range.lo : range.hi);
      hold(high, key, rising ? range.hi : range.lo);
    }
    const valueAt = (at: Pins) => asNumber(pinnedRun(at).value(name));
    let found: Interval = plain;
    if (low.size > pins.size) found = common(found, { lo: valueAt(low).lo, hi: valueAt(high).hi });
    if (middle.size > 0 && Number.isFinite(swing)) {
      const least = valueAt(new Map([...low, ...middle])).lo - swing;
      const most = valueAt(new Map([...high, ...middle])).hi + swing;
      found = common(found, { lo: least, hi: most });
    }
    if (
      widest &&
      !stepwise &&
      pins.size === 0 &&
      widest.by > worthQuartering * (found.hi - found.lo)
    ) {
      const { key, range } = widest;
      const parts = quarters(range).map((each) => asNumber(quarterRun(key, each).value(name)));
      found = common(found, parts.reduce<Interval>(hull, parts[0] ?? found));
    }
    return { ...plain, lo: found.lo, hi: found.hi };
  };

  /** A run with one input in a quarter of its range, in which its slopes may keep one sign. */
  const quarterRun = (key: string, range: Interval): Run => {
    const mark = `${key} ${range.lo}`;
    const before = quarterRuns.get(mark);
    if (before) return before;
    const made = run(compiled, inputs, parameters, new Map([[key, range]]));
    quarterRuns.set(mark, made);
    return made;
  };

  /** One run for all formulas that hold the same inputs at the same ends. */
  const pinnedRun = (at: Pins): Run => {
    const mark = [...at]
      .map(([key, { lo, hi }]) => `${key} ${lo} ${hi}`)
      .sort()
      .join('\n');
    const made = pinnedRuns.get(mark) ?? run(compiled, inputs, parameters, at, self);
    pinnedRuns.set(mark, made);
    return made;
  };

  const inputRange = (key: string): Interval | undefined => {
    const pinned = pins.get(key);
    if (pinned) return pinned;
    const input = inputs.get(key);
    if (input) return input.kind === 'number' ? input : undefined;
    const mark = key.indexOf('#');
    return mark < 0 ? undefined : column(inputs, keyName(key))?.[Number(key.slice(mark + 1))];
  };

  const isGiven = (name: string): boolean => {
    const input = inputs.get(name);
    if (input) return input.status !== 'silent';
    return column(inputs, name)?.some((cell) => cell.status !== 'silent') ?? true;
  };

  const known = (name: string): boolean => {
    const input = inputs.get(name);
    if (input) return input.status === 'known';
    const cells = column(inputs, name);
    if (cells) return cells.every((cell) => cell.status === 'known');
    return parent ? parent.known(name) : restsOnKnown(value(name), isOpen);
  };

  const catalogueNamed = (name: string): Catalogue => {
    const catalogue = compiled.topic.catalogues?.[name];
    if (!catalogue) throw new Error(`There is no catalogue “${name}”.`);
    return catalogue;
  };

  /** Choices and wishes, as a catalogue reads them. */
  const choices: Read = (fact) => {
    const found = value(fact);
    if (found.kind !== 'among') throw new Error(`“${fact}” is no choice.`);
    return { options: found.options, given: isGiven(fact) };
  };

  const scope: Scope = {
    value,
    given: isGiven,
    known,
    partKnown: (node, found) => {
      if (parent) return parent.partKnown(node, found);
      const before = partsKnown.get(node);
      if (before !== undefined) return before;
      const is = restsOnKnown(found, isOpen);
      partsKnown.set(node, is);
      return is;
    },
    may: (node) => parent?.scope.may(node) ?? asTruth(reckon(node, scope)).yes,
    rows: (list) => {
      const input = inputs.get(list);
      return input?.kind === 'rows' ? input.rows.length : 0;
    },
    inRow: (list, row) => rowScope(scope, list, row),
    table: (name) => tableOf(compiled.topic, name),
    wordValue: (table, word) => wordValue(compiled.topic, table, word),
    catalogue: catalogueNamed,
    catalogued: (node) => brought('catalogued')(node, catalogueNamed(node.catalogue), choices),
    sunHeight: (...at) => brought('sunHeight')(...at),
    simulation: (name) => {
      const before = simulations.get(name);
      if (before) return before;
      const simulation = compiled.simulations.get(name);
      if (!simulation) throw new Error(`There is no simulation “${name}”.`);
      const done = simulate(name, simulation, scope);
      simulations.set(name, done);
      return done;
    },
  };

  /** Names of the list's columns mean this row; all others what they mean around it. */
  const rowScope = (around: Scope, list: string, row: number): Scope => ({
    ...around,
    inRow: (inner, index) => rowScope(rowScope(around, list, row), inner, index),
    given: (name) => {
      const cell = cellOf(inputs, list, row, name);
      return cell ? cell.status !== 'silent' : around.given(name);
    },
    known: (name) => {
      const cell = cellOf(inputs, list, row, name);
      return cell ? cell.status === 'known' : around.known(name);
    },
    value: (name) => {
      if (!name.startsWith(`${list}.`)) return around.value(name);
      const cell = cellOf(inputs, list, row, name);
      if (!cell) throw new Error(`“${name}” is not filled in every row.`);
      return numberValue(cell, cellKey(name, row), pins, withSlopes);
    },
  });

  // A formula that was taken from a run like this was never reckoned here, so what is known of its
  // parts stands there; what a narrower run finds of them is no answer.
  const partKnown: Scope['partKnown'] = (node, found) =>
    partsKnown.get(node) ??
    (like ?? parent)?.partKnown(node, found) ??
    scope.partKnown(node, found);

  const self: Run = { value, given: isGiven, known, scope, isOpen, inputs, partKnown };
  return self;
}

/** The same case with some facts told otherwise: what they do not touch is not reckoned again. */
export const runLike = (
  like: Run,
  compiled: Compiled,
  inputs: Inputs,
  parameters: ParameterValues,
): Run => run(compiled, inputs, parameters, noPins, undefined, like);

/** From which share of a result's width an input that moves it either way is taken in parts. */
const worthQuartering = 0.05;

function quarters({ lo, hi }: Interval): readonly Interval[] {
  const at = (share: number) => (share === 1 ? hi : lo + share * (hi - lo));
  return [0, 0.25, 0.5, 0.75].map((from) => ({ lo: at(from), hi: at(from + 0.25) }));
}

/** An open end cannot be held; the input then keeps its range. */
function hold(pins: Map<string, Interval>, key: string, at: number): void {
  if (Number.isFinite(at)) pins.set(key, point(at));
}
