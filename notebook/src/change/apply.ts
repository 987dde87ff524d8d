import { type CaseDocument, removeRow, setCell, setFact } from '@tarebook/casebook';
import type { FactChange, FactsGiven, Remedy, Told } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import { readDocument } from '../state/reading';

const written = (told: Told): string =>
  told === null ? 'unknown' : typeof told === 'string' ? told : show(told, told.unit);

function applyOne(doc: CaseDocument, change: FactChange, facts: FactsGiven): string {
  const { fact, row, column, to } = change;
  if (row !== undefined) {
    if (to === 'none') return removeRow(doc, fact, row - 1);
    return column === undefined ? doc.text : setCell(doc, fact, row - 1, column, written(to));
  }
  const value = facts[fact];
  return setFact(doc, fact, typeof value === 'string' ? value : written(to));
}

/** The case with a proposed change written into it; the rest of the text stays. */
export function withRemedy(doc: CaseDocument, remedy: Remedy): string {
  const first = applyOne(doc, remedy, remedy.facts);
  if (!remedy.with || !doc.topic) return first;
  return applyOne(readDocument(first), remedy.with, remedy.facts);
}
