import type { Renamed, Topic } from '../define/shapes';
import type { Problem } from './problem';

/** An id that a fact no longer has, and the one it has now. */
export type OldId = { readonly old: string; readonly now: string };

const targetOf = (renamed: Renamed): string => (typeof renamed === 'string' ? renamed : renamed.to);

/** The present id of an old one; an id that is not old stays as it is. */
export function presentId({ renamed = {} }: Pick<Topic, 'renamed'>, id: string): string {
  const found = Object.hasOwn(renamed, id) ? renamed[id] : undefined;
  return found === undefined ? id : targetOf(found);
}

/** What an old value means today: one option, or several of which each is possible. */
function presentValue(renamed: Renamed | undefined, given: unknown): unknown {
  if (typeof renamed !== 'object' || typeof given !== 'string') return given;
  const { values = {} } = renamed;
  const word = given.trim().toLowerCase();
  return (Object.hasOwn(values, word) ? values[word]?.join(' or ') : undefined) ?? given;
}

/**
 * The facts by their present ids: documents, links and saved answers with old ones are read for ever.
 * A fact given by both its ids is a problem, as any that is given twice.
 */
export function presentFacts<T>(
  topic: Pick<Topic, 'renamed' | 'facts'>,
  given: Readonly<Record<string, T>>,
): {
  readonly facts: Readonly<Record<string, T | string>>;
  readonly renamed: readonly OldId[];
  readonly problems: readonly Problem[];
} {
  const renamed: OldId[] = [];
  const problems: Problem[] = [];
  const facts: Record<string, T | string> = Object.create(null);
  for (const [id, value] of Object.entries(given)) {
    const now = presentId(topic, id);
    if (now !== id) renamed.push({ old: id, now });
    if (now !== id && Object.hasOwn(given, now)) {
      const wanted = `keep \`${now}\`, its present id`;
      problems.push({ code: 'given-twice', fact: id, found: now, wanted });
      continue;
    }
    const present = presentValue(topic.renamed?.[id], value);
    facts[now] = typeof present === 'string' ? present : value;
  }
  return { facts, renamed, problems };
}
