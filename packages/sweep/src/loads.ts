import type { FactsGiven, RowGiven } from '@tarebook/rules/engine';
import { underHeads } from './heads';
import type { RefusedRow } from './sheet';
import { readTable, type Wanted } from './table';

/** What goes along under one name, by the list it belongs to. */
export type NamedLoad = {
  readonly name: string;
  readonly facts: FactsGiven;
};

/** What a list is called, and the list itself may stand there too. */
const lists: Readonly<Record<string, string>> = {
  trailer: 'trailer.cargo',
  vehicle: 'load.cargo',
  people: 'load.occupants',
  options: 'trailer.options',
};

export const loadColumns: Readonly<Record<string, Wanted>> = {
  name: { called: ['load', 'load name', 'name of the load'], isNeeded: true },
  list: {
    called: ['goes in', 'where', 'where it goes', 'place'],
    words: Object.keys(lists),
    elseWords: Object.values(lists),
    isNeeded: true,
  },
  label: { called: ['item', 'thing', 'what', 'description'] },
  weight: { called: ['weighs', 'wt', 'pounds', 'lb', 'lbs'], measure: 'lb', isNeeded: true },
  ahead: { called: ['ahead of axle', 'ahead of the axle'], measure: 'ft' },
};

/** Named loads from their file, row by row. */
export function readLoads(
  text: string,
  own: Readonly<Record<string, string>> = {},
): { readonly loads: readonly NamedLoad[]; readonly refused: readonly RefusedRow[] } {
  const { rows, refused } = readTable('loads.csv', underHeads(text, own), loadColumns);
  const byName = new Map<string, Record<string, RowGiven[]>>();
  for (const { texts } of rows) {
    const { name = '', list: where = '', label = '', weight = '', ahead } = texts;
    const list = Object.hasOwn(lists, where) ? (lists[where] ?? where) : where;
    const load = byName.get(name) ?? {};
    load[list] = [...(load[list] ?? []), { label, weight, ...(ahead !== undefined && { ahead }) }];
    byName.set(name, load);
  }
  return { loads: [...byName].map(([name, facts]) => ({ name, facts })), refused };
}
