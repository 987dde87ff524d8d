import { type Interval, point, unitOf } from '../../quantity';
import type { Topic } from '../define/shapes';
import {
  type Input,
  type Inputs,
  keyName,
  type NumberInput,
  type NumberValue,
  noSlopes,
  nothing,
  type Value,
} from '../value/values';

/** An input held at one end, or anywhere else inside its range. */
export type Pins = ReadonlyMap<string, Interval>;
export const noPins: Pins = new Map();

/** An input's number, or where it is pinned, moving as fast as itself. */
export function numberValue(
  input: NumberInput,
  key: string,
  pins: Pins,
  withSlopes: boolean,
): NumberValue {
  const { lo, hi } = pins.get(key) ?? input;
  const moves = withSlopes && lo !== hi;
  return { kind: 'number', lo, hi, slopes: moves ? new Map([[key, point(1)]]) : noSlopes };
}

/** The cells of a column, by the list's and the column's names; undefined for any other name. */
export function column(inputs: Inputs, name: string): readonly NumberInput[] | undefined {
  const dot = name.lastIndexOf('.');
  const list = inputs.get(name.slice(0, dot));
  if (list?.kind !== 'rows') return undefined;
  return list.rows.flatMap((row) => row[name.slice(dot + 1)] ?? []);
}

/** The cell of one row, by the name of its column; undefined for any other name. */
export function cellOf(
  inputs: Inputs,
  list: string,
  row: number,
  name: string,
): NumberInput | undefined {
  if (!name.startsWith(`${list}.`)) return undefined;
  const input = inputs.get(list);
  return input?.kind === 'rows' ? input.rows[row]?.[name.slice(list.length + 1)] : undefined;
}

/** Whether an input, a cell or any cell of a column may be anything. */
export function isOpenIn(inputs: Inputs, key: string): boolean {
  const direct = inputs.get(key);
  if (direct) return direct.kind === 'number' && direct.open;
  const cells = column(inputs, keyName(key));
  const mark = key.indexOf('#');
  if (mark >= 0) return cells?.[Number(key.slice(mark + 1))]?.open ?? true;
  return cells?.some((cell) => cell.open) ?? true;
}

/** What a fact gives to a formula. */
export function inputValue(name: string, input: Input, pins: Pins, withSlopes: boolean): Value {
  if (input.kind === 'number') return numberValue(input, name, pins, withSlopes);
  if (input.kind === 'among') {
    const on = input.options.length > 1 ? new Set([name]) : nothing;
    return { kind: 'among', options: input.options, on };
  }
  throw new Error(`“${name}” is a list; formulas use its columns in sum.`);
}

/** What a table of words gives for an option, in base units. */
export function wordValue({ wordTables = {} }: Topic, name: string, word: string): number {
  const table = wordTables[name];
  const value = table?.values[word];
  if (!table || value === undefined) throw new Error(`Table “${name}” has nothing for “${word}”.`);
  return table.valueUnit === '' ? value : value * unitOf(table.valueUnit).factor;
}

const tables = new WeakMap<Topic, Map<string, readonly (readonly [number, number])[]>>();

/** The rows of a table of numbers, in base units. */
export function tableOf(topic: Topic, name: string): readonly (readonly [number, number])[] {
  let kept = tables.get(topic);
  if (!kept) {
    kept = new Map();
    tables.set(topic, kept);
  }
  const before = kept.get(name);
  if (before) return before;
  const table = topic.tables[name];
  if (!table) throw new Error(`There is no table “${name}”.`);
  const key = unitOf(table.keyUnit || '1').factor;
  const value = unitOf(table.valueUnit || '1').factor;
  const rows = table.rows.map(([k, v]) => [k * key, v * value] as const);
  kept.set(name, rows);
  return rows;
}
