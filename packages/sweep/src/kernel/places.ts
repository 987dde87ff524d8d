import type { Inputs, Topic } from '@tarebook/rules/engine';
import type { Sort, Step } from './graph';
import { padded, type Vector, vector } from './lanes';
import { type Sides, sideBits, sideOf } from './sides';
import { optionsOf, partsOf } from './source';

export type Side = 'rows' | 'columns';

/** Rows or columns told alike, which stand side by side. */
export type Kin = {
  /** Their first slot, a multiple of four, and how many they are. */
  readonly from: number;
  readonly size: number;
  /** Their places among all. */
  readonly members: Int32Array;
};

/** All rows or all columns, put together by how they are told, as a program reads them. */
export type Places = {
  readonly kin: readonly Kin[];
  /** Slots for all of them; some between two kins are empty. */
  readonly slots: number;
  readonly inputs: ReadonlyMap<string, Vector>;
};

/** What all cells of a list's column come to. */
function ofColumn(inputs: Inputs, name: string, part: string): number | undefined {
  const dot = name.lastIndexOf('.');
  const list = inputs.get(name.slice(0, dot));
  if (list?.kind !== 'rows') return undefined;
  const cells = list.rows.flatMap((row) => row[name.slice(dot + 1)] ?? []);
  if (part === 'given') return cells.some(({ status }) => status !== 'silent') ? 1 : 0;
  if (part === 'known') return cells.every(({ status }) => status === 'known') ? 1 : 0;
  return cells.some(({ open }) => open) ? 1 : 0;
}

/** What a program asks for by a name, ready to be read of one rig after another; undefined for what nobody tells. */
export function reading(topic: Topic, name: string): (inputs: Inputs) => number | undefined {
  const space = name.lastIndexOf(' ');
  const [fact, part] = [name.slice(0, space), name.slice(space + 1)];
  const declared = topic.facts[fact];
  const all = declared ? optionsOf(declared) : [];
  return (inputs) => {
    const input = inputs.get(fact);
    if (!input) return ofColumn(inputs, fact, part);
    if (part === 'given') return input.status === 'silent' ? 0 : 1;
    if (part === 'known') return input.status === 'known' ? 1 : 0;
    if (input.kind === 'rows') return part === 'count' ? input.rows.length : undefined;
    if (input.kind === 'number') {
      if (part === 'lo' || part === 'hi') return input[part];
      return part === 'open' ? (input.open ? 1 : 0) : undefined;
    }
    if (part === 'one') return input.options.length === 1 ? 1 : 0;
    return input.options.reduce((bits, each) => bits | (1 << all.indexOf(each)), 0);
  };
}

export const toldOf = (topic: Topic, inputs: Inputs, name: string): number | undefined =>
  reading(topic, name)(inputs);

/** What rows or columns are like: how each fact is told, and whether it is one number or a range. */
export function likenessOf(ids: readonly string[], inputs: Inputs): string {
  return ids
    .map((id) => {
      const input = inputs.get(id);
      if (input?.kind === 'number')
        return `${input.status}${input.lo === input.hi ? '' : ' range'}`;
      return input?.kind === 'among' ? `${input.status} ${input.options.join('/')}` : '';
    })
    .join(', ');
}

/** Fewer that are told alike are put together with others: they share one program that asks more. */
const leastKin = 4;

function kinsOf(likeness: readonly string[]): readonly (readonly number[])[] {
  const byLikeness = new Map<string, number[]>();
  likeness.forEach((each, at) => {
    const found = byLikeness.get(each) ?? [];
    found.push(at);
    byLikeness.set(each, found);
  });
  const all = [...byLikeness.values()];
  const rest = all.filter((each) => each.length < leastKin).flat();
  return [...all.filter((each) => each.length >= leastKin), ...(rest.length > 0 ? [rest] : [])];
}

/** Something that comes in of a side, and how it is read. */
type Told = {
  readonly name: string;
  readonly sort: Sort;
  readonly read: (inputs: Inputs) => number | undefined;
};

/** The facts of one side. */
export const factsOfSide = (topic: Topic, sides: Sides, side: Side): readonly string[] =>
  Object.keys(topic.facts).filter(
    (id) => topic.facts[id]?.kind !== 'rows' && sideOf(sides, id) === sideBits[side],
  );

export const toldOfSide = (topic: Topic, sides: Sides, side: Side): readonly Told[] =>
  factsOfSide(topic, sides, side).flatMap((id) => {
    const fact = topic.facts[id];
    return (fact ? partsOf(fact) : []).map((part) => {
      const name = `${id} ${part}`;
      const sort = part === 'lo' || part === 'hi' ? 'number' : part === 'may' ? 'bits' : 'truth';
      return { name, sort, read: reading(topic, name) } as const;
    });
  });

/** Reads rows or columns once; they serve for whatever case they are set in. */
export function placesOf(topic: Topic, sides: Sides, side: Side, all: readonly Inputs[]): Places {
  const ids = factsOfSide(topic, sides, side);
  const kin: Kin[] = [];
  let slots = 0;
  for (const members of kinsOf(all.map((inputs) => likenessOf(ids, inputs)))) {
    kin.push({ from: slots, size: members.length, members: Int32Array.from(members) });
    slots += padded(members.length);
  }
  const inputs = new Map<string, Vector>();
  for (const { name, sort, read } of toldOfSide(topic, sides, side)) {
    const told = vector(sort, slots);
    for (const { from, members } of kin) {
      members.forEach((member, i) => {
        told.of[from + i] = read(all[member] ?? new Map()) ?? 0;
      });
      // What stands between two kins is like its neighbor, and nobody asks for it.
      const last = from + members.length - 1;
      told.of.fill(told.of[last] ?? 0, last + 1, from + padded(members.length));
    }
    inputs.set(name, told);
  }
  return { kin, slots, inputs };
}

/** Whether a number lies outside the bounds on which a program was built. */
export function isOutside({ sort, least, most }: Step, told: Vector): boolean {
  if (sort !== 'number') return false;
  const { of } = told;
  for (let i = 0; i < of.length; i += 1) {
    const each = of[i] ?? 0;
    if (each < least || each > most) return true;
  }
  return false;
}
