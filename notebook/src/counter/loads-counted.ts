import rows from 'virtual:loads';
import type { CaseDocument } from '@tarebook/casebook';
import { isAboard, loadsFor, type NamedLoad } from '../state/loads';

/** What may be taken along by its name, in the lists that the case has. */
export const offered = (doc: CaseDocument): readonly NamedLoad[] => {
  const lists = Object.entries(doc.topic?.facts ?? {}).flatMap(([id, { kind }]) =>
    kind === 'rows' ? [id] : [],
  );
  return loadsFor(rows, lists);
};

/** “a weekend (240 lb, invented)”: what was counted by name; '' where nothing was. */
export const countedIn = (doc: CaseDocument): string =>
  offered(doc)
    .filter(
      (load) => isAboard(doc, load) && !load.rows.every(({ list }) => list === 'load.occupants'),
    )
    .map(({ name, rows: own }) => {
      const weight = own.reduce((sum, row) => sum + Number(row.weight), 0);
      return `${name} (${weight} lb, invented)`;
    })
    .join(', ');
