import type { QuestionPart } from '@tarebook/record';
import { kindsOfPeople, people, peopleList } from '../state/people';
import { factText } from './words';

type Row = Readonly<Record<string, string>>;

/** “Driver 150 lb, Adult 2 150 lb” */
export const rowsText = (rows: readonly Row[]): string =>
  rows
    .map(({ label = '', weight = '', ...more }) =>
      [label, weight, ...Object.values(more)].join(' ').trim(),
    )
    .join(', ');

/** Whoever rides along has a row each, one of them drives; where nobody said what they weigh, the usual. */
function ridersAsRows({ people: told = [] }: QuestionPart): readonly Row[] {
  if (told.length === 0) return [];
  return kindsOfPeople.flatMap((kind) => {
    const riding = told.find(({ who }) => who === kind);
    const count = riding?.count ?? 0;
    const { one, weight: usual } = people[kind];
    const weight = riding?.weight ?? usual;
    const name = `${one.charAt(0).toUpperCase()}${one.slice(1)}`;
    return Array.from({ length: kind === 'adult' ? Math.max(1, count) : count }, (_, at) => ({
      label: kind === 'adult' && at === 0 ? 'Driver' : `${name}${at === 0 ? '' : ` ${at + 1}`}`,
      weight,
    }));
  });
}

/** Lists that a question tells, by fact, each as it is struck out, with the words it was read from. */
export function listsIn(
  part: QuestionPart,
): readonly { readonly fact: string; readonly rows: readonly Row[]; readonly said: string }[] {
  const riders = ridersAsRows(part);
  const loads = (part.loads ?? []).map(({ list, label, weight }) => ({
    ...{ fact: list, rows: [{ label, weight }] },
    said: factText(list, rowsText([{ label, weight }])),
  }));
  const ride = { fact: peopleList, rows: riders, said: factText(peopleList, rowsText(riders)) };
  return riders.length > 0 ? [ride, ...loads] : loads;
}

/** The same as facts of a case, without what was struck out. */
export function rowsToldIn(
  part: QuestionPart,
  struck: readonly string[],
): Readonly<Record<string, readonly Row[]>> {
  const told: Record<string, readonly Row[]> = {};
  for (const { fact, rows, said } of listsIn(part)) {
    if (!struck.includes(said)) told[fact] = [...(told[fact] ?? []), ...rows];
  }
  return told;
}
