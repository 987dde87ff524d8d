import type { Inputs, NumberInput, Status } from '@tarebook/rules/engine';
import type { Graph, Ref } from './graph';
import { type Sides, sideBits, sideOf } from './sides';

/** A number on its way in: its two ends as steps, the same one where it is exact. */
export type NumberSource = {
  readonly lo: Ref;
  readonly hi: Ref;
  readonly status: Status;
  readonly isOpen: boolean;
};

/** What is told of a case, a row and a column: numbers as inputs, all else as it is. */
export type Source = {
  readonly status: (fact: string) => Status;
  readonly options: (fact: string) => readonly string[];
  readonly number: (fact: string) => NumberSource;
  readonly parameter: (name: string) => number;
  readonly rows: (list: string) => number;
  readonly cell: (column: string, row: number) => NumberSource;
};

/** No weight, length or count of a rig comes near it. */
const farOut = 1e12;
/** From here on a number is above zero for good: what is divided by it stays a number. */
const tiny = 1e-6;

/** Whether it is told as a number of its own, and not open or taken for granted. */
export const isVaried = (input: NumberInput): boolean => input.status === 'known';

/** What stands for all numbers of its kind: exact or a range, above zero, zero or more, or any. */
export function formOfNumber({ lo, hi }: NumberInput): string {
  const sign = lo >= tiny ? 'positive' : lo >= 0 ? 'from zero' : 'any';
  return `${lo === hi ? 'exact' : 'range'} ${sign}`;
}

/** The bounds of whatever has the same form. */
function boundsOf({ lo }: NumberInput): readonly [least: number, most: number] {
  if (lo >= tiny) return [tiny, farOut];
  return [lo >= 0 ? 0 : -farOut, farOut];
}

/**
 * Numbers that a row or a column tells come in as inputs; everything else, and all of the case, is
 * taken as it is, so that most of the graph folds away.
 */
export function sourceOf(
  g: Graph,
  inputs: Inputs,
  parameters: ReadonlyMap<string, number>,
  sides: Sides,
): Source {
  const inputAt = (id: string) => {
    const input = inputs.get(id);
    if (!input) throw new Error(`There is no fact “${id}”.`);
    return input;
  };
  const asIs = ({ lo, hi, status, open }: NumberInput): NumberSource => ({
    ...{ lo: g.constant(lo), hi: g.constant(hi), status, isOpen: open },
  });
  return {
    status: (fact) => inputAt(fact).status,
    options: (fact) => {
      const input = inputAt(fact);
      return input.kind === 'among' ? input.options : [];
    },
    number: (fact) => {
      const input = inputAt(fact);
      if (input.kind !== 'number') throw new Error(`“${fact}” is no number.`);
      const side = sideOf(sides, fact);
      if (side === sideBits.case || !isVaried(input)) return asIs(input);
      const [least, most] = boundsOf(input);
      const lo = g.input(`${fact} lo`, 'number', side, least, most);
      const hi = input.lo === input.hi ? lo : g.input(`${fact} hi`, 'number', side, least, most);
      return { lo, hi, status: input.status, isOpen: input.open };
    },
    parameter: (name) => {
      const value = parameters.get(name);
      if (value === undefined) throw new Error(`There is no value “${name}”.`);
      return value;
    },
    rows: (list) => {
      const input = inputAt(list);
      return input.kind === 'rows' ? input.rows.length : 0;
    },
    cell: (column, row) => {
      const dot = column.lastIndexOf('.');
      const input = inputAt(column.slice(0, dot));
      const found = input.kind === 'rows' ? input.rows[row]?.[column.slice(dot + 1)] : undefined;
      if (!found) throw new Error(`There is no “${column}” in row ${row + 1}.`);
      return asIs(found);
    },
  };
}
