import list, { notes } from 'virtual:filed-list';
import { frontLine } from '../state/front-line';
import type { Kept } from '../state/kept';
import { keyOf } from './in-place';
import type { Verdict } from './verdict';

/** A case as a list shows it. */
export type Row = {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  readonly asked: string;
  readonly level: string;
  /** How it came out when the page was built; undefined for a case of one's own. */
  readonly shipped: Verdict | undefined;
  /** As it stands on this device; undefined where nothing was changed. */
  readonly text: string | undefined;
  readonly own: 'filed' | 'changed' | 'mine';
  /** When it was last changed here, in milliseconds since 1970; 0 for one as it came. */
  readonly at: number;
};

export const notesListed = notes;

const easyFirst = ['starter', 'working', 'hard'];
const rank = ({ level }: { readonly level: string }): number =>
  easyFirst.includes(level) ? easyFirst.indexOf(level) : easyFirst.length;

/** Every case that came with the page, by topic, the easy ones first. */
const filed: readonly Row[] = list.flatMap(({ id, cases }) =>
  cases
    .toSorted((a, b) => rank(a) - rank(b))
    .map(({ name, title, asked, level, stands, words }) => ({
      ...{ topic: id, name, title, asked, level: easyFirst.includes(level) ? level : '' },
      ...{ shipped: { stands, words }, text: undefined, own: 'filed' as const, at: 0 },
    })),
);

/** The cases as they came, those changed on this device in their changed form; and one's own. */
export function rowsOf(kept: readonly Kept[]): {
  readonly own: readonly Row[];
  readonly filed: readonly Row[];
} {
  const here = new Map(kept.map((each) => [keyOf(each), each]));
  const came = new Set(filed.map(keyOf));
  const changed = filed.map((row): Row => {
    const mine = here.get(keyOf(row));
    if (!mine) return row;
    const title = frontLine(mine.text, 'title') || row.title;
    return { ...row, title, text: mine.text, at: mine.at, own: 'changed' };
  });
  const mine = kept.flatMap(({ topic, name, text, at }): readonly Row[] =>
    came.has(keyOf({ topic, name }))
      ? []
      : [
          {
            ...{ topic, name, text, at, own: 'mine', shipped: undefined },
            title: frontLine(text, 'title') || name,
            ...{ asked: frontLine(text, 'asked'), level: '' },
          },
        ],
  );
  const own = [...mine, ...changed.filter((row) => row.own === 'changed')];
  return { own: own.toSorted((a, b) => b.at - a.at), filed: changed };
}
