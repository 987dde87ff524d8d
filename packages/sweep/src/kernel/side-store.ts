import type { Inputs } from '@tarebook/rules/engine';
import type { Ref } from './graph';
import { type Vector, vector } from './lanes';
import { type Marks, marksOf, weakened } from './marks';
import { factsOfSide, likenessOf, type Places, type Side, toldOfSide } from './places';
import { type Setting, sumsReady, throughSides } from './setting';
import { block, type Staged } from './staged';

/** Rows or columns told alike, with all that a pair wants of them, place by place. */
export type StoredKin = {
  readonly likeness: string;
  /** Where its values begin. */
  readonly from: number;
  /** In rising order. */
  readonly members: Int32Array;
  readonly values: ReadonlyMap<Ref, Vector>;
  /** What held of such in everything read so far. */
  readonly marks: Marks;
  /** False where one lies outside the bounds on which the program was built. */
  readonly isWithin: boolean;
};

/** Fewer told alike share one program that asks more; so do those beyond so many kinds. */
const leastKin = 4;
const mostKin = 24;
const theRest = 'the rest';

/** One side of a program, in one case after another. */
type SideStore = {
  /** Says in which case whatever is read from here on stands. */
  readonly under: (facts: Inputs) => void;
  readonly read: (some: readonly Inputs[]) => readonly StoredKin[];
};

/** One side of a program: its rows or its columns, read by steps that are bound once. */
export function sideStore(all: Staged, setting: Setting, side: Side): SideStore {
  const { topic, sides } = setting;
  const ids = factsOfSide(topic, sides, side);
  const told = toldOfSide(topic, sides, side);
  const slots = (of: Side, n: number): Places => ({
    kin: [],
    slots: n,
    inputs: new Map(
      toldOfSide(topic, sides, of).map(({ name, sort }) => [name, vector(sort, n)] as const),
    ),
  });
  const own = slots(side, block);
  const places = {
    rows: side === 'rows' ? own : slots('rows', 0),
    columns: side === 'columns' ? own : slots('columns', 0),
  };
  const { kept, run } = throughSides(all, setting, places);
  let now: { readonly facts: Inputs; readonly sums: ReturnType<typeof sumsReady> } | undefined;
  const under = (facts: Inputs): void => {
    if (now?.facts !== facts) now = { facts, sums: sumsReady(setting, facts, places) };
  };

  /** Reads so many that they fill the block or a part of it; the last stands at all places behind. */
  const read = (some: readonly Inputs[]): boolean => {
    for (const { name, read: numberOf } of told) {
      const into = own.inputs.get(name);
      if (!into) continue;
      some.forEach((inputs, at) => {
        into.of[at] = numberOf(inputs) ?? 0;
      });
      into.of.fill(into.of[some.length - 1] ?? 0, some.length);
    }
    if (!now) throw new Error('A side stands in no case.');
    const beside = now.sums(true);
    return beside !== undefined && run(now.facts, beside, true);
  };

  /** Reads all of them in blocks, one kin after another; blocks in which something lies outside are told. */
  const readAll = (order: readonly number[], some: readonly Inputs[]) => {
    const values = new Map<Ref, Vector>();
    for (const [ref, { sort }] of kept[side]) values.set(ref, vector(sort, order.length));
    const outside = new Set<number>();
    for (let from = 0; from < order.length; from += block) {
      const part = order.slice(from, from + block);
      if (!read(part.flatMap((at) => some[at] ?? []))) {
        outside.add(from / block);
        continue;
      }
      for (const [ref, whole] of values) {
        const found = kept[side].get(ref);
        if (found) whole.of.set(found.of.subarray(0, part.length), from);
      }
    }
    return { values, outside };
  };

  /** What held of each kind so far; what once was not is not counted on again. */
  const held = new Map<string, Marks>();

  const kindsOf = (some: readonly Inputs[]): readonly (readonly [string, readonly number[]])[] => {
    const byLikeness = new Map<string, number[]>();
    some.forEach((inputs, at) => {
      const likeness = likenessOf(ids, inputs);
      const alike = byLikeness.get(likeness) ?? [];
      alike.push(at);
      byLikeness.set(likeness, alike);
    });
    const own = [...byLikeness]
      .filter(([likeness, { length }]) => length >= leastKin || held.has(likeness))
      .sort(([, a], [, b]) => b.length - a.length)
      .slice(0, mostKin);
    const named = new Set(own.map(([likeness]) => likeness));
    const rest = [...byLikeness].flatMap(([likeness, members]) =>
      named.has(likeness) ? [] : members,
    );
    // In their order like all the others: whoever writes what comes out counts on it.
    return rest.length > 0 ? [...own, [theRest, rest.toSorted((a, b) => a - b)]] : own;
  };

  const readSome = (some: readonly Inputs[]): readonly StoredKin[] => {
    const kinds = kindsOf(some);
    const order: number[] = [];
    const places = kinds.map(([likeness, members]) => {
      const from = order.length;
      for (const member of members) order.push(member);
      // A kin begins at a multiple of four; what stands between two is like its neighbor.
      while (order.length % 4 !== 0) order.push(members.at(-1) ?? 0);
      return { likeness, members, from };
    });
    const { values, outside } = readAll(order, some);
    return places.map(({ likeness, members, from }) => {
      const last = from + members.length - 1;
      const isWithin = ![...outside].some(
        (each) => each >= Math.floor(from / block) && each <= Math.floor(last / block),
      );
      const before = held.get(likeness);
      const now = isWithin ? marksOf(values, from, members.length) : undefined;
      const marks = now ? weakened(before, now) : (before ?? new Map());
      if (now) held.set(likeness, marks);
      return { likeness, from, members: Int32Array.from(members), values, marks, isWithin };
    });
  };
  return { under, read: readSome };
}

/** What the case alone comes to, which every block of a side reckons beside. */
export function caseStore(all: Staged, setting: Setting) {
  const none: Places = { kin: [], slots: 0, inputs: new Map() };
  const empty = (of: Side): Places => ({
    ...none,
    inputs: new Map(
      toldOfSide(setting.topic, setting.sides, of).map(
        ({ name, sort }) => [name, vector(sort, 0)] as const,
      ),
    ),
  });
  const places = { rows: empty('rows'), columns: empty('columns') };
  const { kept, run } = throughSides(all, setting, places);
  let held: Marks | undefined;
  let now: { readonly facts: Inputs; readonly sums: ReturnType<typeof sumsReady> } | undefined;
  return (facts: Inputs) => {
    if (now?.facts !== facts) now = { facts, sums: sumsReady(setting, facts, places) };
    const beside = now.sums(true);
    const isWithin = beside !== undefined && run(facts, beside, true);
    if (isWithin) held = weakened(held, marksOf(kept.case, 0, 1));
    const marks: Marks = held ?? new Map();
    return { values: kept.case, marks, isWithin };
  };
}
