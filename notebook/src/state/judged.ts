import { askedIn, type CaseDocument } from '@tarebook/casebook';
import { type Answer, answerTraced, prepareInSteps } from '@tarebook/rules/engine';
import { readQuantity, type UnitSystem, wasMisread } from '@tarebook/rules/quantity';
import { topicHere } from './house';
import { readDocument } from './reading';

/** A text, read and judged. While it has troubles, the last answer that could be had stands. */
export type Judged = {
  readonly doc: CaseDocument;
  readonly answer?: Answer;
  /** Whether the answer is that of the present text. */
  readonly current: boolean;
};

function judgeRead(doc: CaseDocument, units: UnitSystem, before?: Judged): Judged {
  if (doc.troubles.length === 0 && doc.topic) {
    const answer = answerTraced(topicHere(doc.topic), { ...askedIn(doc), units });
    return { doc, answer, current: true };
  }
  return { doc, ...(before?.answer && { answer: before.answer }), current: false };
}

/**
 * Reads a text and judges it under the house's numbers; the answer's words are in `units`. The case's
 * topic must have been opened.
 */
export function judge(text: string, before?: Judged, units: UnitSystem = 'us'): Judged {
  return judgeRead(readDocument(text), units, before);
}

/** Leaves the page free for whatever waits. */
export const pause = (): Promise<void> => new Promise((done) => setTimeout(done));

/** The same for a case that is not shown yet; the page is left free between the steps. */
export async function judgeInSteps(text: string, units: UnitSystem): Promise<Judged> {
  const doc = readDocument(text);
  await pause();
  if (doc.topic) await prepareInSteps(doc.topic, pause);
  await pause();
  const judged = judgeRead(doc, units);
  await pause();
  return judged;
}

/** The document of a text, which may have been typed after the last one was judged. */
export const readNow = (text: string, { doc }: Judged): CaseDocument =>
  doc.text === text ? doc : readDocument(text);

/** The same however it is written: `1260 lb` is `1,260 lb`. */
function asRead(_: string, value: unknown): unknown {
  if (typeof value !== 'string') return value;
  const read = readQuantity(value);
  return wasMisread(read) ? value : { ...read, step: 0, unit: read.unit?.symbol ?? '' };
}

/** What differs in the facts between two readings of a case, by fact. */
export function movedFacts(filed: CaseDocument, now: CaseDocument): readonly string[] {
  const ids = new Set([...Object.keys(filed.facts), ...Object.keys(now.facts)]);
  const [before, after] = [filed.facts, now.facts];
  return [...ids].filter(
    (id) =>
      before[id] !== after[id] &&
      JSON.stringify(before[id], asRead) !== JSON.stringify(after[id], asRead),
  );
}
