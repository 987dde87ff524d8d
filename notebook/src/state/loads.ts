import { addRow, type CaseDocument, readCaseFrom, removeRow } from '@tarebook/casebook';
import { peopleList, rowsOf } from './people';
import { shelfOfTopics } from './reading';

/** One thing that is taken along, in the words and numbers of the catalogue. */
export type LoadRow = {
  readonly name: string;
  readonly list: string;
  readonly label: string;
  /** In pounds. */
  readonly weight: string;
  /** In feet ahead of the axle; '' where nobody says. */
  readonly ahead: string;
};

/** What goes by one name: “a weekend”. */
export type NamedLoad = { readonly name: string; readonly rows: readonly LoadRow[] };

/** The loads of a catalogue in its order, of each only what goes into lists that are asked. */
export function loadsFor(rows: readonly LoadRow[], lists: readonly string[]): readonly NamedLoad[] {
  return [...new Set(rows.map(({ name }) => name))].flatMap((name) => {
    const own = rows.filter((row) => row.name === name && lists.includes(row.list));
    return own.length === 0 ? [] : [{ name, rows: own }];
  });
}

const rowAt = (doc: CaseDocument, { list, label }: LoadRow): number =>
  rowsOf(doc, list).findIndex((row) => row.label === label);

/** Whether all of it is aboard. */
export const isAboard = (doc: CaseDocument, { rows }: NamedLoad): boolean =>
  rows.every((row) => rowAt(doc, row) >= 0);

const reread = (text: string): CaseDocument => readCaseFrom(shelfOfTopics(), text);

const without = (doc: CaseDocument, rows: readonly LoadRow[]): CaseDocument =>
  rows.reduce((before, row) => {
    const at = rowAt(before, row);
    return at < 0 ? before : reread(removeRow(before, row.list, at));
  }, doc);

/** Nobody who was there before rides along. */
const withoutPeople = (doc: CaseDocument): CaseDocument =>
  rowsOf(doc, peopleList).reduce((before) => reread(removeRow(before, peopleList, 0)), doc);

/** Takes a load along in the place of the others that go into its lists, or leaves it at home again. */
export function turned(doc: CaseDocument, load: NamedLoad, all: readonly NamedLoad[]): string {
  const lists = new Set(load.rows.map(({ list }) => list));
  const rivals = all.filter(({ rows }) => rows.some(({ list }) => lists.has(list)));
  if (isAboard(doc, load) && !lists.has(peopleList)) return without(doc, load.rows).text;
  const bare = lists.has(peopleList)
    ? withoutPeople(doc)
    : rivals.reduce((before, { rows }) => without(before, rows), doc);
  return load.rows.reduce(
    (before, { list, label, weight, ahead }) =>
      reread(
        addRow(before, list, label, {
          weight: `${weight} lb`,
          ...(ahead !== '' && { ahead: `${ahead} ft` }),
        }),
      ),
    bare,
  ).text;
}
