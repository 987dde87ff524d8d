import { unitOf } from '../../quantity';
import { addedBy, type Ends } from '../catalogue/added';
import { asks } from '../catalogue/ask-names';
import { numberFor, truthFor } from '../catalogue/asks';
import { candidates, type Held, ordersOf, type Read } from '../catalogue/orders';
import type { Catalogue } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import {
  type Input,
  type Inputs,
  jumpSlopes,
  type NumberInput,
  noSlopes,
  nothing,
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

/** What a catalogue says, over every order that the facts leave possible. */
export function catalogued(node: Asked, catalogue: Catalogue, read: Read): Value {
  const { ask, args } = node;
  const isFigure = ask === 'figure';
  const bare: Catalogue = isFigure ? { ...catalogue, wishes: {} } : catalogue;
  const { orders, open } = ordersOf(bare, read, heldBy(node));
  if (asks[ask].yields === 'truth') {
    const found = orders?.flatMap((order) => truthFor(catalogue, ask, args, order));
    const [yes, no] = found ? [found.includes(true), found.includes(false)] : [true, true];
    return { kind: 'truth', yes, no, on: yes && no ? open : nothing };
  }
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
    const added = addedBy(catalogue, ordersOf(catalogue, read).orders).map((each) =>
      Object.fromEntries([
        ...Object.entries(rows.figures).map(([column, figure]) => [
          column,
          cell(each.figures[figure], catalogue.figures[figure]),
        ]),
        [rows.place, cell(each.place, catalogue.placeUnit)],
      ]),
    );
    made.set(rows.list, { ...list, rows: [...list.rows, ...added] });
  }
  withRows.set(inputs, made);
  withRows.set(made, made);
  return made;
}
