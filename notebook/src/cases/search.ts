import type { Findable } from '@tarebook/record';
import { findCases } from '../today/read-line';
import type { Row } from './rows';
import { titledFirst } from './titled-first';

const pathOf = ({ topic, name }: Row): string => `${topic}/${name}`;

export type Found = {
  readonly hits: readonly Row[];
  /** Words of the question that no case has. */
  readonly nowhere: readonly string[];
};

/** What of these cases is looked through: one as it came by its words, one of this device by its text. */
async function findable(rows: readonly Row[]): Promise<readonly Findable[]> {
  const { default: words } = await import('virtual:filed-words');
  return rows.map((row) => {
    const { topic, name, title, asked } = row;
    const text = row.text ?? words[topic]?.cases[name] ?? '';
    return { path: pathOf(row), topic, title: `${title} ${asked}`, text };
  });
}

/** The cases of a list that a question as people type it is about, the nearest first. */
export function caseFinder(rows: readonly Row[]): (question: string) => Promise<Found> {
  const byPath = new Map(rows.map((row) => [pathOf(row), row]));
  let among: Promise<readonly Findable[]> | undefined;
  return async (question) => {
    among ??= findable(rows);
    const { hits, nowhere } = await findCases(question, await among);
    const near = hits.flatMap((path) => byPath.get(path) ?? []);
    return { hits: titledFirst(near, rows, question), nowhere };
  };
}
