/** In which order things stand that somebody is working on, and which came after they were first drawn. */
export type InPlace = { readonly all: readonly string[]; readonly later: ReadonlySet<string> };

export const keyOf = ({ topic, name }: { readonly topic: string; readonly name: string }): string =>
  `${topic}/${name}`;

/**
 * What stood there stays where it stood, whatever would come first by now; what came since stands last.
 *
 * @param stays what is gone and keeps its place
 */
export function inPlace(
  now: readonly string[],
  before: InPlace = { all: [], later: new Set() },
  stays: { has(key: string): boolean } = new Set(),
): InPlace {
  const here = new Set(now);
  const kept = before.all.filter((key) => here.has(key) || stays.has(key));
  const stood = new Set(kept);
  const came = now.filter((key) => !stood.has(key));
  const isFirst = before.all.length === 0;
  const later = new Set([...before.later, ...(isFirst ? [] : came)]);
  return { all: [...kept, ...came], later };
}
