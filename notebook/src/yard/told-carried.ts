import { asWritten, type FactGiven, isRows } from '@tarebook/rules/engine';
import type { Carried } from '../state/carried';
import { kindOf, type kindsOfPeople, peopleList } from '../state/people';
import { figuresOf, nothingTold, packedAsTold, type Told } from './told';

const packedList = 'trailer.cargo';

const saidOf = (label: string, given: FactGiven): readonly string[] =>
  isRows(given)
    ? given.map((row) => `${row.label}: ${asWritten(row.weight ?? 'unknown')}`)
    : [`${label}: ${asWritten(given)}`];

/** What came along from a case, as a counter tells it: figures in their fields, the rest beside them. */
export function toldOf({ way, facts, labels }: Carried): Told {
  const fields = new Set(figuresOf[way].map(({ id }) => id));
  const all = Object.entries(facts);
  const figures = all.flatMap(([id, given]) =>
    fields.has(id) && !isRows(given) ? [[id, asWritten(given)] as const] : [],
  );
  const rest = all.filter(([id]) => !fields.has(id) && id !== peopleList && id !== packedList);
  const { [peopleList]: riding, [packedList]: packed } = facts;
  const nobody = nothingTold(way);
  const rows = riding && isRows(riding) ? riding : undefined;
  const count = (kind: (typeof kindsOfPeople)[number]): number =>
    rows?.filter(({ label }) => kindOf(String(label)) === kind).length ?? 0;
  return {
    ...nobody,
    figures: Object.fromEntries(figures),
    ...(rows && {
      riding: rows,
      aboard: { adult: count('adult'), child: count('child'), dog: count('dog') },
    }),
    ...(packed && isRows(packed) && { load: packedAsTold, packed }),
    ...(rest.length > 0 && {
      more: {
        facts: Object.fromEntries(rest),
        said: rest.flatMap(([id, given]) => saidOf(labels[id] ?? id, given)),
      },
    }),
  };
}
