import { addRow, type CaseDocument, removeRow } from '@tarebook/casebook';
import { countOf, isMentioned, kindOf, labelsOf, type Person, people, peopleList } from './people';
import { readDocument } from './reading';

/** A name that no row has yet: “Adult 2”. */
function freeLabel(doc: CaseDocument, kind: Person): string {
  const taken = new Set(labelsOf(doc).map((label) => label.toLowerCase()));
  const word = `${people[kind].one.charAt(0).toUpperCase()}${people[kind].one.slice(1)}`;
  let n = countOf(doc, kind) + 1;
  while (taken.has(`${word} ${n}`.toLowerCase())) n += 1;
  return n === 1 ? word : `${word} ${n}`;
}

const withRow = (doc: CaseDocument, kind: Person, label: string): string =>
  addRow(doc, peopleList, label, { weight: people[kind].weight });

/** With one more of a kind; the driver, whom nobody had to name until then, is named with them. */
export function withOneMore(doc: CaseDocument, kind: Person): string {
  const label = freeLabel(doc, kind);
  const driven = isMentioned(doc) ? doc : readDocument(withRow(doc, 'adult', 'Driver'));
  return withRow(driven, kind, label);
}

/** Without the last of a kind; nobody drives off without a driver. */
export function withOneLess(doc: CaseDocument, kind: Person): string {
  const least = kind === 'adult' ? 1 : 0;
  if (countOf(doc, kind) <= least) return doc.text;
  const at = labelsOf(doc).findLastIndex((label) => kindOf(label) === kind);
  return removeRow(doc, peopleList, at);
}
