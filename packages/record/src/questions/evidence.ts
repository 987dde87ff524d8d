import type { Topic } from '@tarebook/rules/engine';
import { figuresWhole, termOf, wordsOf } from '../terms';
import { wordsOfFacts } from '../words/all';
import { type AskedBefore, likenessOver } from './likeness';
import type { Urgency } from './shapes';

/** How much speaks for a topic, and the words that do. */
export type Evidence = {
  readonly topic: string;
  readonly score: number;
  readonly because: readonly string[];
};

type Phrase = {
  readonly terms: readonly string[];
  readonly weight: number;
  /** Whether it is what the topic itself is called. */
  readonly names: boolean;
};

/** What people call the topic itself says more than what they call one of its facts. */
const ofTopic = 3;
const ofFact = 0.8;
const ofOption = 0.8;
/** What says a fact outright is seldom said where nobody asks for that fact. */
const ofSaid = 2.4;
/** A phrase of several words is hardly there by chance. */
const ofMoreWords = 1.5;
/** What is dangerous now is looked into before anything is reckoned. */
const ofDanger = 5;
/** A cold night is told beside much that is asked of something else. */
const ofFrost = 3;
/** What has no rules is told in few words, and counts for more by as much. */
const elsewhereFor = 1.5;
const elsewhereMore = 3;

const sumOf = (keys: ReadonlyMap<string, number>): number =>
  [...keys.values()].reduce((sum, each) => sum + each, 0);

const termsOf = (text: string): readonly string[] =>
  wordsOf(figuresWhole(text)).flatMap((word) => termOf(word) ?? []);

function phrasesOf({ called, facts }: Topic): ReadonlyMap<string, Phrase> {
  const phrases = new Map<string, Phrase>();
  const add = (words: readonly string[], weight: number): void => {
    for (const each of words) {
      const terms = termsOf(each);
      const key = terms.join(' ');
      // Of “too much trailer” one word is left that stands everywhere.
      const isCut = terms.length === 1 && wordsOf(each).length > 1;
      const says = isCut ? ofOption : weight;
      if (terms.length > 0 && !phrases.has(key))
        phrases.set(key, { terms, weight: says, names: says === ofTopic });
    }
  };
  add(called?.topic ?? [], ofTopic);
  add(Object.values(called?.facts ?? {}).flat(), ofFact);
  add(
    Object.values(called?.options ?? {}).flatMap((each) => Object.values(each).flat()),
    ofOption,
  );
  const said = Object.entries(wordsOfFacts.options).filter(([fact]) => Object.hasOwn(facts, fact));
  add(
    said.flatMap(([, each]) => Object.values(each).flat()),
    ofSaid,
  );
  return phrases;
}

const takes: Readonly<Record<Urgency, string>> = {
  gas: 'service-triage',
  alarm: 'service-triage',
  smoke: 'service-triage',
  heat: 'service-triage',
  shock: 'service-triage',
  frost: 'cold-weather',
  wheel: 'service-triage',
  brakes: 'service-triage',
  coupling: 'service-triage',
  sway: 'sway',
  lift: 'service-triage',
  doubt: 'service-triage',
};

/**
 * What speaks for each topic in a text: the phrases by which people call it that stand there whole,
 * and how much it is like what was asked about it before. A phrase that several topics share says
 * less for each; what is more like a matter without rules speaks for none.
 */
export function evidenceOver(
  topics: Readonly<Record<string, Topic>>,
  before: readonly AskedBefore[] = [],
): (text: string, urgent: Urgency | null) => readonly Evidence[] {
  const like = likenessOver(topics, before);
  const byTopic = Object.values(topics).map((topic) => [topic.id, phrasesOf(topic)] as const);
  const shared = new Map<string, number>();
  const named = new Map<string, number>();
  const first = new Map<string, { topic: string; key: string; phrase: Phrase }[]>();
  for (const [topic, phrases] of byTopic) {
    for (const [key, phrase] of phrases) {
      shared.set(key, (shared.get(key) ?? 0) + 1);
      if (phrase.names) named.set(key, (named.get(key) ?? 0) + 1);
      const [begin = ''] = phrase.terms;
      first.set(begin, [...(first.get(begin) ?? []), { topic, key, phrase }]);
    }
  }
  return (text, urgent) => {
    const terms = termsOf(text);
    const found = new Map<string, Map<string, number>>();
    terms.forEach((term, at) => {
      for (const { topic, key, phrase } of first.get(term) ?? []) {
        if (!phrase.terms.every((each, i) => terms[at + i] === each)) continue;
        const longer = phrase.terms.length > 1 ? ofMoreWords : 1;
        const others = (phrase.names ? named : shared).get(key) ?? 1;
        const says = (phrase.weight * longer) / others;
        const own = found.get(topic) ?? new Map<string, number>();
        found.set(topic, own.set(key, says));
      }
    });
    const danger = urgent === null ? undefined : takes[urgent];
    if (danger !== undefined && Object.hasOwn(topics, danger)) {
      const says = urgent === 'frost' ? ofFrost : ofDanger;
      found.set(danger, (found.get(danger) ?? new Map()).set(urgent ?? '', says));
    }
    const likeness = like(text);
    for (const { topic, score, because } of likeness) {
      if (topic === '' || score <= 0) continue;
      const own = found.get(topic) ?? new Map<string, number>();
      const [word = '', ...more] = because;
      own.set(word, (own.get(word) ?? 0) + score);
      for (const each of more) own.set(each, own.get(each) ?? 0);
      found.set(topic, own);
    }
    const elsewhere = likeness.find(({ topic }) => topic === '')?.score ?? 0;
    return [...found]
      .filter(([, keys]) => sumOf(keys) > elsewhere * elsewhereFor + elsewhereMore)
      .map(([topic, keys]) => ({
        topic,
        score: sumOf(keys),
        because: [...keys.keys()],
      }))
      .toSorted((a, b) => b.score - a.score || a.topic.localeCompare(b.topic));
  };
}
