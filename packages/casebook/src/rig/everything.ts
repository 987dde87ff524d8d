import type { Fact, Formula, Renamed, Topic } from '@tarebook/rules/engine';

type Topics = Readonly<Record<string, Topic>>;

/** What a live value or a guess may name: a topic, perhaps a moment, and a result of it. */
function resultsOf(topics: readonly Topic[], at: readonly string[]): Record<string, Formula> {
  const named = topics.flatMap(({ id, formulas }) =>
    Object.entries(formulas).flatMap(([name, formula]) =>
      ['', ...at.map((moment) => `@${moment}`)].map((moment): [string, Formula] => [
        `${id}${moment}/${name}`,
        formula,
      ]),
    ),
  );
  return Object.fromEntries(named);
}

/**
 * All topics as one, to read a document by: whose facts may be any topic’s, and whose results are
 * named with their topic. It is read by and never judged by.
 */
export function everything(topics: Topics, at: readonly string[]): Topic | undefined {
  const all = Object.values(topics);
  const [first] = all;
  if (!first) return undefined;
  const facts: Record<string, Fact> = {};
  const renamed: Record<string, Renamed> = {};
  for (const topic of all) Object.assign(facts, topic.facts);
  for (const topic of all) {
    for (const [old, now] of Object.entries(topic.renamed ?? {})) {
      if (!Object.hasOwn(facts, old)) renamed[old] = now;
    }
  }
  const { decisions: _, selections: __, askings: ___, ...rest } = first;
  return { ...rest, id: 'rig', facts, renamed, formulas: resultsOf(all, at) };
}
