import type { Topic } from '@tarebook/rules/engine';
import { termOf, wordsOf } from '../terms';
import { askings } from '../words/askings';
import { elsewhere } from '../words/elsewhere';

/** A question as somebody asked it before, and the topic it was about; no topic’s id: it was none. */
export type AskedBefore = { readonly topic: string; readonly text: string };

/** How much a text is like what was asked before about a topic, and for which words. */
export type Likeness = {
  readonly topic: string;
  /** The sum of what each word says, as a natural logarithm; below zero: unlike. */
  readonly score: number;
  readonly because: readonly string[];
};

/** So many askings with a word are presumed beside those that were seen, so that one alone proves little. */
const presumed = 0.45;
/** A topic’s own words count as so many questions. */
const ofLabels = 2;
const mostBecause = 3;

/** What is no topic: notes, and all that no rules decide. */
const none = '';

/** The words of a text, alone and by twos, each once; figures say nothing of what is asked. */
function termsOf(text: string): readonly string[] {
  const words = wordsOf(text.replace(/\d[\d,.]*/g, ' ')).flatMap((word) => termOf(word) ?? []);
  return [...new Set([...words, ...words.slice(1).map((word, at) => `${words[at]} ${word}`)])];
}

/** What a topic itself says of what is asked of it, and what people call things there. */
function ofTopic({ id, title, question, askings = {}, called }: Topic) {
  const labels = [title, question, ...Object.values(askings).map(({ label }) => label)].join('. ');
  const names = [...(called?.topic ?? []), ...Object.values(called?.facts ?? {}).flat()];
  return [
    { topic: id, text: labels, weight: ofLabels },
    { topic: id, text: names.join('. '), weight: 1 },
  ];
}

/**
 * Which topic a text is like, by how much oftener each of its words was asked about there than
 * elsewhere (naive Bayes with presumed counts). Beside the topics’ own words it learns from the
 * questions of filed cases; the same text is always like the same.
 */
export function likenessOver(
  topics: Readonly<Record<string, Topic>>,
  before: readonly AskedBefore[],
): (text: string) => readonly Likeness[] {
  const known = new Set(Object.values(topics).map(({ id }) => id));
  const of = (topic: string): string => (known.has(topic) ? topic : none);
  // What several say in a row is several askings.
  const voices = Object.entries({ ...askings, '': elsewhere }).flatMap(([topic, lines]) =>
    lines.flatMap((line) =>
      line.split(', ').map((text) => ({ topic: of(topic), text, weight: 1 })),
    ),
  );
  const asked = before.map(({ topic, text }) => ({ topic: of(topic), text, weight: 1 }));
  const counts = new Map<string, { all: number; readonly terms: Map<string, number> }>();
  const everywhere = new Map<string, number>();
  let sum = 0;
  for (const { topic, text, weight } of [
    ...Object.values(topics).flatMap(ofTopic),
    ...voices,
    ...asked,
  ]) {
    const own = counts.get(topic) ?? { all: 0, terms: new Map<string, number>() };
    counts.set(topic, own);
    for (const term of termsOf(text)) {
      own.terms.set(term, (own.terms.get(term) ?? 0) + weight);
      everywhere.set(term, (everywhere.get(term) ?? 0) + weight);
      own.all += weight;
      sum += weight;
    }
  }
  return (text) => {
    const terms = termsOf(text).filter((term) => everywhere.has(term));
    return [...counts].map(([topic, own]) => {
      const said = terms.map((term): readonly [string, number] => {
        const expected = ((everywhere.get(term) ?? 0) * own.all) / sum;
        return [term, Math.log(((own.terms.get(term) ?? 0) + presumed) / (expected + presumed))];
      });
      const telling = said.filter(([, says]) => says > 0).toSorted((a, b) => b[1] - a[1]);
      return {
        topic,
        score: said.reduce((total, [, says]) => total + says, 0),
        because: telling.slice(0, mostBecause).map(([term]) => term),
      };
    });
  };
}
