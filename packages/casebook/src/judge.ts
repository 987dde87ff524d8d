import {
  type Answer,
  type Asked,
  answerTraced,
  type HouseLayer,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { askedIn } from './asked';
import type { CaseDocument } from './shapes';

/** What a case is judged under beside what it says itself. */
export type Under = {
  /** The day whose parameters count, in place of the case's own. */
  readonly asOf?: string | undefined;
  /** A dealer's own parameters, by topic; those of another topic are left aside. */
  readonly house?: readonly HouseLayer[] | undefined;
};

/** The topic of a case, a house layer over it, and what is asked. */
export function askedOf(doc: CaseDocument, under: Under = {}): { topic: Topic; asked: Asked } {
  const asked = askedIn(doc, under.asOf);
  if (!doc.topic) throw new Error('The document names no topic.');
  const { id } = doc.topic;
  const layer = under.house?.find((each) => each.topic === id);
  return { topic: layer ? withHouse(doc.topic, layer) : doc.topic, asked };
}

/** The same answer at once, for a page that repaints as one types. */
export function judgeCaseNow(doc: CaseDocument, under: Under = {}): Answer {
  const { topic, asked } = askedOf(doc, under);
  return answerTraced(topic, asked);
}
