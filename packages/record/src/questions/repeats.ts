import { stemmer } from 'stemmer';
import { figuresWhole, termOf, wordsOf } from '../terms';
import { same } from '../words/same';

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

/** Two messages ask the same that share this part of what their words weigh. */
const alike = 0.24;
/** With the same facts, or the same sign of danger, less is enough. */
const alikeFacts = 0.2;
const alikeDanger = 0.18;
/** Where neither tells a figure, the words are all there is. */
const alikePlain = 0.18;
/**
 * Whatever it is read as, a message that shares this part of what the words of both weigh, this part of
 * those of the shorter one, so many words and so many times what any other shares, asks what that one asked.
 */
const standsOut = { alike: 0.18, ofShorter: 0.35, times: 1.6, fewest: 4 };
/** Fewer words than these are shared by chance. */
const fewest = 3;
/** Who tells other figures and asks the same must say it in nearly the same words. */
const otherFigures = 0.75;
/** Fewer figures than these are told alike by chance. */
const fewestFigures = 2;

/** A word that so many asked with before says little; the first of them are compared. */
const mostPlaces = 200;

/** What is said in several ways, by the first of them; a word of several lines is of the first. */
const oneWay = new Map(
  same
    .map((line) => line.split(' '))
    .toReversed()
    .flatMap((words) => words.map((word) => [stemmer(word), words[0] ?? word] as const)),
);

const weightOf = (count: number): number => 1 / (1 + Math.log(1 + count));

function termsOf(text: string): ReadonlySet<string> {
  return new Set(
    wordsOf(figuresWhole(text)).flatMap((word) => {
      const term = termOf(word);
      if (term === undefined) return [];
      const small = word.toLowerCase();
      const root = stemmer(small);
      return oneWay.get(root) ?? root;
    }),
  );
}

const isFigure = (fact: string): boolean => / \d[\d.]* \S/.test(fact);

/** Finds what was asked before; each message is compared with those that came before it. */
export function repeatsOver(): (asking: Asking) => string | null {
  type Seen = Asking & {
    readonly terms: ReadonlySet<string>;
    readonly told: string;
    readonly figures: readonly string[];
  };
  const seen: Seen[] = [];
  const byTerm = new Map<string, number[]>();
  const byFacts = new Map<string, string>();
  const byWords = new Map<string, string>();

  const sum = (terms: Iterable<string>): number => {
    let total = 0;
    for (const term of terms) total += weightOf(byTerm.get(term)?.length ?? 0);
    return total;
  };

  function enough(other: Seen, now: Seen): number {
    if (now.danger !== undefined && other.danger === now.danger) return alikeDanger;
    if (now.facts.length > 0 && other.told === now.told) return alikeFacts;
    // Other figures ask for another answer.
    const differ = now.figures.some((each) => {
      const [fact = ''] = each.split(' ');
      return other.figures.some((one) => one.startsWith(`${fact} `) && one !== each);
    });
    if (differ) return otherFigures;
    const isPlain = now.figures.length + other.figures.length === 0;
    return isPlain ? alikePlain : alike;
  }

  return (asking) => {
    const terms = termsOf(asking.text);
    const told = `${asking.about}: ${asking.facts.toSorted().join(', ')}`;
    const figured = asking.facts.filter(isFigure);
    const now = { ...asking, terms, told, figures: figured };
    const figures = figured.length;
    const words = `${asking.about}: ${wordsOf(asking.text.toLowerCase()).join(' ')}`;
    let best = byWords.get(words) ?? (figures < fewestFigures ? undefined : byFacts.get(told));
    if (best === undefined) {
      const shared = new Map<number, { count: number; weight: number }>();
      for (const term of terms) {
        const places = byTerm.get(term) ?? [];
        for (const at of places.slice(0, mostPlaces)) {
          const own = shared.get(at) ?? { count: 0, weight: 0 };
          own.count += 1;
          own.weight += weightOf(places.length);
          shared.set(at, own);
        }
      }
      let most = 0;
      const mine = sum(terms);
      const nearest = { id: '', share: 0, next: 0, isEnough: false };
      for (const [at, { count, weight }] of shared) {
        const other = seen[at];
        if (!other) continue;
        const theirs = sum(other.terms);
        const share = weight / (mine + theirs - weight);
        const wanted = enough(other, now);
        if (share > nearest.share) {
          nearest.next = nearest.share;
          nearest.share = share;
          nearest.id = other.id;
          nearest.isEnough =
            count >= standsOut.fewest &&
            wanted < otherFigures &&
            weight >= standsOut.ofShorter * Math.min(mine, theirs);
        } else if (share > nearest.next) nearest.next = share;
        if (other.about !== asking.about) continue;
        if (count < fewest && wanted >= alikePlain && share < alike) continue;
        // Of dangers of one kind the first was answered, and its reply stands.
        const over =
          other.danger !== undefined && wanted === alikeDanger ? 1 - at / 1e6 : share - wanted;
        if (share >= wanted && over > most) {
          best = other.id;
          most = over;
        }
      }
      const { id, share, next, isEnough } = nearest;
      if (isEnough && share >= standsOut.alike && share >= standsOut.times * next) best ??= id;
    }
    if (!byWords.has(words)) byWords.set(words, asking.id);
    if (figures >= fewestFigures && !byFacts.has(told)) byFacts.set(told, asking.id);
    const at = seen.push(now) - 1;
    for (const term of terms) {
      const places = byTerm.get(term) ?? [];
      places.push(at);
      byTerm.set(term, places);
    }
    return best ?? null;
  };
}
