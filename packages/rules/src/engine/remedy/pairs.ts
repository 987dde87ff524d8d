import type { Level } from '../define/shapes';
import type { Inputs } from '../value/values';
import { turns } from './solve';
import { type Bench, comparedIn, gaps, inTheWay, isSpent, type Judged, judge } from './trial';
import type { Way } from './way';

export type Pair = {
  readonly first: Way;
  readonly second: Way;
  readonly x: number;
  readonly y: number;
  readonly level: Level;
  readonly edit: (inputs: Inputs) => Inputs;
};

type Search = {
  readonly bench: Bench;
  readonly inputs: Inputs;
  readonly before: Judged;
  readonly ways: readonly Way[];
};

/** One thing in the way, and by how much it is over; of what has no one measure, 1. */
type Need = {
  readonly of: string;
  readonly isLimit: boolean;
  readonly compared: ReturnType<typeof comparedIn>;
  readonly now: readonly number[];
  readonly short: number;
};

function needsOf({ bench, inputs, before }: Search): readonly Need[] {
  return inTheWay(before, before.level).map((of) => {
    const compared = comparedIn(
      bench,
      before,
      (each, type) => each === of && type === before.level,
    );
    const now = gaps(bench, inputs, compared);
    const isLimit = of.startsWith('limit.');
    return { of, isLimit, compared, now, short: isLimit ? Math.max(0, Math.min(...now)) : 1 };
  });
}

/** How much a change, as far as it goes, takes off each thing in the way; no end: it moves it. */
function gainsOf(
  { bench, inputs, before }: Search,
  needs: readonly Need[],
  way: Way,
): readonly number[] {
  const trials = (way.line?.ends ?? [0]).map((x) => way.edit(inputs, x));
  // A limit is told by its numbers alone, and needs no verdict.
  const after = needs.every(({ isLimit }) => isLimit)
    ? []
    : trials.map((trial) => judge(bench, trial).states);
  return needs.map(({ of, isLimit, compared, now }) => {
    const drops = trials
      .flatMap((trial) => gaps(bench, trial, compared).map((gap, i) => (now[i] ?? gap) - gap))
      // Between open ends there is no difference to tell.
      .filter((drop) => !Number.isNaN(drop));
    if (isLimit) return Math.max(0, ...drops);
    const moved = drops.some((drop) => Math.abs(drop) > 1e-9);
    return moved || after.some((states) => states.get(of) !== before.states.get(of)) ? Infinity : 0;
  });
}

/** Added up, and with something to spare since one change may strengthen the other. */
const mayDo = (needs: readonly Need[], a: readonly number[], b: readonly number[]): boolean =>
  needs.every(({ short }, i) => ((a[i] ?? 0) + (b[i] ?? 0)) * 1.25 >= short);

/** The one switches on what the other changes, so that only both together do anything. */
const switchesOn = (a: Way, b: Way): boolean => b.change.onlyIf?.fact === a.change.fact;

/** Rows further down are changed first, so that the others keep their places. */
function together(a: Way, x: number, b: Way, y: number): (inputs: Inputs) => Inputs {
  const aFirst = a.change.fact !== b.change.fact || (a.row ?? 0) >= (b.row ?? 0);
  return aFirst
    ? (inputs) => b.edit(a.edit(inputs, x), y)
    : (inputs) => a.edit(b.edit(inputs, y), x);
}

const sameThing = (a: Way, b: Way): boolean =>
  a.change.fact === b.change.fact &&
  (a.row === b.row || a.change.kind === 'scale' || b.change.kind === 'scale');

const rightsOf = (...ways: readonly Way[]): readonly string[] =>
  ways.flatMap(({ change }) => change.rights ?? []);

/** One as far as it goes, the other solved. */
function oneWhole({ bench, inputs, before }: Search, whole: Way, solved: Way): readonly Pair[] {
  // A row as far as it goes is a row left out, which is a way of its own.
  if (whole.change.kind === 'less' && whole.row !== undefined) return [];
  return (whole.line?.ends ?? [0]).flatMap((x) => {
    const joined: Way = {
      ...solved,
      change: { ...solved.change, rights: rightsOf(whole, solved) },
      edit: (all, y) => together(whole, x, solved, y)(all),
    };
    const half = { ...judge(bench, whole.edit(inputs, x)), level: before.level };
    const [first] = turns(bench, inputs, half, joined, true, before);
    if (!first) return [];
    const edit = together(whole, x, solved, first.x);
    return [{ first: whole, second: solved, x, y: first.x, level: first.level, edit }];
  });
}

/** Order of what a pair asks: the greater of the two, then the lesser, then how much changes. */
export function compareAsked(a: Pair, b: Pair): number {
  const asks = ({ first, second }: Pair) =>
    [first.change.asks, second.change.asks].toSorted((p, q) => q - p);
  const size = ({ first, second, x, y }: Pair) => first.size(x) + second.size(y);
  const [[p = 0, q = 0], [r = 0, s = 0]] = [asks(a), asks(b)];
  return p - r || q - s || size(a) - size(b);
}

/**
 * The pair of changes that asks least, one of them taken as far as it goes and the other solved;
 * for a case that no single change turns.
 */
export function smallestPair(search: Search): Pair | undefined {
  const needs = needsOf(search);
  const moved = search.ways.flatMap((way) =>
    isSpent(search.bench) ? [] : [{ way, gains: gainsOf(search, needs, way) }],
  );
  const candidates: { a: Way; b: Way; key: readonly [number, number] }[] = [];
  moved.forEach(({ way: a, gains }, i) => {
    for (const { way: b, gains: more } of moved.slice(i + 1)) {
      const joined = switchesOn(a, b) || switchesOn(b, a);
      if (sameThing(a, b) || !(joined || mayDo(needs, gains, more))) continue;
      const [greater, lesser] = [a.change.asks, b.change.asks].toSorted((p, q) => q - p);
      candidates.push({ a, b, key: [greater ?? 0, lesser ?? 0] });
    }
  });
  candidates.sort((p, q) => p.key[0] - q.key[0] || p.key[1] - q.key[1]);
  let best: Pair | undefined;
  for (const { a, b, key } of candidates) {
    const asked =
      best && [best.first.change.asks, best.second.change.asks].toSorted((p, q) => q - p);
    if (isSpent(search.bench)) break;
    if (asked && (asked[0] !== key[0] || asked[1] !== key[1])) break;
    const found = [
      ...(b.line ? oneWhole(search, a, b) : []),
      ...(a.line || !b.line ? oneWhole(search, b, a) : []),
    ];
    for (const pair of found) if (!best || compareAsked(pair, best) < 0) best = pair;
  }
  return best;
}
