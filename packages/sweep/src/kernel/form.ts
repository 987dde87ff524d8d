import type { Inputs, NumberInput, Topic } from '@tarebook/rules/engine';
import { type Sides, sideBits, sideOf } from './sides';
import { formOfNumber, isVaried } from './source';

export type Side = 'rows' | 'columns';

/** One row or column: what it is like, and its own numbers by the names that a program asks for. */
export type Entry = {
  readonly form: string;
  readonly numbers: readonly number[];
};

/** Entries of one form, their numbers side by side. */
export type Like = {
  readonly form: string;
  /** One of them, from which the programs for all are made. */
  readonly example: Inputs;
  /** Their places among all. */
  readonly places: Int32Array;
  readonly numbers: ReadonlyMap<string, Float64Array>;
};

/** A number that static bounds hold of: what lies a hair below its least is left to the engine. */
const isOdd = (input: NumberInput): boolean => input.lo < 0 && input.lo > -1e-3;

/** What an entry of a side is like: how each of its facts is told, and which numbers it has. */
export function entryOf(topic: Topic, sides: Sides, side: Side, inputs: Inputs): Entry {
  const marks: string[] = [];
  const numbers: number[] = [];
  for (const id of Object.keys(topic.facts)) {
    const input = inputs.get(id);
    if (!input || input.kind === 'rows' || sideOf(sides, id) !== sideBits[side]) continue;
    if (input.kind === 'among') marks.push(`${input.status} ${input.options.join('/')}`);
    else if (isVaried(input)) {
      marks.push(`${formOfNumber(input)}${isOdd(input) ? ' odd' : ''}`);
      numbers.push(input.lo, input.hi);
    } else marks.push(input.status);
  }
  return { form: marks.join(', '), numbers };
}

const namesOf = (topic: Topic, sides: Sides, side: Side, inputs: Inputs): readonly string[] =>
  Object.keys(topic.facts).flatMap((id) => {
    const input = inputs.get(id);
    if (input?.kind !== 'number' || !isVaried(input)) return [];
    return sideOf(sides, id) === sideBits[side] ? [`${id} lo`, `${id} hi`] : [];
  });

/** Entries put together by what they are like, each kind with its numbers side by side. */
export function byForm(
  topic: Topic,
  sides: Sides,
  side: Side,
  entries: readonly { readonly entry: Entry; readonly inputs: () => Inputs }[],
): readonly Like[] {
  const places = new Map<string, number[]>();
  entries.forEach(({ entry }, at) => {
    const found = places.get(entry.form) ?? [];
    found.push(at);
    places.set(entry.form, found);
  });
  return [...places].flatMap(([form, all]) => {
    const example = entries[all[0] ?? 0]?.inputs();
    if (!example) return [];
    const names = namesOf(topic, sides, side, example);
    const numbers = names.map((name, at): [string, Float64Array] => [
      name,
      Float64Array.from(all, (place) => entries[place]?.entry.numbers[at] ?? Number.NaN),
    ]);
    return [{ form, example, places: Int32Array.from(all), numbers: new Map(numbers) }];
  });
}
