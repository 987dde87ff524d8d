import type { Fact, Inputs, Node, NumberInput, Topic } from '@tarebook/rules/engine';
import type { Graph, Ref } from './graph';
import { type Sides, sideOf } from './sides';
import type { NumberSteps } from './values';

/** A number on its way in: its two ends and whether it may be anything. */
export type NumberSource = { readonly lo: Ref; readonly hi: Ref; readonly isOpen: Ref };

/** Whether it is told, and whether it is known. */
export type Telling = { readonly isGiven: Ref; readonly isKnown: Ref };

/** One row of a list, whose columns mean its cells. */
export type Row = { readonly list: string; readonly at: number };

/** What a case, a row and a column tell, and what stands for it in a graph. */
export type Source = {
  readonly telling: (fact: string) => Telling;
  readonly among: (fact: string) => { readonly may: Ref; readonly isOne: Ref };
  readonly number: (fact: string) => NumberSource;
  readonly parameter: (name: string) => Ref;
  readonly count: (list: string) => Ref;
  /** All cells of a column: whether one is told, whether every one is known, whether one may be anything. */
  readonly column: (name: string) => Telling & { readonly isOpen: Ref };
  /** Rows of a list where they are gone through one by one; else `summed` stands for them. */
  readonly rows: (list: string) => readonly Row[];
  readonly cell: (column: string, row: Row) => NumberSource & Telling;
  readonly summed: (sum: SumNode) => NumberSteps | undefined;
};

export type SumNode = Extract<Node, { readonly kind: 'sum' }>;

/** No weight, length or count of a rig comes near it. */
const farOut = 1e12;

const quantities = ['lo', 'hi', 'open', 'given', 'known'] as const;
const choices = ['may', 'one', 'given', 'known'] as const;
const lists = ['count', 'given', 'known'] as const;

/** Everything that may come in of a fact, by the end of its name. */
export function partsOf({ kind }: Fact): readonly string[] {
  if (kind === 'quantity') return quantities;
  return kind === 'rows' ? lists : choices;
}

export const optionsOf = (fact: Fact): readonly string[] =>
  fact.kind === 'choice' ? fact.options : ['yes', 'no'];

/** A fact's numbers, bits and truths as a graph's inputs, whoever tells it and however. */
export function openSource(
  g: Graph,
  topic: Topic,
  sides: Sides,
  summed: Source['summed'],
): Omit<Source, 'rows' | 'cell'> {
  const side = (fact: string): number =>
    topic.facts[fact]?.kind === 'rows' ? 0 : sideOf(sides, fact);
  const truth = (fact: string, part: string): Ref =>
    g.input(`${fact} ${part}`, 'truth', side(fact), 0, 1);
  const telling = (fact: string): Telling => ({
    isGiven: truth(fact, 'given'),
    isKnown: truth(fact, 'known'),
  });
  return {
    telling,
    among: (fact) => ({
      may: g.input(`${fact} may`, 'bits', side(fact), -Infinity, Infinity),
      isOne: truth(fact, 'one'),
    }),
    number: (fact) => {
      const declared = topic.facts[fact];
      const least = declared?.kind === 'quantity' && declared.least >= 0 ? 0 : -Infinity;
      const end = (part: string) =>
        g.input(`${fact} ${part}`, 'number', side(fact), least, Infinity);
      return { lo: end('lo'), hi: end('hi'), isOpen: truth(fact, 'open') };
    },
    parameter: (name) => {
      const values = topic.parameters[name]?.values ?? [];
      const least = values.length > 0 && values.every(({ value }) => value >= 0) ? 0 : -farOut;
      return g.input(`${name} value`, 'number', 0, least, farOut);
    },
    count: (list) => g.input(`${list} count`, 'number', 0, 0, farOut),
    column: (name) => ({
      isGiven: g.input(`${name} given`, 'truth', 0, 0, 1),
      isKnown: g.input(`${name} known`, 'truth', 0, 0, 1),
      isOpen: g.input(`${name} open`, 'truth', 0, 0, 1),
    }),
    summed,
  };
}

const cellIn = (inputs: Inputs, column: string, { list, at }: Row): NumberInput => {
  const input = inputs.get(list);
  const found =
    input?.kind === 'rows' ? input.rows[at]?.[column.slice(list.length + 1)] : undefined;
  if (!found) throw new Error(`There is no “${column}” in row ${at + 1}.`);
  return found;
};

const cellMark = 'cell';

/** What a cell comes to that is another with each draw; undefined for a name that is of no such cell. */
export function drawnCell(inputs: Inputs, name: string): number | undefined {
  const [mark, list = '', column = '', at = ''] = name.split(' ');
  return mark === cellMark ? cellIn(inputs, column, { list, at: Number(at) }).lo : undefined;
}

/**
 * The same where lists are gone through row by row, their cells as a case tells them.
 *
 * @param moving cells that are exact, and another number with each draw: they come in anew
 */
export function listedSource(
  g: Graph,
  topic: Topic,
  sides: Sides,
  inputs: Inputs,
  moving: ReadonlySet<NumberInput> | undefined,
): Source {
  return {
    ...openSource(g, topic, sides, () => undefined),
    rows: (list) => {
      const input = inputs.get(list);
      return input?.kind === 'rows' ? input.rows.map((_, at) => ({ list, at })) : [];
    },
    cell: (column, row) => {
      const found = cellIn(inputs, column, row);
      const { lo, hi, open, status } = found;
      if (moving?.has(found)) {
        const name = [cellMark, row.list, column, row.at].join(' ');
        const at = g.input(name, 'number', 0, -Infinity, Infinity);
        const yes = g.truth(true);
        return { lo: at, hi: at, isOpen: g.truth(false), isGiven: yes, isKnown: yes };
      }
      return {
        ...{ lo: g.constant(lo), hi: g.constant(hi), isOpen: g.truth(open) },
        ...{ isGiven: g.truth(status !== 'silent'), isKnown: g.truth(status === 'known') },
      };
    },
  };
}
