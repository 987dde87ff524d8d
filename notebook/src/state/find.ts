/** What is looked through: a title that counts most, and words that count less. */
export type Sought = {
  readonly title: string;
  readonly words: string;
  /** What people call what it is about; a phrase counts when all of it is in the question. */
  readonly called: readonly string[];
};

/** Words of a question that tell nothing of what it is about. */
const empty = new Set(
  'a about all am an and any anyone are as at be been but by can could did do does for from get got had has have he her here him his how i if in into is it its just me my no not of off on one or our out she so some than that the their them then there they this to too up us was we what when where which who why will with would you your'.split(
    ' ',
  ),
);

/** “batteries” and “battery”, “bars” and “bar” are the same word here. */
const stem = (word: string): string =>
  word.length > 4 && word.endsWith('ies')
    ? `${word.slice(0, -3)}y`
    : word.length > 3 && word.endsWith('s') && !word.endsWith('ss')
      ? word.slice(0, -1)
      : word;

const wordsOf = (text: string): readonly string[] =>
  (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).map(stem);

/** The words of a question that may be found; all of them where all are empty. */
function askedWords(query: string): readonly string[] {
  const all = [...new Set(wordsOf(query))];
  const telling = all.filter((word) => !empty.has(word));
  return telling.length > 0 ? telling : all;
}

type Read = {
  readonly title: ReadonlySet<string>;
  readonly words: ReadonlySet<string>;
  readonly called: readonly (readonly string[])[];
};
const readBefore = new WeakMap<Sought, Read>();

function read(sought: Sought): Read {
  const before = readBefore.get(sought);
  if (before) return before;
  const made = {
    title: new Set(wordsOf(sought.title)),
    words: new Set(wordsOf(sought.words)),
    called: sought.called.map(wordsOf),
  };
  readBefore.set(sought, made);
  return made;
}

const weights = { title: 3, called: 3, words: 1 };
/** The last word may still be being typed. */
const begun = 0.6;
const leastBegun = 3;
/** So much of what was asked has to be in what is found. */
const leastShare = 0.5;

export type Found<T> = {
  readonly hits: readonly T[];
  /** Words of the question that stand nowhere. */
  readonly nowhere: readonly string[];
};

/**
 * What a question as people type it is about, the nearest first. A rare word counts more than a
 * common one; of one or two words all have to be found, of a whole question half of what counts.
 */
export function find<T extends Sought>(query: string, all: readonly T[]): Found<T> {
  const asked = askedWords(query);
  const last = /[\p{L}\p{N}]$/u.test(query) ? asked.at(-1) : undefined;
  const calledIn = (sought: Sought): ReadonlySet<string> =>
    new Set(
      read(sought).called.flatMap((words) =>
        words.every((word) => asked.includes(word)) ? words : [],
      ),
    );
  const weightIn = (sought: T, called: ReadonlySet<string>, word: string): number => {
    const { title, words } = read(sought);
    if (title.has(word)) return weights.title;
    if (called.has(word)) return weights.called;
    if (words.has(word)) return weights.words;
    if (word !== last || word.length < leastBegun) return 0;
    const starts = [...title, ...words].some((each) => each.startsWith(word));
    return starts ? begun : 0;
  };
  const rows = all.map((sought) => {
    const called = calledIn(sought);
    return { sought, by: asked.map((word) => weightIn(sought, called, word)) };
  });
  const counts = asked.map((_, i) => rows.filter(({ by }) => (by[i] ?? 0) > 0).length);
  const nowhere = asked.filter((_, i) => counts[i] === 0);
  const rarity = counts.map((n) => (n === 0 ? 0 : Math.log(1 + all.length / n)));
  const whole = rarity.reduce((sum, each) => sum + each, 0);
  const strict = asked.length <= 2;
  const scored = rows.flatMap(({ sought, by }) => {
    const share = by.reduce((sum, each, i) => sum + (each > 0 ? (rarity[i] ?? 0) : 0), 0) / whole;
    const all = by.every((each) => each > 0);
    if (whole === 0 || (strict ? !all : share < leastShare)) return [];
    return [{ sought, score: by.reduce((sum, each, i) => sum + each * (rarity[i] ?? 0), 0) }];
  });
  const hits = scored.toSorted((a, b) => b.score - a.score).map(({ sought }) => sought);
  return { hits, nowhere };
}
