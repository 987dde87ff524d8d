import { stemmer } from 'stemmer';
import { figuresWhole, termOf, wordsOf } from '../terms';
import { same } from '../words/same';
import { numbersSaid } from './number-words';

/** What is compared of a message. */
export type Asking = {
  readonly id: string;
  readonly text: string;
  /** The topics of its parts, in their order. */
  readonly about: string;
  /** Its facts with their values. */
  readonly facts: readonly string[];
  /** The sign of danger that stands first, where one does. */
  readonly danger: string | undefined;
};

/**
 * How alike two messages are is the cosine of their words, each weighed by how seldom it is said (the
 * inverse of how many say it); this much asks the same.
 */
const alike = 0.42;
/** Whoever says that they asked before, or ask on, has asked: then less is enough. */
const alikeAgain = 0.3;
/** About the same topic, or with the same danger or facts, so much less is enough. */
const sameTopic = 0.1;
const sameFacts = 0.1;
/** Who tells other figures and asks the same must say it in nearly the same words. */
const otherFigures = 0.9;
/** So many times as alike as the next, it stands out against all others, and so much is enough. */
const standsOut = { times: 1.8, alike: 0.28 };
/** Fewer words than these are shared by chance … */
const fewest = 4;
/** … unless they are nearly all that is said, or it is said that it was asked and nothing else is like it. */
const fewestOfAll = { words: 2, alike: 0.7, again: 0.22, times: 1.5 };
/** Fewer figures than these are told alike by chance. */
const fewestFigures = 2;

/** A word that so many asked with before says little; the first of them are compared. */
const mostPlaces = 200;

