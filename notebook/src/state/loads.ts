import type { CaseDocument } from '@tarebook/casebook';
import { rowsOf } from './people';

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

/** Where the rows of a load stand in a list of the case; of two of one name both must be there. */
export function placesOf(
  doc: CaseDocument,
  rows: readonly LoadRow[],
  list: string,
): readonly number[] {
  const labels = rowsOf(doc, list).map(({ label }) => label);
  const taken = new Set<number>();
  for (const { label } of rows.filter((row) => row.list === list)) {
    const at = labels.findIndex((each, index) => each === label && !taken.has(index));
    if (at >= 0) taken.add(at);
  }
  return [...taken].toSorted((a, b) => b - a);
}

export const listsOf = ({ rows }: NamedLoad): readonly string[] => [
  ...new Set(rows.map(({ list }) => list)),
];

/** Whether all of it is aboard. */
export const isAboard = (doc: CaseDocument, load: NamedLoad): boolean =>
  listsOf(load).flatMap((list) => placesOf(doc, load.rows, list)).length === load.rows.length;
