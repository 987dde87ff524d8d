import type { Topic } from '@tarebook/rules/engine';
import { type AskedBefore, likenessOver } from './likeness';
import { phrasesOver } from './phrases';
import type { Urgency } from './shapes';

/** How much speaks for a topic, and the words that do. */
export type Evidence = {
  readonly topic: string;
  readonly score: number;
  readonly because: readonly string[];
};

/** What is dangerous now is looked into before anything is reckoned. */
const ofDanger = 5;
/** A cold night is told beside much that is asked of something else. */
const ofFrost = 3;
/** What has no rules is told in few words, and counts for more by as much. */
const elsewhereFor = 1.5;
const elsewhereMore = 3;

const sumOf = (keys: ReadonlyMap<string, number>): number =>
  [...keys.values()].reduce((sum, each) => sum + each, 0);

export const takenBy: Readonly<Record<Urgency, string>> = {
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
  const phrased = phrasesOver(topics);
  return (text, urgent) => {
    const found = new Map([...phrased(text)].map(([topic, keys]) => [topic, new Map(keys)]));
    const danger = urgent === null ? undefined : takenBy[urgent];
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
