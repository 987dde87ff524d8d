import { addRow, type CaseDocument, removeRow } from '@tarebook/casebook';
import { isAboard, listsOf, type NamedLoad, placesOf } from './loads';
import { peopleList, rowsOf } from './people';
import { readDocument } from './reading';

const without = (doc: CaseDocument, load: NamedLoad): CaseDocument =>
  listsOf(load).reduce(
    (before, list) =>
      // From the last up, so that those before them stay where they are.
      placesOf(before, load.rows, list).reduce(
        (now, at) => readDocument(removeRow(now, list, at)),
        before,
      ),
    doc,
  );

/** Nobody who was there before rides along. */
const withoutPeople = (doc: CaseDocument): CaseDocument =>
  rowsOf(doc, peopleList).reduce((before) => readDocument(removeRow(before, peopleList, 0)), doc);

/** Takes a load along in the place of the others that go into its lists, or leaves it at home again. */
export function turned(doc: CaseDocument, load: NamedLoad, all: readonly NamedLoad[]): string {
  const lists = new Set(listsOf(load));
  const rivals = all.filter(({ rows }) => rows.some(({ list }) => lists.has(list)));
  if (isAboard(doc, load) && !lists.has(peopleList)) return without(doc, load).text;
  const alone = rivals.filter((each) => isAboard(doc, each)).reduce(without, doc);
  const bare = lists.has(peopleList) ? withoutPeople(alone) : alone;
  return load.rows.reduce(
    (before, { list, label, weight, ahead }) =>
      readDocument(
        addRow(before, list, label, {
          weight: `${weight} lb`,
          ...(ahead !== '' && { ahead: `${ahead} ft` }),
        }),
      ),
    bare,
  ).text;
}
