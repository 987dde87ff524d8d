import type { CaseDocument, ValueChange } from '@tarebook/casebook';
import { type Along, asWritten, type CellGiven, isRows } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';

/** A number as it is written into a case; what a person wrote stays as it was written. */
const written = (given: CellGiven | undefined): string =>
  typeof given === 'object' && 'lo' in given && given.lo !== undefined && given.hi !== undefined
    ? show({ lo: given.lo ?? 0, hi: given.hi ?? 0 }, given.unit)
    : asWritten(given ?? '');

/** What has to be written into a case so that its facts stand where the line was moved to. */
export function changesTo(doc: CaseDocument, along: Along, x: number): readonly ValueChange[] {
  const facts = x === along.start ? doc.facts : along.at(x);
  const scaled = along.at(x);
  return Object.keys(scaled).flatMap((fact): readonly ValueChange[] => {
    const [now, before] = [facts[fact], doc.facts[fact]];
    if (now === undefined || (scaled[fact] === before && x !== along.start)) return [];
    if (!isRows(now)) return scaled[fact] === before ? [] : [{ fact, value: written(now) }];
    const moved = scaled[fact];
    return now.flatMap((cells, row) =>
      Object.entries(cells).flatMap(([column, cell]) => {
        const is = moved !== undefined && isRows(moved) ? moved[row]?.[column] : undefined;
        const was = before !== undefined && isRows(before) ? before[row]?.[column] : undefined;
        return column === 'label' || is === was
          ? []
          : [{ fact, row, column, value: written(cell) }];
      }),
    );
  });
}
