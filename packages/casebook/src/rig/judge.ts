import {
  answerRig,
  type RigAnswer,
  type RigTopic,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { judged } from '../as-json';
import { refuseTroubled } from '../asked';
import { refuseNoDocument } from '../doors';
import { compareWithExpect, type Difference } from '../expect';
import type { Under } from '../judge';
import type { RigDocument } from './shapes';

type Topics = Readonly<Record<string, Topic>>;

/** Each topic under the dealer’s own parameters, where there are any. */
function underHouse(topics: Topics, { house = [] }: Under): Topics {
  const own = (topic: Topic): Topic => {
    const layer = house.find((each) => each.topic === topic.id);
    return layer ? withHouse(topic, layer) : topic;
  };
  return Object.fromEntries(Object.entries(topics).map(([id, topic]) => [id, own(topic)]));
}

/** What every topic that can says of a rig. Throws for a document with troubles. */
export function judgeRig(doc: RigDocument, topics: Topics, under: Under = {}): RigAnswer {
  refuseNoDocument(doc);
  refuseTroubled(doc.troubles);
  const { facts, moments, readFrom, front } = doc;
  const asOf = under.asOf ?? front.asOf;
  return answerRig(underHouse(topics, under), {
    ...{ facts, moments, readFrom },
    ...(asOf !== undefined && { asOf }),
  });
}

/** What came out otherwise than the rig expects; nothing, when it holds. */
export function compareRig(
  doc: RigDocument,
  { answers, moments }: RigAnswer,
): readonly Difference[] {
  return doc.expectations.flatMap((row) => {
    const among = row.moment === null ? answers : (moments[row.moment] ?? []);
    const found = among.find(({ topic }) => topic.id === row.topic.id);
    if (!found) return [{ name: row.name, expected: row.text, found: 'not answered' }];
    const expectations = [{ ...row, name: row.of }];
    return compareWithExpect({ expectations }, found.answer).map((each) => ({
      ...each,
      name: row.name,
    }));
  });
}

/** An answer of a topic as `judge --json` prints it, with where in the rig it stands. */
export const judgedAt = (doc: RigDocument, each: RigTopic): object => ({
  ...judged(each.answer, { facts: each.facts, readFrom: doc.readFrom }),
  moment: each.moment,
  level: each.level,
});

/** A rig’s answer as other programs read it. */
export const judgedRig = (doc: RigDocument, { answers, moments, needs }: RigAnswer): object => ({
  topic: 'rig',
  title: doc.front.title,
  answers: answers.map((each) => judgedAt(doc, each)),
  needs,
  ...(doc.at.length > 0 && {
    moments: Object.fromEntries(
      Object.entries(moments).map(([at, all]) => [at, all.map((each) => judgedAt(doc, each))]),
    ),
  }),
  asked: { document: doc.text },
});
