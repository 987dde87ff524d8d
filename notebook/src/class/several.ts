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
  /** Of what is asked: what the verdict is then said to be, one of `words`. */
  readonly verdict?: { readonly found: string; readonly words: readonly string[] };
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
  { result, words, verdict }: SeveralQuestion,
): { readonly said: string } | { readonly wrong: string } {
  if (said === '') {
    return {
      wrong:
        result === 'ask'
          ? 'The verdict is still open; ask until it is settled.'
          : 'Nothing is said yet; type or dictate one or two sentences.',
    };
  }
  if (verdict && askedAndSaid(said, verdict).verdict === undefined) {
    return { wrong: 'It is settled; choose what the verdict is.' };
  }
  const odd = wordsSaid(said).find((word) => !words.includes(word));
  return odd === undefined ? { said } : { wrong: `“${odd}” is none of what can be answered here.` };
}

/** What was asked, and what the verdict was said to be, which stands behind it. */
function askedAndSaid(said: string, verdict: SeveralQuestion['verdict']) {
  const told = wordsSaid(said);
  const last = told.at(-1);
  const isVerdict = last !== undefined && (verdict?.words.includes(last) ?? false);
  return isVerdict
    ? { asked: told.length - 1, verdict: last }
    : { asked: told.length, verdict: undefined };
}

const questions = (n: number): string => `${n} question${n === 1 ? '' : 's'}`;

export function comparedSeveral(
  said: string,
  { result, words, enough, verdict }: SeveralQuestion,
): { readonly met: boolean; readonly says: string } {
  if (result === 'ask') {
    const { asked, verdict: says } = askedAndSaid(said, verdict);
    const isFew = asked <= enough;
    const few = isFew
      ? `settled with ${questions(asked)}`
      : `${questions(asked)}, where ${enough} would do`;
    // Records of old have no verdict in them.
    if (says === undefined) return { met: isFew, says: few };
    const isRight = says === verdict?.found;
    return {
      met: isFew && isRight,
      says: `${few}; the verdict ${isRight ? 'as it came out' : 'otherwise'}`,
    };
  }
  const told = wordsSaid(said);
  const missed = words.filter((word) => !told.includes(word));
  return missed.length === 0
    ? { met: true, says: 'nothing missed' }
    : { met: false, says: `missed: ${missed.join(', ').toLowerCase()}` };
}

/** How many asked how much, or how many said what. */
export function countedSeveral(
  all: readonly string[],
  { result, words, enough, verdict }: SeveralQuestion,
): readonly { readonly word: string; readonly count: number; readonly met: boolean }[] {
  if (result === 'say') {
    return words.map((word) => {
      const count = all.filter((said) => wordsSaid(said).includes(word)).length;
      return { word, count, met: false };
    });
  }
  const best = { asked: enough, verdict: verdict?.found };
  const rows = new Map<string, { word: string; asked: number; count: number; met: boolean }>();
  const row = ({ asked, verdict: says }: typeof best) => {
    const word = `${questions(asked)}${says === undefined ? '' : `, then: ${says}`}`;
    const met = asked <= enough && (says === undefined || says === verdict?.found);
    const made = rows.get(word) ?? { word, asked, count: 0, met };
    rows.set(word, made);
    return made;
  };
  row(best);
  for (const said of all) row(askedAndSaid(said, verdict)).count += 1;
  return [...rows.values()]
    .toSorted((a, b) => a.asked - b.asked)
    .map(({ word, count, met }) => ({ word, count, met }));
}

/** The best answer of an exercise of questions: the order in which the rules would ask. */
export const bestAsked = (labels: readonly string[]): string =>
  `${questions(labels.length)}: ${labels.join(', then ')}`;
