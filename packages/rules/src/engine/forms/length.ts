import type { Said, Say, Sayable, Value } from '../words/value';

/** Common practice for planning speech, until a speaker's own pace is measured. */
export const wordsPerMinute = 175;

export const wordsIn = (text: string): number =>
  text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** How long a text takes to say, in whole seconds, rounded up. */
export const secondsOf = (text: string, pace = wordsPerMinute): number =>
  Math.ceil((wordsIn(text) / pace) * 60);

/**
 * Something to be said, and how soon it is left out. Rank 0 must be said; from `spare` on it is said
 * only while too little is.
 */
export type Part = {
  readonly of: Sayable;
  readonly rank: number;
  /** What must be said for this to be: what to do follows what is wrong. */
  readonly after?: Sayable | undefined;
  /** What there must be room for beside it: a danger is not said without what to do. */
  readonly besides?: Sayable | undefined;
  /** Left out where its figures have been said, and most of its words with them. */
  readonly echoes?: boolean;
  /** The cautions in it, which must not be lost wherever the words are changed. */
  readonly cautions?: readonly Sayable[];
};
/** Ranks from here on are said only while too little is. */
export const spare = 8;

export const must = (of: Sayable): Part => ({ of, rank: 0 });
export const may = (of: Sayable, rank = 1): Part => ({ of, rank });
/** Said only where what it follows is. */
export const following = (part: Part, after: Sayable | undefined): Part => ({ ...part, after });
/** Said only where it tells more than what is said already. */
export const unlessSaid = (part: Part): Part => ({ ...part, echoes: true });
/** A caution, said by itself or in a stretch of its own. */
export const warning = (part: Part, cautions: readonly Sayable[] = [part.of]): Part => ({
  ...part,
  cautions,
});
export const ifShort = (of: Sayable): Part => ({ of, rank: spare });
/** What tells nobody anything to do comes after all else that might be said. */
export const ifStillShort = (of: Sayable): Part => ({ of, rank: spare + 1 });

const figuresIn = (text: string): readonly string[] => text.match(/\d+(?:[.,]\d+)*/g) ?? [];
const lettersIn = (text: string): readonly string[] =>
  text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** Of something said already, so many words are heard again. */
const mostAgain = 0.6;
/** And so many where it has no figure, of one line. */
const mostAgainWithout = 0.75;

/** Words that turn a sentence round, or say what comes first: with one less it says something else. */
const turning: readonly string[] = [
  ...['not', 'no', 'never', 'none', 'nothing', 'nobody', 'cannot', 'without'],
  ...['before', 'until', 'unless'],
];

/** Whether a line has said all figures of a text, with most of its words. */
function isLike(text: string, line: string): boolean {
  const [own, all] = [figuresIn(text), lettersIn(text)];
  const most = own.length === 0 ? mostAgainWithout : mostAgain;
  const [figures, words] = [new Set(figuresIn(line)), new Set(lettersIn(line))];
  if (own.some((each) => !figures.has(each))) return false;
  return all.filter((each) => words.has(each)).length >= all.length * most;
}

/** Whether one line has said a text, with all that turns it. */
function isEcho(text: string, line: string): boolean {
  const [all, words] = [lettersIn(text), new Set(lettersIn(line))];
  const isTurned = all.some((each) => turning.includes(each) && !words.has(each));
  return !isTurned && isLike(text, line);
}

/** Whether the figures that a text has beside those of a part of it have been said. */
function areSaid(text: string, kept: readonly string[], part: string): boolean {
  const [figures, own] = [new Set(figuresIn(kept.join(' '))), new Set(figuresIn(part))];
  return figuresIn(text).every((each) => own.has(each) || figures.has(each));
}

/** A text as it begins a sentence, also where its first word is that of a figure. */
export const begun = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * The parts that go into so many words, in their order: all that must be said, then by rank what
 * still fits. Nothing is said twice.
 */
export const fitted = (
  say: Say,
  parts: readonly Part[],
  words: { readonly least?: number; readonly most: number },
): readonly string[] => fittedWith(say, parts, words).lines;

const isSaid = (value: Value | undefined): value is Said =>
  typeof value === 'object' && value !== null && 'code' in value;

/** A limit that is over without what there is and may be, a question without where to look. */
function shorterOf(of: Sayable): Sayable | undefined {
  if (!('code' in of)) return undefined;
  if (of.code === 'next-asked') return { ...of, values: { ...of.values, where: null } };
  const { said } = of.values;
  return of.code === 'with-both' && isSaid(said) ? said : undefined;
}

export type Fitted = {
  readonly lines: readonly string[];
  /** The cautions that went in, each as it is worded there. */
  readonly cautions: readonly string[];
};

/** The same, and which cautions went in. */
export function fittedWith(
  say: Say,
  parts: readonly Part[],
  { least = 0, most }: { readonly least?: number; readonly most: number },
): Fitted {
  const worded = parts.map(
    ({ of, rank, after, besides, echoes = false, cautions = [] }, place) => ({
      words: begun(say(of)),
      brief: begun(say(shorterOf(of) ?? of)),
      hasBoth: 'code' in of && of.code === 'with-both',
      rank,
      place,
      cautions,
      echoes,
      after: after && begun(say(after)),
      room: besides ? wordsIn(say(besides)) : 0,
    }),
  );
  // What stands word for word in something longer that must be said is said by it.
  const isWithin = (text: string): boolean => {
    const own = lettersIn(text);
    return worded.some(({ words, rank }) => {
      const all = lettersIn(words);
      return rank === 0 && all.length > own.length && own.every((each) => all.includes(each));
    });
  };
  const inOrder = worded.toSorted((a, b) => a.rank - b.rank || a.place - b.place);
  // Where all that must be said is too much, it is said in fewer words.
  const musts = worded.filter(({ rank }) => rank === 0).map(({ words }) => wordsIn(words));
  const isFull = musts.reduce((sum, each) => sum + each, 0) > most;
  const kept = new Map<number, string>();
  const said = new Set<string>();
  const heard: string[] = [];
  let count = 0;
  for (const { words, brief, hasBoth, rank, place, after, room, echoes } of inOrder) {
    const isLong = rank > 0 ? count + wordsIn(words) + room > most : isFull;
    // Its figures may have been said, or there is no room for them.
    const isKnown = hasBoth && areSaid(words, heard, brief);
    const as = isLong || isKnown ? brief : words;
    const length = wordsIn(as);
    if (echoes && (isWithin(words) || heard.some((line) => isEcho(words, line)))) {
      said.add(words);
      continue;
    }
    const isTooMuch = rank > 0 && count + length + room > most;
    if (after !== undefined && !said.has(after)) continue;
    if (words === '' || said.has(words) || isTooMuch || (rank >= spare && count >= least)) continue;
    // What it says over again, and turns, it says alone.
    for (const [at, line] of echoes && rank === 0 ? kept : []) {
      if (isLike(as, line) && isEcho(line, as)) kept.delete(at);
    }
    kept.set(place, as);
    said.add(words);
    heard.push(as);
    count += length;
  }
  // What another part says word for word already is said, whoever says it.
  const carried = worded.filter(({ words }) => said.has(words)).flatMap((each) => each.cautions);
  return {
    lines: worded.flatMap(({ place }) => kept.get(place) ?? []),
    cautions: [...new Set(carried.map((each) => begun(say(each))))],
  };
}
