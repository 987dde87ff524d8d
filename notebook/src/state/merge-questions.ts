import {
  type Asked,
  allQuestionRecords,
  isAsked,
  keepQuestions,
  type QuestionRecord,
  questionKey,
} from './questions';

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Of what came back to either, mine counts first, fact by fact; by other rules, mine alone. */
function bothBack(mine: Asked, theirs: Asked): Asked['back'] {
  if (!mine.back || !theirs.back) return mine.back ?? theirs.back;
  const back = { ...theirs.back };
  for (const [question, facts] of Object.entries(mine.back)) {
    const isOne = mine.backTopics?.[question] === theirs.backTopics?.[question];
    back[question] = { ...(isOne && theirs.back[question]), ...facts };
  }
  return back;
}

/** One message as two colleagues worked on it: mine counts first, and no words of theirs are lost. */
export function mergedAsked(mine: Asked, theirs: Asked): Asked {
  const wordings: Record<string, string> = { ...mine.wordings };
  for (const [place, text] of Object.entries(theirs.wordings)) {
    const own = Object.hasOwn(wordings, place) ? (wordings[place] ?? '') : '';
    if (!own.includes(text)) wordings[place] = own === '' ? text : `${own}\n\n${text}`;
  }
  const back = bothBack(mine, theirs);
  const sent = [...new Set([...(mine.sent ?? []), ...(theirs.sent ?? [])])];
  const mended = { ...theirs.mended };
  for (const [question, facts] of Object.entries(mine.mended ?? {})) {
    mended[question] = { ...mended[question], ...facts };
  }
  const backTopics =
    mine.backTopics || theirs.backTopics ? { ...theirs.backTopics, ...mine.backTopics } : undefined;
  return {
    ...mine,
    wordings,
    topics: { ...theirs.topics, ...mine.topics },
    struck: [...new Set([...mine.struck, ...theirs.struck])],
    // Whoever lifted what is urgent did so for this device; on the other it stays as it was read.
    urgent: mine.urgent === '' && mine.lifted === undefined ? theirs.urgent : mine.urgent,
    done: Math.max(mine.done, theirs.done),
    ...(sent.length > 0 && { sent }),
    ...((mine.forms || theirs.forms) && { forms: { ...theirs.forms, ...mine.forms } }),
    ...(Object.keys(mended).length > 0 && { mended }),
    ...(back && { back }),
    ...(backTopics && { backTopics }),
  };
}

/** What is to be written so that records of another device stand beside those that are here. */
export function withoutLoss(
  here: readonly QuestionRecord[],
  records: readonly QuestionRecord[],
): readonly QuestionRecord[] {
  const all = new Map(here.map((each) => [questionKey(each), each]));
  const written = new Map<string, QuestionRecord>();
  const write = (record: QuestionRecord): void => {
    all.set(questionKey(record), record);
    written.set(questionKey(record), record);
  };
  for (const record of records) {
    const mine = all.get(questionKey(record));
    if (!mine) write(record);
    else if (isAsked(mine) && isAsked(record)) {
      const both = mergedAsked(mine, record);
      if (!same(both, mine)) write(both);
    } else if (!same(mine, record)) {
      let named = record;
      for (
        let n = 2;
        all.has(questionKey(named)) && !same(all.get(questionKey(named)), named);
        n += 1
      ) {
        named = { ...record, id: `${record.id}-${n}` };
      }
      if (!all.has(questionKey(named))) write(named);
    }
  }
  return [...written.values()];
}

/** Takes in the records of another device without losing either side's words, and says how many were written. */
export async function takeInQuestions(records: readonly QuestionRecord[]): Promise<number> {
  const written = withoutLoss(await allQuestionRecords(), records);
  if (written.length > 0) await keepQuestions(written);
  return written.length;
}
