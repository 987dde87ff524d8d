/** A number said in words, and where it stands. */
export type SaidNumber = { readonly value: number; readonly from: number; readonly to: number };

const ones: readonly string[] =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens: Readonly<Record<string, number>> = {
  ...{ twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50 },
  ...{ sixty: 60, seventy: 70, eighty: 80, ninety: 90 },
};
const sizes: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000 };

type Word = { readonly word: string; readonly from: number; readonly to: number };

const below20 = (word: string | undefined): number =>
  word === undefined ? -1 : ones.indexOf(word);
const tenOf = (word: string | undefined): number =>
  word !== undefined && Object.hasOwn(tens, word) ? (tens[word] ?? 0) : 0;
const sizeOf = (word: string | undefined): number =>
  word !== undefined && Object.hasOwn(sizes, word) ? (sizes[word] ?? 0) : 0;

/** Words that stand together, so that they may be one number; a comma or a full stop ends them. */
function together(text: string): readonly (readonly Word[])[] {
  const runs: Word[][] = [];
  let end = -1;
  for (const found of text.matchAll(/[a-z]+/gi)) {
    const [from, to] = [found.index, found.index + found[0].length];
    const gap = end < 0 ? '' : text.slice(end, from);
    if (end < 0 || !/^(?: {1,2}|-|\u2010|\u2011)$/.test(gap)) runs.push([]);
    runs.at(-1)?.push({ word: found[0].toLowerCase(), from, to });
    end = to;
  }
  return runs;
}

/** What stands for pounds in “a twenty-pound bottle”, where the words before it are a count. */
const isMeasure = /^(?:pound|pounder|gallon|amp|volt|watt|inch|foot|footer|ply|pin)s?$/;

/** 0 to 99 from a place on, and how many words it takes; none there takes none. */
function belowHundred(words: readonly Word[], at: number): readonly [number, number] {
  const ten = tenOf(words[at]?.word);
  const one = below20(words[at + (ten > 0 ? 1 : 0)]?.word);
  if (ten > 0) return one > 0 && one < 10 ? [ten + one, 2] : [ten, 1];
  return one >= 0 ? [one, 1] : [0, 0];
}

/**
 * A number below a thousand, or as it is said across a counter, in pairs of figures:
 *
 *     three hundred and twelve    fifty-two hundred    thirty-eight fifty    five thirty    five oh five
 */
function group(words: readonly Word[], from: number): readonly [number, number] {
  const isA =
    words[from]?.word === 'a' &&
    (sizeOf(words[from + 1]?.word) > 0 || words[from + 1]?.word === 'grand');
  const [first, took] = isA ? [1, 1] : belowHundred(words, from);
  if (took === 0) return [0, 0];
  let at = from + took;
  if (words[at]?.word === 'hundred') {
    at += 1;
    const and = words[at]?.word === 'and' ? 1 : 0;
    const [rest, more] = belowHundred(words, at + and);
    return more > 0 ? [first * 100 + rest, at + and + more - from] : [first * 100, at - from];
  }
  const oh = words[at]?.word === 'oh' ? 1 : 0;
  const [second, more] = belowHundred(words, at + oh);
  const isPair = first > 0 && more > 0 && (oh === 1 ? second < 10 : second >= 10);
  // “Two twenty-pound bottles” are two of twenty pounds.
  const counts = first < 20 && isMeasure.test(words[at + oh + more]?.word ?? '');
  return isPair && !counts ? [first * 100 + second, took + oh + more] : [first, took];
}

/** “Nine nine fifty”: figure by figure, and the last two together, as a plate is read aloud. */
function figures(words: readonly Word[], from: number): readonly [number, number] {
  const [first, second] = [below20(words[from]?.word), below20(words[from + 1]?.word)];
  const [rest, took] = belowHundred(words, from + 2);
  const isRead = first > 0 && first < 10 && second > 0 && second < 10 && rest >= 10;
  // “Four five gallon jugs”, and what goes on as a telephone’s number does, is none.
  const next = words[from + 2 + took]?.word;
  const goesOn = below20(next) >= 0 || isMeasure.test(next ?? '') || sizeOf(next) > 0;
  return isRead && !goesOn ? [first * 1000 + second * 100 + rest, 2 + took] : [0, 0];
}

function numberAt(words: readonly Word[], from: number): readonly [number, number] {
  const [read, all] = figures(words, from);
  if (all > 0) return [read, all];
  let [value, took] = group(words, from);
  if (took === 0) return [0, 0];
  const half = ['and', 'a', 'half'].every((word, i) => words[from + took + i]?.word === word);
  if (half && words[from + took + 3]?.word === 'thousand') return [(value + 0.5) * 1000, took + 4];
  if (words[from + took]?.word !== 'thousand') return [value, took];
  value *= 1000;
  took += 1;
  const and = words[from + took]?.word === 'and' ? 1 : 0;
  const [rest, more] = group(words, from + took + and);
  return more > 0 && rest < 1000 ? [value + rest, took + and + more] : [value, took];
}

/** Every number of a text that is said in words. */
export function numbersSaid(text: string): readonly SaidNumber[] {
  return together(text).flatMap((words) => {
    const found: SaidNumber[] = [];
    for (let at = 0; at < words.length; ) {
      const [value, took] = numberAt(words, at);
      const [first, last] = [words[at], words[at + took - 1]];
      if (took > 0 && first && last) found.push({ value, from: first.from, to: last.to });
      at += Math.max(1, took);
    }
    return found;
  });
}
