import { type Topic, withHouse } from '@tarebook/rules/engine';
import type { EntryMove } from '@tarebook/sweep';
import { caseAddress } from '../state/address';
import { isGiven } from '../state/given';
import { houseOf } from '../state/house';
import { allowedHouse } from '../state/house-numbers';
import { allKept } from '../state/kept';
import { allQuestionRecords } from '../state/questions';
import { loadedTopics, openTopic } from '../state/topics';

/** A case kept on this device, or an answer given from it, that rests on what has changed. */
export type RestingHere = {
  readonly kind: 'case' | 'answer';
  readonly title: string;
  /** Where it stands on the page. */
  readonly address: string;
  readonly was: string;
  readonly is: string;
};

/** The rules as a case is judged by here: with the dealer's own margins. */
function ofHouse(topic: Topic): Topic {
  const house = houseOf(topic.id);
  return house ? withHouse(topic, allowedHouse(topic, house).house) : topic;
}

/** What on this device rests on entries of the catalogue that have changed, and what it comes to now. */
export async function restingHere(moves: readonly EntryMove[]): Promise<readonly RestingHere[]> {
  if (!moves.some(({ what }) => what === 'changed')) return [];
  const [{ judgedThen, restingOn }, { readCaseFrom }, { yamlEntries }] = await Promise.all([
    import('@tarebook/sweep'),
    import('../state/reader'),
    import('@tarebook/casebook/yaml'),
  ]);
  const [kept, records] = await Promise.all([
    allKept().catch(() => []),
    allQuestionRecords().catch(() => []),
  ]);
  const found: RestingHere[] = [];
  for (const { topic: id, name, text } of kept) {
    // A case that was read from no entry is not read at all.
    const topic = text.includes('catalogue, ') ? await openTopic(id) : undefined;
    if (!topic) continue;
    const doc = readCaseFrom({ ids: [id], topics: { [id]: topic }, yaml: yamlEntries }, text);
    if (doc.troubles.length > 0) continue;
    const { facts, readFrom, front } = doc;
    const asked = { facts, readFrom, ...(front.asOf !== undefined && { asOf: front.asOf }) };
    const rests = restingOn(moves, { name: front.title || name, topic: ofHouse(topic), asked });
    if (!rests) continue;
    const { name: title, was, is } = rests;
    found.push({ kind: 'case', title, address: caseAddress(id, name), was, is });
  }
  for (const { id, saved, question } of records.flatMap((each) => (isGiven(each) ? [each] : []))) {
    await openTopic(String(saved.topic));
    const then = judgedThen(question || id, saved, loadedTopics);
    const rests = then && restingOn(moves, then);
    if (!rests) continue;
    found.push({
      kind: 'answer',
      title: rests.name,
      address: '#/questions',
      was: rests.was,
      is: rests.is,
    });
  }
  return found;
}
