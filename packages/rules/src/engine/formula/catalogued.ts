import { unitOf } from '../../quantity';
import { addedBy, type Ends } from '../catalogue/added';
import { asks } from '../catalogue/ask-names';
import { numberFor, truthFor } from '../catalogue/asks';
import {
  candidates,
  type Held,
  modelsOf,
  type Orders,
  ordersOf,
  type Read,
} from '../catalogue/orders';
import type { BuildRows, Catalogue } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import {
  type Input,
  type Inputs,
  jumpSlopes,
  type NumberInput,
  noSlopes,
  nothing,
  type RowsInput,
  type Value,
} from '../value/values';
import type { NodeOf } from './grammar/nodes';

const factorOf = (unit: string | undefined): number => (unit ? unitOf(unit).factor : 1);

type Asked = NodeOf<'catalogued'>;

function heldBy({ ask, args }: Asked): Held {
  const [first] = args;
  if (first === undefined) return {};
  const { about } = asks[ask];
  return about === 'model' ? { model: first } : about === 'year' ? { year: first } : {};
}

const answered = new WeakMap<Orders, Map<string, Value>>();

/** What a catalogue says, over every order that the facts leave possible. */
export function catalogued(node: Asked, catalogue: Catalogue, read: Read): Value {
  const { ask, args } = node;
  const find = ask === 'figure' ? modelsOf : ordersOf;
  const among = find(catalogue, read, heldBy(node));
  const kept = answered.get(among) ?? new Map<string, Value>();
  answered.set(among, kept);
  const mark = [ask, ...args].join(' ');
  const found = kept.get(mark) ?? overAll(node, catalogue, among);
  kept.set(mark, found);
  return found;
}

function overAll({ ask, args }: Asked, catalogue: Catalogue, all: Orders): Value {
  const { open } = all;
  const orders = all[asks[ask].over];
  if (asks[ask].yields === 'truth') {
    const found = orders?.flatMap((order) => truthFor(catalogue, ask, args, order));
    const [yes, no] = found ? [found.includes(true), found.includes(false)] : [true, true];
    return { kind: 'truth', yes, no, on: yes && no ? open : nothing };
  }
  const isFigure = ask === 'figure';
  const among = orders && isFigure ? candidates(catalogue, orders) : orders;
  const found = among?.map((order) => numberFor(catalogue, ask, args, order));
  const factor = factorOf(isFigure ? catalogue.figures[args[0] ?? ''] : undefined);
  const ends = found?.every((each) => each !== undefined) ? found : [[0, Infinity] as const];
  const lo = Math.min(...ends.map((each) => each[0])) * factor;
  const hi = Math.max(...ends.map((each) => each[1])) * factor;
  return { kind: 'number', lo, hi, slopes: lo === hi ? noSlopes : jumpSlopes(noSlopes, open) };
}

/** Ends in a unit as a cell that somebody knows, in base units. */
function cell(ends: Ends = [0, 0], unit: string | undefined): NumberInput {
  const factor = factorOf(unit);
  const [lo, hi] = [ends[0] * factor, ends[1] * factor];
  return { kind: 'number', lo, hi, status: 'known', open: false };
}

type Cells = RowsInput['rows'][number];

/** The rows that the options of every possible order come to. */
function rowsAdded(catalogue: Catalogue, rows: BuildRows, { orders }: Orders): readonly Cells[] {
  return addedBy(catalogue, orders).map((each) =>
    Object.fromEntries([
      ...Object.entries(rows.figures).map(([column, figure]) => [
        column,
        cell(each.figures[figure], catalogue.figures[figure]),
      ]),
      [rows.place, cell(each.place, catalogue.placeUnit)],
    ]),
  );
}

const lengthened = new WeakMap<Orders, WeakMap<RowsInput, RowsInput>>();

/** A list with those rows after its own: of the same list and orders the same again. */
function withAdded(
  catalogue: Catalogue,
  rows: BuildRows,
  among: Orders,
  list: RowsInput,
): RowsInput {
  const kept = lengthened.get(among) ?? new WeakMap<RowsInput, RowsInput>();
  lengthened.set(among, kept);
  const before = kept.get(list);
  if (before) return before;
  const made: RowsInput = { ...list, rows: [...list.rows, ...rowsAdded(catalogue, rows, among)] };
  kept.set(list, made);
  return made;
}

const withRows = new WeakMap<Inputs, Inputs>();

/**
 * The inputs with the rows that catalogues add to their lists. Of inputs that have them already, the
 * same.
 */
export function withBuilds(topic: Topic, inputs: Inputs): Inputs {
  const catalogues = Object.values(topic.catalogues ?? {});
  if (catalogues.length === 0) return inputs;
  const before = withRows.get(inputs);
  if (before) return before;
  const read: Read = (fact) => {
    const input = inputs.get(fact);
    if (input?.kind !== 'among') throw new Error(`“${fact}” is no choice.`);
    return { options: input.options, given: input.status !== 'silent' };
  };
  const made = new Map<string, Input>(inputs);
  for (const catalogue of catalogues) {
    const { rows } = catalogue;
    const list = rows && made.get(rows.list);
    if (!rows || list?.kind !== 'rows') continue;
    const among = ordersOf(catalogue, read);
    made.set(rows.list, withAdded(catalogue, rows, among, list));
  }
  withRows.set(inputs, made);
  withRows.set(made, made);
  return made;
}
