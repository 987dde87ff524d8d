/** A title as it is compared with what was typed: its words alone. */
const wordsOf = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[’']|(?<=\d),(?=\d)/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Whoever types a title, or how it begins, wants that case: it stands before what is about the same. */
export function titledFirst<T extends { readonly title: string }>(
  hits: readonly T[],
  all: readonly T[],
  question: string,
): readonly T[] {
  const typed = wordsOf(question);
  if (typed === '') return hits;
  const rank = ({ title }: T): number => {
    const own = wordsOf(title);
    return own === typed ? 0 : typed.includes(' ') && own.startsWith(typed) ? 1 : 2;
  };
  const named = all.filter((row) => rank(row) < 2).toSorted((a, b) => rank(a) - rank(b));
  return [...named, ...hits.filter((row) => !named.includes(row))];
}
