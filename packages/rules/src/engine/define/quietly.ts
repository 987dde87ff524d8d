import type { Fact } from './shapes';

const quiet = <F extends Fact>(fact: F): F =>
  fact.silent ? { ...fact, silent: { ...fact.silent, quiet: true } } : fact;

/**
 * The same facts with their defaults unspoken, for a topic that stands on another's and seldom has to
 * do with them; where it does, an assumption of its own says what was taken.
 */
export function quietly<const F extends Readonly<Record<string, Fact>>>(
  facts: F | undefined,
): { readonly [Id in keyof F]: Fact };
export function quietly(
  facts: Readonly<Record<string, Fact>> = {},
): Readonly<Record<string, Fact>> {
  return Object.fromEntries(Object.entries(facts).map(([id, fact]) => [id, quiet(fact)]));
}
