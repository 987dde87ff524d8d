import type { Topic } from '@tarebook/rules/engine';
import MiniSearch from 'minisearch';
import { termOf, wordsOf } from './terms';

/** A case or a note as it is searched: its document and the ids of the facts it tells. */
export type Findable = {
  readonly path: string;
  /** A rule set's id; anything else, such as `note`, has no words of its own. */
  readonly topic: string;
  readonly title: string;
  readonly text: string;
  readonly facts?: readonly string[];
};

export type Hit = {
  readonly path: string;
  readonly topic: string;
  readonly title: string;
  readonly score: number;
  /** The words, as they stand in the index, for which it was found. */
  readonly because: readonly string[];
};

export type TopicHit = {
  readonly topic: string;
  readonly score: number;
  readonly because: readonly string[];
};

const options = {
  tokenize: (text: string) => [...wordsOf(text)],
  processTerm: (term: string) => termOf(term),
  searchOptions: {
    // The last word may still be being typed.
    prefix: (term: string, at: number, all: readonly string[]) =>
      term.length > (at === all.length - 1 ? 2 : 4),
    // A slip of the finger in a long word; a short one would be another word.
    fuzzy: (term: string) => (term.length > 5 ? 0.2 : false),
    weights: { fuzzy: 0.3, prefix: 0.5 },
  },
};

/** What people call what a topic is about, and what it asks and tells. */
function wordsOfTopic({ called, question, title, askings = {}, facts }: Topic) {
  const named = Object.values(called?.facts ?? {}).flat();
  const chosen = Object.values(called?.options ?? {}).flatMap((each) => Object.values(each).flat());
  return {
    called: (called?.topic ?? []).join('. '),
    asked: [title, question, ...Object.values(askings).map(({ label }) => label)].join('. '),
    facts: [...named, ...chosen, ...Object.values(facts).map(({ label }) => label)].join('. '),
  };
}

/** Which topics a text may be about, the likeliest first, and for which words. */
export function topicsIn(
  topics: Readonly<Record<string, Topic>>,
): (text: string) => readonly TopicHit[] {
  const index = new MiniSearch({
    ...options,
    idField: 'topic',
    fields: ['called', 'asked', 'facts'],
  });
  index.addAll(Object.values(topics).map((each) => ({ topic: each.id, ...wordsOfTopic(each) })));
  return (text) =>
    index
      .search(text, { boost: { called: 3, asked: 2, facts: 1 } })
      .map(({ id, score, terms }) => ({ topic: String(id), score, because: terms }));
}

/** The terms of a text, in order, with a bar around each. */
const inOrder = (text: string): string =>
  `|${[...wordsOf(text)].flatMap((word) => termOf(word) || []).join('|')}|`;

/** Which topics are called by more than one word, all of which stand in a text one after the other. */
function calledIn(topics: Readonly<Record<string, Topic>>): (text: string) => ReadonlySet<string> {
  const phrases = Object.values(topics).flatMap(({ id, called }) =>
    (called?.topic ?? []).map((phrase) => ({ id, phrase: inOrder(phrase) })),
  );
  const several = phrases.filter(({ phrase }) => phrase.split('|').length > 3);
  return (text) => {
    const terms = inOrder(text);
    return new Set(several.flatMap(({ id, phrase }) => (terms.includes(phrase) ? [id] : [])));
  };
}

/** Front matter, tables and signs are no words that anybody looks for. */
const prose = (text: string): string =>
  text
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^\|.*$/gm, '')
    .replace(/`[^`]*`/g, ' ');

/** The question that a case or a note is filed for: its title and its first paragraph. */
export const askedIn = ({ title, text }: Pick<Findable, 'title' | 'text'>): string =>
  [
    title,
    prose(text)
      .trim()
      .split(/\n\s*\n/)[0] ?? '',
  ].join('. ');

/** So much more a document weighs whose topic is the one that is asked about. */
const ofTopic = 2;
/** And so much more where the question holds what people call the topic, word for word. */
const ofPhrase = 12;
/** A note has no topic that could be asked about, and stands by its words alone. */
const ofNone = 0.5;

/**
 * Finds cases and notes by whole questions as people type them: by their own words, by what people
 * call the facts they tell, and by what people call their topic. The same question finds the same.
 */
export function searchOver(
  filed: readonly Findable[],
  topics: Readonly<Record<string, Topic>>,
): (question: string) => readonly Hit[] {
  const index = new MiniSearch({
    ...options,
    idField: 'path',
    fields: ['title', 'text', 'facts'],
    storeFields: ['topic', 'title'],
  });
  const byPath = new Map(filed.map((each) => [each.path, each]));
  index.addAll(
    filed.map(({ path, topic, title, text, facts = [] }) => {
      const called = topics[topic]?.called?.facts ?? {};
      const words = facts.flatMap((fact) => called[fact] ?? []);
      return { path, topic, title, text: prose(text), facts: words.join('. ') };
    }),
  );
  const likelyOf = topicsIn(topics);
  const calledBy = calledIn(topics);
  return (question) => {
    const called = calledBy(question);
    const likely = likelyOf(question);
    const best = likely[0]?.score ?? 1;
    const share = new Map(likely.map(({ topic, score }) => [topic, score / best]));
    return index
      .search(question, { boost: { title: 3, text: 1, facts: 0.5 } })
      .flatMap(({ id, score, terms }): readonly Hit[] => {
        const found = byPath.get(String(id));
        if (!found) return [];
        const { path, topic, title } = found;
        const about = share.get(topic) ?? (Object.hasOwn(topics, topic) ? 0 : ofNone);
        const weight = 1 + ofTopic * about + (called.has(topic) ? ofPhrase : 0);
        return [{ path, topic, title, score: score * weight, because: terms }];
      })
      .toSorted((a, b) => b.score - a.score || a.path.localeCompare(b.path));
  };
}
