import { unitOf } from '../../quantity';
import type { Fact, Topic } from '../define/shapes';
import type { Input, Inputs, NumberInput } from '../value/values';
import { openNumber } from './cells';
import { silentInput } from './facts';

type Random = () => number;

/** Numbers from 0 to 1, the same whenever a rule set is looked at. */
export function randomly(seed: number): Random {
  let state = (seed * 2_654_435_761 + 97) >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

export const numberFactor = (unit: string): number => (unit === '' ? 1 : unitOf(unit).factor);

type Range = {
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly counted?: boolean;
};

/** Small figures come as often as large ones. */
function anyNumber({ unit, least, most, counted = false }: Range, random: Random): NumberInput {
  const at = least + (most - least) * random() ** 3;
  const value = (counted ? Math.round(at) : at) * numberFactor(unit);
  return { kind: 'number', lo: value, hi: value, status: 'known', open: false };
}

const oneOf = (options: readonly string[], random: Random): Input => ({
  kind: 'among',
  options: options.slice(Math.floor(random() * options.length)).slice(0, 1),
  status: 'known',
});

function anything(fact: Fact, random: Random): Input {
  switch (fact.kind) {
    case 'quantity':
      return anyNumber(fact, random);
    case 'choice':
      return oneOf(fact.options, random);
    case 'yes-no':
      return oneOf(['yes', 'no'], random);
    case 'rows': {
      const row = () =>
        Object.fromEntries(
          Object.entries(fact.columns).map(([id, column]) => [
            id,
            column.required || random() < 0.6
              ? anyNumber(column, random)
              : openNumber(column, 'silent'),
          ]),
        );
      const rows = Array.from({ length: Math.floor(random() * 3) }, row);
      return { kind: 'rows', rows, status: 'known' };
    }
  }
}

/** Facts of all kinds, most of them told. */
export function anyFacts(topic: Topic, times: number): readonly Inputs[] {
  const random = randomly(1);
  return Array.from({ length: times }, () => {
    const made = Object.entries(topic.facts).map(([id, fact]): [string, Input] => [
      id,
      random() < 0.75 ? anything(fact, random) : silentInput(fact),
    ]);
    return new Map(made);
  });
}

type Named = readonly [id: string, fact: Fact, column: string | undefined];

/** A fact, or the column of a list, that a name means. */
function meantBy(topic: Topic, name: string): Named | undefined {
  const own = topic.facts[name];
  if (own) return [name, own, undefined];
  const dot = name.lastIndexOf('.');
  const list = topic.facts[name.slice(0, dot)];
  return list?.kind === 'rows' ? [name.slice(0, dot), list, name.slice(dot + 1)] : undefined;
}

function withColumn(input: Input | undefined, column: string, cell: () => NumberInput): Input {
  const rows = input?.kind === 'rows' ? input.rows : [];
  return {
    kind: 'rows',
    rows: rows.map((row) => ({ ...row, [column]: cell() })),
    status: input?.status ?? 'silent',
  };
}

/** The same facts, and nothing told of those. */
export function untold(topic: Topic, inputs: Inputs, names: readonly string[]): Inputs {
  const made = new Map(inputs);
  for (const [id, fact, column] of names.flatMap((name) =>
    [meantBy(topic, name)].flatMap((each) => (each ? [each] : [])),
  )) {
    const declared =
      fact.kind === 'rows' && column !== undefined ? fact.columns[column] : undefined;
    if (declared && column !== undefined)
      made.set(
        id,
        withColumn(made.get(id), column, () => openNumber(declared, 'silent')),
      );
    else made.set(id, silentInput(fact));
  }
  return made;
}

/** The same facts, and anything told of those. */
export function told(
  topic: Topic,
  inputs: Inputs,
  names: readonly string[],
  random: Random,
): Inputs {
  const made = new Map(inputs);
  for (const name of names) {
    const [id, fact, column] = meantBy(topic, name) ?? [];
    if (id === undefined || !fact) continue;
    const declared =
      fact.kind === 'rows' && column !== undefined ? fact.columns[column] : undefined;
    if (declared && column !== undefined)
      made.set(
        id,
        withColumn(made.get(id), column, () => anyNumber(declared, random)),
      );
    else made.set(id, anything(fact, random));
  }
  return made;
}

/** Those facts as they are told, for a message. */
export function named(topic: Topic, inputs: Inputs, names: readonly string[]): string {
  return names
    .map((name) => {
      const [id = name, fact] = meantBy(topic, name) ?? [];
      const input = inputs.get(id);
      if (input?.kind === 'among') return `${name} ${input.options.join(' or ')}`;
      if (input?.kind !== 'number' || fact?.kind !== 'quantity') return name;
      return `${name} ${Number((input.lo / numberFactor(fact.unit)).toPrecision(6))} ${fact.unit}`.trim();
    })
    .join(', ');
}
