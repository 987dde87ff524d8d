/** What is answered with some words of a list: asked one after another, with as few as will do, or all of them said. */
export type SeveralQuestion = {
  readonly kind: 'several';
  readonly result: 'ask' | 'say';
  readonly label: string;
  readonly words: readonly string[];
  /** So many at most of what is asked; so many at least of what is said. */
  readonly enough: number;
  /** What would have been best, in words. */
  readonly found: string;
};

const between = ' · ';
/** What stands in the record for a sentence that holds nothing of what it should. */
export const noneSaid = 'nothing of it';

export const severalSaid = (words: readonly string[]): string =>
  words.length === 0 ? noneSaid : words.join(between);

export const wordsSaid = (said: string): readonly string[] =>
  said === noneSaid || said === '' ? [] : said.split(between);

/** The answer in one sentence, ready for the record, or what is wrong with it. */
export function readSeveral(
  said: string,
  { result, words }: SeveralQuestion,
): { readonly said: string } | { readonly wrong: string } {
  if (said === '') {
    return {
      wrong:
        result === 'ask'
          ? 'The verdict is still open; ask until it is settled.'
          : 'Nothing is said yet; type or dictate one or two sentences.',
    };
  }
  const odd = wordsSaid(said).find((word) => !words.includes(word));
  return odd === undefined ? { said } : { wrong: `“${odd}” is none of what can be answered here.` };
}

const questions = (n: number): string => `${n} question${n === 1 ? '' : 's'}`;

export function comparedSeveral(
  said: string,
  { result, words, enough }: SeveralQuestion,
): { readonly met: boolean; readonly says: string } {
  const told = wordsSaid(said);
  if (result === 'ask') {
    const met = told.length <= enough;
    return {
      met,
      says: met
        ? `settled with ${questions(told.length)}`
        : `${questions(told.length)}, where ${enough} would do`,
    };
  }
  const missed = words.filter((word) => !told.includes(word));
  return missed.length === 0
    ? { met: true, says: 'nothing missed' }
    : { met: false, says: `missed: ${missed.join(', ').toLowerCase()}` };
}

/** How many asked how much, or how many said what. */
export function countedSeveral(
  all: readonly string[],
  { result, words, enough }: SeveralQuestion,
): readonly { readonly word: string; readonly count: number; readonly met: boolean }[] {
  if (result === 'say') {
    return words.map((word) => {
      const count = all.filter((said) => wordsSaid(said).includes(word)).length;
      return { word, count, met: false };
    });
  }
  const most = Math.max(enough, ...all.map((said) => wordsSaid(said).length));
  return Array.from({ length: most }, (_, at) => {
    const count = all.filter((said) => wordsSaid(said).length === at + 1).length;
    return { word: questions(at + 1), count, met: at + 1 === enough };
  }).filter(({ count, met }) => count > 0 || met);
}

/** The best answer of an exercise of questions: the order in which the rules would ask. */
export const bestAsked = (labels: readonly string[]): string =>
  `${questions(labels.length)}: ${labels.join(', then ')}`;
