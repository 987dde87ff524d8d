import type { Topic } from '@tarebook/rules/engine';
import { figuresWhole, termOf, wordsOf } from '../terms';
import { wordsOfFacts } from '../words/all';

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

/** What speaks for each topic in a text: its phrases that stand there whole, with what each says. */
export type Phrases = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** Finds the phrases by which people call each topic; one that several topics share says less for each. */
export function phrasesOver(topics: Readonly<Record<string, Topic>>): (text: string) => Phrases {
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
  return (text) => {
    const terms = termsOf(text);
    const found = new Map<string, Map<string, number>>();
    terms.forEach((term, at) => {
      for (const { topic, key, phrase } of first.get(term) ?? []) {
        if (!phrase.terms.every((each, i) => terms[at + i] === each)) continue;
        const longer = phrase.terms.length > 1 ? ofMoreWords : 1;
        const others = (phrase.names ? named : shared).get(key) ?? 1;
        const own = found.get(topic) ?? new Map<string, number>();
        found.set(topic, own.set(key, (phrase.weight * longer) / others));
      }
    });
    return found;
  };
}
