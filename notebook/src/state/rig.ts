import { judgeRig, type RigDocument, readRig } from '@tarebook/casebook';
import type { RigAnswer, RigTopic } from '@tarebook/rules/engine';
import { caseAddress } from './address';
import { factsAlone } from './facts-alone';
import { houseOver } from './house';
import { pack } from './link';
import { loadedTopics, openAllTopics } from './topics';

/** A whole rig, judged, or why it is not, in a sentence. */
export type RigHere =
  | {
      readonly doc: RigDocument;
      readonly found: RigAnswer;
      /** For each topic that is answered, its own case with the rig’s facts. */
      readonly cases: ReadonlyMap<string, string>;
    }
  | { readonly says: string };

/** The facts that a topic was asked, as a case of its own in an address. */
async function caseFor(doc: RigDocument, name: string, each: RigTopic): Promise<string> {
  const { title, asOf } = doc.front;
  const at = each.moment === null ? '' : `, ${each.moment}`;
  const front = { title: `${title}${at}`, topic: each.topic.id, ...(asOf && { asOf }) };
  const { topic, facts } = each;
  const text = factsAlone({ front, facts, topic, readFrom: doc.readFrom }, true);
  return `${caseAddress(topic.id, name)}/${await pack(text)}`;
}

/** Reads a rig and asks every topic, under the house’s own numbers. */
export async function rigHere(name: string, text: string): Promise<RigHere> {
  await openAllTopics();
  const doc = readRig(text, loadedTopics);
  const [trouble] = doc.troubles;
  if (trouble) return { says: `Line ${trouble.line}: ${trouble.says}` };
  const house = Object.values(loadedTopics).flatMap(houseOver);
  const found = judgeRig(doc, loadedTopics, { house });
  const cases = found.answers.map(
    async (each) => [each.topic.id, await caseFor(doc, name, each)] as const,
  );
  return { doc, found, cases: new Map(await Promise.all(cases)) };
}
