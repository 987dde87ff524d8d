import { find } from '../state/find';
import type { Row } from './rows';

type Words = typeof import('virtual:filed-words').default;

/** What of a case is looked through beside its title. */
type Indexed = {
  readonly row: Row;
  readonly title: string;
  readonly words: string;
  readonly called: readonly string[];
};

/** The cases that a question as people type it is about, the nearest first. */
export function caseFinder(words: Words): (
  query: string,
  rows: readonly Row[],
) => {
  readonly hits: readonly Row[];
  readonly nowhere: readonly string[];
} {
  const indexed = new WeakMap<Row, Indexed>();
  const entry = (row: Row): Indexed => {
    const before = indexed.get(row);
    if (before) return before;
    const of = words[row.topic];
    const made: Indexed = {
      row,
      title: `${row.title} ${row.asked}`,
      words: row.text ?? of?.cases[row.name] ?? '',
      called: of?.called ?? [],
    };
    indexed.set(row, made);
    return made;
  };
  return (query, rows) => {
    const { hits, nowhere } = find(query, rows.map(entry));
    return { hits: hits.map(({ row }) => row), nowhere };
  };
}