/** Says that it was asked before, or asks on about what was. */
const again =
  /\b(?:again(?!\?)|asked (?:before|abt|about|this|a while|earlier|last)|wrote (?:before|last|earlier|you)|emailed|texted (?:before|earlier|abt|about)|called (?:before|earlier|abt|about|yesterday)|(?:2nd|second|3rd|third|another) (?:try|time|letter|message|request)|following up|follow up|re:|update on|same (?:fella|guy|family|man|lady|contractor|woman|couple)|as before|back to the|no reply|you answered|did you find|waiting on|resent|like i (?:said|asked|wrote)|my (?:last|first) (?:mail|message|letter|question))\b|(?:^|[.,;:!?] )(?:(?:it['’]?s|we['’]?re|we r|and) )?still\b|^(?:it['’]?s|its) the \w+ (?:guy|man|lady|girl|kid|daughter|one)\b/i;

/** What is said in several ways, by the first of them; a word of several lines is of the first. */
const oneWay = new Map(
  same
    .map((line) => line.split(' '))
    .toReversed()
    .flatMap((words) => words.map((word) => [stemmer(word), words[0] ?? word] as const)),
);

/** A number in words as the same in figures, so that “nineteen tonight” is “19 tonite”. */
const inFigures = (text: string): string =>
  numbersSaid(text)
    .filter(({ value }) => value > 9)
    .reduceRight(
      (now, { value, from, to }) => `${now.slice(0, from)}${value}${now.slice(to)}`,
      text,
    );

function termsOf(text: string): ReadonlySet<string> {
  return new Set(
    wordsOf(figuresWhole(inFigures(text)).replace(/(\d)(?=[a-z])/gi, '$1 ')).flatMap((word) => {
      const term = termOf(word);
      if (term === undefined) return [];
      const root = stemmer(word.toLowerCase());
      return oneWay.get(root) ?? root;
    }),
  );
}

const isFigure = (fact: string): boolean => / \d[\d.]* \S/.test(fact);

/**
 * Finds what was asked before; each message is compared with those that came before it.
 *
 * @param known questions of which it is known how seldom a word is said
 */
export function repeatsOver(known: readonly string[] = []): (asking: Asking) => string | null {
  type Seen = Asking & {
    readonly terms: ReadonlySet<string>;
    readonly told: string;
    readonly figures: readonly string[];
  };
  const seen: Seen[] = [];
  const counts = new Map<string, number>();
  let all = 0;
  const byTerm = new Map<string, number[]>();
  const byFacts = new Map<string, string>();
  const byWords = new Map<string, string>();

  function count(terms: Iterable<string>): void {
    all += 1;
    for (const term of terms) counts.set(term, (counts.get(term) ?? 0) + 1);
  }
  for (const text of known) count(termsOf(text));

  const weightOf = (term: string): number =>
    Math.log((all + 20) / ((counts.get(term) ?? 0) + 1)) ** 2;
  const sizeOf = (terms: Iterable<string>, weigh: (term: string) => number): number => {
    let sum = 0;
    for (const term of terms) sum += weigh(term);
    return Math.sqrt(sum);
  };

  function wanted(other: Seen, now: Seen): number {
    // Other figures ask for another answer.
    const differ = now.figures.some((each) => {
      const [fact = ''] = each.split(' ');
      return other.figures.some((one) => one.startsWith(`${fact} `) && one !== each);
    });
    const isAgain = again.test(now.text);
    if (differ && !isAgain) return otherFigures;
    const isSame =
      (now.danger !== undefined && other.danger === now.danger) ||
      (now.facts.length > 0 && other.told === now.told);
    return (
      (isAgain ? alikeAgain : alike) -
      (isSame ? sameFacts : 0) -
      (now.about !== '' && other.about === now.about ? sameTopic : 0)
    );
  }

  function nearest(now: Seen): string | undefined {
    const shared = new Map<number, { count: number; weight: number }>();
    // Hundreds of others share their words, and each weighs the same while nothing is counted.
    const weights = new Map<string, number>();
    const weigh = (term: string): number => {
      const before = weights.get(term);
      if (before !== undefined) return before;
      const weight = weightOf(term);
      weights.set(term, weight);
      return weight;
    };
    for (const term of now.terms) {
      const weight = weigh(term);
      for (const at of (byTerm.get(term) ?? []).slice(0, mostPlaces)) {
        const own = shared.get(at) ?? { count: 0, weight: 0 };
        own.count += 1;
        own.weight += weight;
        shared.set(at, own);
      }
    }
    const mine = sizeOf(now.terms, weigh);
    const ranked = [...shared]
      .filter(([, { count }]) => count >= fewestOfAll.words)
      .flatMap(([at, { count, weight }]) => {
        const other = seen[at];
        return other ? [{ other, count, share: weight / (mine * sizeOf(other.terms, weigh)) }] : [];
      })
      .toSorted((a, b) => b.share - a.share);
    const [first, second] = ranked;
    if (!first) return undefined;
    const least = wanted(first.other, now);
    if (first.count < fewest && first.share < fewestOfAll.alike) {
      const isAlone = first.share >= fewestOfAll.times * (second?.share ?? 0);
      const isAskedOn = again.test(now.text) && isAlone && first.share >= fewestOfAll.again;
      return isAskedOn ? first.other.id : undefined;
    }
    const isApart =
      first.other.about === now.about && first.share >= standsOut.times * (second?.share ?? 0);
    const enough = isApart && least < otherFigures ? Math.min(least, standsOut.alike) : least;
    return first.share >= enough ? first.other.id : undefined;
  }

  return (asking) => {
    const terms = termsOf(asking.text);
    const told = `${asking.about}: ${asking.facts.toSorted().join(', ')}`;
    const figures = asking.facts.filter(isFigure);
    const now = { ...asking, terms, told, figures };
    const words = `${asking.about}: ${wordsOf(asking.text.toLowerCase()).join(' ')}`;
    const best =
      byWords.get(words) ??
      (figures.length < fewestFigures ? undefined : byFacts.get(told)) ??
      nearest(now);
    if (!byWords.has(words)) byWords.set(words, asking.id);
    if (figures.length >= fewestFigures && !byFacts.has(told)) byFacts.set(told, asking.id);
    count(terms);
    const at = seen.push(now) - 1;
    for (const term of terms) {
      const places = byTerm.get(term) ?? [];
      places.push(at);
      byTerm.set(term, places);
    }
    return best ?? null;
  };
}
