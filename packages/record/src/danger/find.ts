import { withoutVolts } from '../questions/volts';
import { signs } from './all';
import { type Calm, calmOf } from './calm';
import { reportedIn } from './report';
import type { Sign } from './shapes';
import { speller } from './spelling';
import { stemOf, tellingOf } from './stems';

type Phrase = { readonly stems: readonly string[]; readonly list: number };
type Hit = { readonly at: number; readonly to: number };
type Wanted = { readonly sign: Sign; readonly lists: readonly number[]; readonly unless: number };

/** All lists of words, each once, by the word that begins them. */
function indexed() {
  const numbers = new Map<string, number>();
  const byFirst = new Map<string, Phrase[]>();
  const words = new Set<string>();
  const add = (list: string): number => {
    const before = numbers.get(list);
    if (before !== undefined) return before;
    const number = numbers.size;
    numbers.set(list, number);
    const phrases = list.split(',').map((phrase) => phrase.trim().split(/\s+/));
    for (const phrase of phrases) {
      const telling = phrase.flatMap((word) => (word === '*' ? word : tellingOf(word)));
      const stems = telling.map((word) => (word === '*' ? word : stemOf(word)));
      const [first] = stems;
      if (first === undefined) continue;
      for (const word of telling) words.add(word);
      byFirst.set(first, [...(byFirst.get(first) ?? []), { stems, list: number }]);
    }
    return number;
  };
  const wanted: readonly Wanted[] = signs.map((sign) => ({
    sign,
    lists: sign.lists.map(add),
    unless: sign.unless === undefined ? -1 : add(sign.unless),
  }));
  const names = [...numbers.keys()].map((list) =>
    list.split(',', 3).join(' ').replace(/\s+/g, ' ').trim(),
  );
  return { byFirst, wanted, names, meant: speller(words), stems: new Set([...words].map(stemOf)) };
}

let index: ReturnType<typeof indexed> | undefined;

/** Where the phrases of each list stand in the words of a text. */
function hitsIn(stems: readonly string[], byFirst: ReadonlyMap<string, readonly Phrase[]>) {
  const hits = new Map<number, Hit[]>();
  stems.forEach((stem, at) => {
    for (const { stems: phrase, list } of byFirst.get(stem) ?? []) {
      if (!phrase.every((each, i) => each === '*' || each === stems[at + i])) continue;
      const own = hits.get(list) ?? [];
      own.push({ at, to: at + phrase.length });
      hits.set(list, own);
    }
  });
  return hits;
}

/** A harmless word speaks for what stands in it, and where it is one word for its neighbors. */
const isHarmless = ({ at, to }: Hit, harmless: readonly Hit[]): boolean =>
  harmless.some((each) => {
    const beside = each.to - each.at === 1 ? 1 : 0;
    return at >= each.at - beside && to <= each.to + beside;
  });

/** A long text with the same words over and over is looked through this far. */
const mostHits = 200;

/** Where one of each list stands within so many words; undefined where they do not. */
function together(lists: readonly (readonly Hit[])[], within: number): readonly Hit[] | undefined {
  const [first = [], ...others] = lists;
  if (others.length === 0) return first[0] && [first[0]];
  for (const hit of first.slice(0, mostHits)) {
    const with_ = others.map((list) =>
      list.find(
        (each) => Math.abs(each.at - hit.at) < within && !(each.at < hit.to && hit.at < each.to),
      ),
    );
    const found = with_.flatMap((each) => each ?? []);
    if (found.length === others.length) return [hit, ...found];
  }
  return undefined;
}

const counts = ({ mention = false, told = false }: Sign, calm: Calm): boolean =>
  calm === undefined || (calm === 'priced' && !mention && !told) || (calm === 'asked' && !told);

export type Danger = { readonly sign: Sign; readonly because: readonly string[] };

/** No word of danger, and yet told as whoever is uneasy tells it. */
const report: Sign = { kind: 'doubt', lists: [], within: 0, told: true };

/** What stands in a text of all that a danger may be called. */
export type Looked = {
  readonly dangers: readonly Danger[];
  /** The words that tell, in their order, and the stem of what each was meant to be. */
  readonly words: readonly string[];
  readonly stems: readonly string[];
  /** The first words of the text for each list of the signs, by what the list begins with. */
  readonly named: ReadonlyMap<string, string>;
};

/** What was looked through last: a message, its questions and its sentences are asked for over and over. */
const looked = new Map<string, Looked>();
const mostLooked = 100;

export function lookedAt(text: string): Looked {
  const before = looked.get(text);
  if (before) return before;
  const now = lookedFor(text);
  if (looked.size >= mostLooked) looked.clear();
  looked.set(text, now);
  return now;
}

/** The signs of danger in a text, with the words for which each was taken. */
export const dangersIn = (text: string): readonly Danger[] => lookedAt(text).dangers;

function lookedFor(text: string): Looked {
  index ??= indexed();
  const { byFirst, wanted, meant, stems: listed, names } = index;
  const words: string[] = [];
  const calm: Calm[] = [];
  const sentences = withoutVolts(text).split(/(?<=[.?!])\s|\n+/);
  for (const sentence of sentences) {
    const telling = tellingOf(sentence);
    const isCalm = calmOf(sentence);
    for (const word of telling) {
      words.push(word);
      calm.push(isCalm);
    }
  }
  const stems = words.map((word) => {
    const stem = stemOf(word);
    if (listed.has(stem) || stem.startsWith('=')) return stem;
    const right = meant(word);
    return right === undefined ? stem : stemOf(right);
  });
  const hits = hitsIn(stems, byFirst);
  const signed = wanted.flatMap(({ sign, lists, unless }): readonly Danger[] => {
    if (!lists.every((list) => hits.has(list))) return [];
    const harmless = hits.get(unless) ?? [];
    const counted = lists.map((list) =>
      (hits.get(list) ?? []).filter(
        (hit) => counts(sign, calm[hit.at]) && !isHarmless(hit, harmless),
      ),
    );
    const found = together(counted, sign.within);
    return found
      ? [{ sign, because: found.map(({ at, to }) => words.slice(at, to).join(' ')) }]
      : [];
  });
  const reported = sentences.flatMap((sentence): readonly Danger[] => {
    const thing = calmOf(sentence) === undefined ? reportedIn(sentence) : undefined;
    return thing === undefined ? [] : [{ sign: report, because: [thing] }];
  });
  const named = new Map(
    [...hits].flatMap(([list, [first]]) =>
      first ? [[names[list] ?? '', words.slice(first.at, first.to).join(' ')] as const] : [],
    ),
  );
  return { dangers: signed.length > 0 ? signed : reported, words, stems, named };
}
