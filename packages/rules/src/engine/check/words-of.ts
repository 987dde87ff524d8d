import type { Topic } from '../define/shapes';

export type UnitOf = (name: string) => string | undefined;

/** The words that a named value may be; undefined when it is a number or nothing. */
export function wordsOf(topic: Topic, unit: UnitOf, name: string): readonly string[] | undefined {
  const fact = topic.facts[name];
  if (fact?.kind === 'choice') return fact.options;
  const decision = topic.decisions?.[name];
  if (decision) return Object.keys(decision.results);
  return unit(name) === 'yes-no' ? ['yes', 'no'] : undefined;
}
