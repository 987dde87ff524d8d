import {
  type Asked,
  answerNow,
  houseLayerOf,
  readSaved,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { type EntryMove, factsMoved } from './moves';

/** Something that was judged: a case, or an answer that was given. */
export type Judged = {
  readonly name: string;
  readonly topic: Topic;
  readonly asked: Asked;
  /** What was said of it; absent: what its facts come to. */
  readonly was?: string;
};

/** What rests on an entry of the catalogue that has changed. */
export type Resting = {
  readonly name: string;
  readonly was: string;
  readonly is: string;
  /** Whether the verdict itself is another. */
  readonly isTurned: boolean;
};

/**
 * What one that was judged comes to by the catalogue as it is now; undefined where it rests on
 * nothing that has changed.
 */
export function restingOn(
  moves: readonly EntryMove[],
  { name, topic, asked, was }: Judged,
): Resting | undefined {
  const facts = factsMoved(asked.facts, asked.readFrom ?? {}, moves);
  if (!facts) return undefined;
  const before = answerNow(topic, asked);
  const after = answerNow(topic, { ...asked, facts });
  return {
    name,
    was: was ?? before.sentence,
    is: after.sentence,
    isTurned: before.outcome !== after.outcome,
  };
}

/** An answer that was given, as it was judged then: its facts, its day, its margins. */
export function judgedThen(
  name: string,
  saved: unknown,
  topics: Readonly<Record<string, Topic>>,
): Judged | undefined {
  const id =
    typeof saved === 'object' && saved !== null && 'topic' in saved ? String(saved.topic) : '';
  const topic = Object.hasOwn(topics, id) ? topics[id] : undefined;
  if (!topic) return undefined;
  const read = readSaved(saved);
  const layer = houseLayerOf(read);
  const { sentence } = Object.assign({ sentence: undefined }, saved);
  return {
    name,
    topic: layer ? withHouse(topic, layer) : topic,
    asked: { ...read.asked, asOf: read.asOf },
    ...(typeof sentence === 'string' && { was: sentence }),
  };
}
