import type { Topic } from '@tarebook/rules/engine';
import { weigherOf } from '../learned/linear';
import { topicTerms } from '../learned/topic-terms';
import { topicLearned } from '../learned/topic-weights';
import { spelledRight } from '../words/misspelled';
import type { Evidence } from './evidence';
import { takenBy } from './evidence';
import { type AskedBefore, likenessOver } from './likeness';
import { phrasesOver } from './phrases';
import type { Urgency } from './shapes';

/** No topic: notes, and all that no rules decide. */
export const none = 'none';

/** A topic of which nothing was learned stands by what it is called. */
const unlearned = -1;
/** More words of one topic than this say it no more. */
const mostOfPhrases = 12;

/** What speaks for a topic besides what was learned: what it is called, what it is like, and a danger. */
export type Beside = {
  /** In the order of `besideWeights`. */
  readonly values: readonly number[];
  readonly because: readonly string[];
};

/** Of each topic and of none what speaks for it, before anything learned does. */
export function besideOver(
  topics: Readonly<Record<string, Topic>>,
  before: readonly AskedBefore[] = [],
): (text: string, urgent: Urgency | null) => ReadonlyMap<string, Beside> {
  const like = likenessOver(topics, before);
  const phrased = phrasesOver(topics);
  const ids = [none, ...Object.values(topics).map(({ id }) => id)];
  return (text, urgent) => {
    const phrases = phrased(text);
    const likeness = new Map(
      like(text).map((each) => [each.topic === '' ? none : each.topic, each] as const),
    );
    const danger = urgent === null ? undefined : takenBy[urgent];
    return new Map(
      ids.map((id) => {
        const keys = phrases.get(id) ?? new Map<string, number>();
        const sum = [...keys.values()].reduce((all, each) => all + each, 0);
        const alike = likeness.get(id);
        const values = [
          Math.min(mostOfPhrases, sum),
          alike?.score ?? 0,
          danger === id ? 1 : 0,
          urgent !== null && id === none ? 1 : 0,
        ];
        return [id, { values, because: [...keys.keys(), ...(alike?.because ?? [])] }] as const;
      }),
    );
  };
}

/**
 * Which topics a text is about, the likeliest first: by how far each is likelier than none, as a
 * natural logarithm of the odds. Below zero none is likelier.
 */
export function aboutOver(
  topics: Readonly<Record<string, Topic>>,
  before: readonly AskedBefore[] = [],
): (text: string, urgent: Urgency | null) => readonly Evidence[] {
  const beside = besideOver(topics, before);
  const weigher = weigherOf(topicLearned);
  return (whole, urgent) => {
    const text = spelledRight(whole);
    const learned = weigher(topicTerms(text));
    const scored = [...beside(text, urgent)].map(([topic, { values, because }]) => {
      const own = learned.get(topic) ?? { score: unlearned, because: [] };
      const besideIt = values.reduce(
        (sum, each, at) => sum + each * (topicLearned.besides[at] ?? 0),
        0,
      );
      return {
        topic,
        score: own.score + besideIt,
        because: [...new Set([...own.because, ...because])],
      };
    });
    const ofNone = scored.find(({ topic }) => topic === none)?.score ?? 0;
    return scored
      .filter(({ topic }) => topic !== none)
      .map((each) => ({ ...each, score: each.score - ofNone }))
      .toSorted((a, b) => b.score - a.score || a.topic.localeCompare(b.topic));
  };
}
