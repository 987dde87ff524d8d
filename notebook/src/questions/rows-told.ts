import type { QuestionPart } from '@tarebook/record';
import { kindsOfPeople, people, peopleList } from '../state/people';
import type { Asked } from '../state/questions';
import type { ReadFact } from './fact-mend';
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

/** By what the weight of one row is kept where a person set it right. */
const placeOf = (said: string, { label = '' }: Row): string => `${said} / ${label}`;

/** The weight of each row of a list, as it was read and as it counts now. */
export const weightsIn = (
  { rows, said }: ReturnType<typeof listsIn>[number],
  mended: Readonly<Record<string, string>>,
): readonly ReadFact[] =>
  rows.map((row) => {
    const { label = '', weight: read = '' } = row;
    const fact = placeOf(said, row);
    return { fact, label, read, now: mended[fact] ?? read };
  });

/** The same as facts of a case, as a person set them right, without what was struck out. */
export function rowsToldIn(
  part: QuestionPart,
  { struck, mended = {} }: Pick<Asked, 'struck' | 'mended'>,
): Readonly<Record<string, readonly Row[]>> {
  const own = mended[part.text] ?? {};
  const told: Record<string, readonly Row[]> = {};
  for (const list of listsIn(part)) {
    const { fact, said, rows } = list;
    if (struck.includes(said)) continue;
    const weights = weightsIn(list, own);
    const now = rows.map((row, at) => ({ ...row, weight: weights[at]?.now ?? '' }));
    told[fact] = [...(told[fact] ?? []), ...now];
  }
  return told;
}

/** A weight as it was typed; pounds where no unit stands with it. */
const inPounds = (typed: string): string =>
  /^\d[\d,]*(?:\.\d+)?$/.test(typed.trim())
    ? `${typed.trim().replaceAll(',', '')} lb`
    : typed.trim();

/** A message with weights of rows set right; an empty field, or the same as was read, sets nothing right. */
export function withWeights(
  asked: Asked,
  { text }: Pick<QuestionPart, 'text'>,
  list: ReturnType<typeof listsIn>[number],
  typed: Readonly<Record<string, string>>,
): Asked {
  const { [text]: before = {}, ...others } = asked.mended ?? {};
  const weights = weightsIn(list, before);
  const places = new Set(weights.map(({ fact }) => fact));
  const left = Object.entries(before).filter(([fact]) => !places.has(fact));
  const set = weights.flatMap(({ fact, read }) => {
    const value = inPounds(typed[fact] ?? '');
    return value === '' || value === read ? [] : [[fact, value] as const];
  });
  const now = Object.fromEntries([...left, ...set]);
  return {
    ...asked,
    struck: asked.struck.filter((each) => each !== list.said),
    mended: Object.keys(now).length === 0 ? others : { ...others, [text]: now },
  };
}
