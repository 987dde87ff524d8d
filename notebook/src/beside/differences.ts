import type { CaseDocument } from '@tarebook/casebook';
import {
  asWritten,
  type FactGiven,
  isRows,
  type LimitAnswer,
  type Topic,
} from '@tarebook/rules/engine';
import { convert, readQuantity, show, type UnitSystem, wasMisread } from '@tarebook/rules/quantity';
import { type Judged, movedFacts } from '../state/judged';

/** One fact in one rig. */
export type Cell = {
  readonly words: string;
  /** Whether it is not what the first rig has. */
  readonly differs: boolean;
  /** By how much, where both are one number: “+250 lb”. */
  readonly by?: string;
};

export type FactLine = {
  readonly label: string;
  readonly cells: readonly Cell[];
  /** Whether every rig tells it. */
  readonly inAll: boolean;
};

const untold = 'not told';

function inUnits(text: string, system: UnitSystem): string {
  const read = readQuantity(text);
  if (wasMisread(read) || !read.unit) return text;
  return show({ lo: read.from, hi: read.to }, read.unit.symbol, system);
}

function wordsOf(topic: Topic, id: string, given: FactGiven | undefined, system: UnitSystem) {
  if (given === undefined) return untold;
  if (!isRows(given)) {
    const text = asWritten(given);
    return topic.facts[id]?.kind === 'quantity' ? inUnits(text, system) : text;
  }
  return given
    .map(({ label, ...cells }) =>
      [asWritten(label ?? ''), inUnits(asWritten(cells.weight ?? ''), system)].join(' ').trim(),
    )
    .join(', ');
}

/** How much more or less one number is than another, both of them exact. */
function apart(a: FactGiven | undefined, b: FactGiven | undefined, system: UnitSystem) {
  if (typeof a !== 'string' || typeof b !== 'string') return undefined;
  const [first, second] = [readQuantity(a), readQuantity(b)];
  if (wasMisread(first) || wasMisread(second) || !first.unit || !second.unit) return undefined;
  if (first.from !== first.to || second.from !== second.to) return undefined;
  if (first.unit.symbol === '1') return undefined;
  const by = convert(second.from, second.unit, first.unit) - first.from;
  if (by === 0) return undefined;
  const much = Math.abs(by);
  return `${by < 0 ? '−' : '+'}${show({ lo: much, hi: much }, first.unit.symbol, system)}`;
}

/** The facts that are not the same in every rig, in the order of the topic, and how many are. */
export function factLines(
  topic: Topic,
  docs: readonly CaseDocument[],
  system: UnitSystem,
): { readonly lines: readonly FactLine[]; readonly same: number } {
  const [first] = docs;
  if (!first) return { lines: [], same: 0 };
  const moved = docs.map((doc) => new Set(movedFacts(first, doc)));
  const anywhere = Object.keys(topic.facts).filter((id) =>
    docs.some(({ facts }) => facts[id] !== undefined),
  );
  const differing = anywhere.filter((id) => moved.some((each) => each.has(id)));
  const lines = differing.map((id) => ({
    label: topic.facts[id]?.label ?? id,
    inAll: docs.every(({ facts }) => facts[id] !== undefined),
    cells: docs.map(({ facts }, at): Cell => {
      const by = apart(first.facts[id], facts[id], system);
      const differs = moved[at]?.has(id) ?? false;
      return { words: wordsOf(topic, id, facts[id], system), differs, ...(by && { by }) };
    }),
  }));
  return { lines, same: anywhere.length - differing.length };
}

export type LimitLine = {
  readonly id: string;
  readonly label: string;
  /** How it stands in each rig; undefined where that one has no verdict. */
  readonly limits: readonly (LimitAnswer | undefined)[];
  readonly differs: boolean;
  /** The largest limit, to which all bars of the line are drawn. */
  readonly most: number;
};

const stands = (limit: LimitAnswer | undefined): string =>
  JSON.stringify(limit && [limit.state, limit.headroom, limit.limit]);

/** Every limit that is asked of any of the rigs; those that stand alike in all are marked so. */
export function limitLines(topic: Topic, all: readonly Judged[]): readonly LimitLine[] {
  return Object.entries(topic.limits).flatMap(([id, { label }]) => {
    const limits = all.map(({ answer, current }) =>
      current ? answer?.limits.find((each) => each.id === id) : undefined,
    );
    if (limits.every((each) => each === undefined || each.state === 'not-asked')) return [];
    const differs = limits.some((each) => stands(each) !== stands(limits[0]));
    const ends = limits.map((each) => each?.limit.hi ?? 0).filter(Number.isFinite);
    return [{ id, label, limits, differs, most: Math.max(0, ...ends) }];
  });
}

export type ResultLine = { readonly label: string; readonly values: readonly string[] };

/** What else is reckoned of a rig and is not the same in all, such as the heaviest that fits. */
export function resultLines(
  topic: Topic,
  all: readonly Judged[],
  system: UnitSystem,
): readonly ResultLine[] {
  const drawn = new Set(Object.values(topic.limits).flatMap(({ used, limit }) => [used, limit]));
  return topic.headline.flatMap((name) => {
    if (drawn.has(name)) return [];
    const values = all.map(({ answer, current }) => {
      const value = current ? answer?.values[name] : undefined;
      const isKnown = value && Number.isFinite(value.lo) && Number.isFinite(value.hi);
      return isKnown ? show(value, value.unit, system) : 'cannot say';
    });
    if (values.every((each) => each === values[0])) return [];
    return [{ label: topic.formulas[name]?.label ?? name, values }];
  });
}
