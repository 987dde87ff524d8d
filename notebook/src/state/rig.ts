import { judgeRig, type RigDocument, readRig } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import type { RigAnswer, RigTopic, State, Topic } from '@tarebook/rules/engine';
import { caseAddress } from './address';
import { sentenceBeneath } from './beneath';
import { factsAlone } from './facts-alone';
import { allowedHouse, type House } from './house-numbers';
import { levelOf } from './level';
import { pack } from './link';

/** What a topic says of a rig. */
export type RigPart = {
  readonly topic: string;
  readonly title: string;
  /** When it is so; null where the rig has no moments. */
  readonly moment: string | null;
  readonly level: State;
  readonly words: string;
  readonly sentence: string;
  /** The same where the word of the verdict stands over it. */
  readonly beneath: string;
  /** Limits that do not simply hold, and findings that object. */
  readonly fired: readonly string[];
  readonly cautions: readonly string[];
  /** Where the topic stands as a case of its own with the rig’s facts. */
  readonly href: string;
};

/** A whole rig, judged and put into words, so that it can be handed from beside the page. */
export type RigTold = {
  readonly title: string;
  /** The gravest first. */
  readonly parts: readonly RigPart[];
  readonly moments: readonly string[];
  /** How each topic stands at each moment. */
  readonly byMoment: readonly { readonly title: string; readonly words: readonly string[] }[];
  /** Topics that would want more, and what first. */
  readonly wanting: readonly { readonly title: string; readonly labels: readonly string[] }[];
};

const begun = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The facts that a topic was asked, as a case of its own in an address. */
async function caseFor(doc: RigDocument, name: string, each: RigTopic): Promise<string> {
  const { title, asOf } = doc.front;
  const at = each.moment === null ? '' : `, ${each.moment}`;
  const front = { title: `${title}${at}`, topic: each.topic.id, ...(asOf && { asOf }) };
  const { topic, facts } = each;
  const text = factsAlone({ front, facts, topic, readFrom: doc.readFrom }, true);
  return `${caseAddress(topic.id, name)}/${await pack(text)}`;
}

const limitWords: Partial<Record<State, string>> = {
  stop: 'over',
  care: 'close',
  unknown: 'not known',
};

function firedIn({ topic, answer }: RigTopic): readonly string[] {
  const limits = answer.limits.flatMap(({ id, label, state }) => {
    const word = limitWords[state];
    return word === undefined ? [] : [`${begun(topic.limits[id]?.short ?? label)}: ${word}`];
  });
  const findings = answer.findings
    .filter(({ level }) => level !== 'ok' && level !== 'not-asked')
    .map(({ says }) => says);
  return [...limits, ...findings];
}

async function partOf(doc: RigDocument, name: string, each: RigTopic): Promise<RigPart> {
  const { topic, answer, moment } = each;
  return {
    topic: topic.id,
    title: topic.title,
    moment,
    level: levelOf(topic.outcomes, answer.outcome),
    words: answer.words,
    sentence: answer.sentence,
    beneath: sentenceBeneath(topic, answer),
    fired: firedIn(each),
    cautions: answer.cautions,
    href: await caseFor(doc, name, each),
  };
}

function wantingIn({ needs }: RigAnswer): RigTold['wanting'] {
  return Object.entries(needs).flatMap(([id, facts]) => {
    const topic = topics[id];
    const labels = facts.slice(0, 3).map((fact) => topic?.facts[fact]?.label ?? fact);
    return topic ? [{ title: topic.title, labels }] : [];
  });
}

/**
 * Reads a rig and asks every topic, under the house’s own numbers. Where two stop alike, they stand in
 * the order of the trade's questions, as everywhere a rig is judged.
 *
 * @param begins called before it begins: all rules are here
 */
export async function rigTold(
  name: string,
  text: string,
  houses: readonly House[],
  begins: () => void,
): Promise<RigTold | { readonly says: string }> {
  begins();
  const doc = readRig(text, topics);
  const [trouble] = doc.troubles;
  if (trouble) return { says: `Line ${trouble.line}: ${trouble.says}` };
  const house = houses.flatMap((each) => {
    const topic = topics[each.topic];
    const own = topic && allowedHouse(topic, each).house;
    return own && Object.keys(own.parameters).length > 0 ? [own] : [];
  });
  const found = judgeRig(doc, topics, { house });
  const wordsAt = ({ id }: Topic, moment: string): string =>
    found.moments[moment]?.find(({ topic }) => topic.id === id)?.answer.words ?? '';
  return {
    title: doc.front.title,
    parts: await Promise.all(found.answers.map((each) => partOf(doc, name, each))),
    moments: doc.at,
    byMoment: found.answers.map(({ topic }) => {
      return { title: topic.title, words: doc.at.map((at) => begun(wordsAt(topic, at))) };
    }),
    wanting: wantingIn(found),
  };
}
