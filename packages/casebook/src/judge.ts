import {
  type Answer,
  type Asked,
  answerTraced,
  type HouseLayer,
  InputError,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { askedIn } from './asked';
import { refuseNoDocument } from './doors';
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
  const { topic } = doc;
  if (!topic) {
    const wanted = 'one that names a topic';
    throw new InputError(
      [{ code: 'in-document', fact: 'topic', found: 'The document names no topic.', wanted }],
      ({ found }) => found,
    );
  }
  const layer = under.house?.find((each) => each.topic === topic.id);
  return { topic: layer ? withHouse(topic, layer) : topic, asked };
}

/** The same answer at once, for a page that repaints as one types. */
export function judgeCaseNow(doc: CaseDocument, under: Under = {}): Answer {
  refuseNoDocument(doc);
  const { topic, asked } = askedOf(doc, under);
  return answerTraced(topic, asked);
}
