import type { Spoken } from '../state/round';

const isLight = ({ topic }: Spoken): boolean => topic === 'note';

/** What one message asks is heard together, and in its order. */
function byMessage(items: readonly Spoken[]): readonly (readonly Spoken[])[] {
  const found = new Map<string, Spoken[]>();
  for (const each of items) {
    found.set(each.message, [...(found.get(each.message) ?? []), each]);
  }
  return [...found.values()];
}

/**
 * An order in which a round is pleasant to hear: no two warnings in a row as long as something else
 * can stand between, by turns through channels and topics, something light last. The questions of one
 * message stay together. What cannot wait comes before all of it.
 */
export function arranged(all: readonly Spoken[]): readonly Spoken[] {
  const urgent = all.filter(({ isUrgent }) => isUrgent);
  const units = byMessage(all.filter(({ isUrgent }) => !isUrgent));
  const last = units.findLast((unit) => unit.every((each) => isLight(each) && !each.isWarning));
  const left = units.filter((each) => each !== last);
  const order: Spoken[] = [];
  while (left.length > 0) {
    const before = order.at(-1);
    const warnings = left.filter((unit) => unit.some(({ isWarning }) => isWarning)).length;
    // Where warnings are as many as what may stand between them, they may not wait.
    const isDue = warnings * 2 > left.length + (last ? 1 : 0) - 1;
    const cost = (unit: readonly Spoken[]): number => {
      const [first] = unit;
      const warns = unit.some(({ isWarning }) => isWarning);
      return (
        (first?.isWarning && before?.isWarning ? 100 : 0) +
        (isDue && !warns ? 50 : 0) +
        (first?.channel === before?.channel ? 3 : 0) +
        (first?.topic === before?.topic ? 2 : 0)
      );
    };
    const costs = left.map(cost);
    const [next = []] = left.splice(costs.indexOf(Math.min(...costs)), 1);
    order.push(...next);
  }
  return [...urgent, ...order, ...(last ?? [])];
}

/** A list with one of its items in another place. */
export function moved<T>(items: readonly T[], from: number, to: number): readonly T[] {
  const [item] = items.slice(from, from + 1);
  if (item === undefined || to < 0 || to >= items.length) return items;
  return items.toSpliced(from, 1).toSpliced(to, 0, item);
}

const mostWords = 25;
/** In fewer words hardly anybody tells what it is about. */
const fewWords = 8;
/** What leads up to a question goes with it as far as this. */
const mostLedUp = 45;

/** A dot behind one of these ends no sentence. */
const shortened =
  /(?:^|[\s(])(?:mr|mrs|ms|dr|st|rt|no|vs|approx|in|ft|lb|lbs|mi|gal|hr|min|e\.g|i\.e|\p{Lu})\.$/iu;

/** The sentences of a question; “Mrs. Quarrie” is within one. */
function sentencesOf(question: string): readonly string[] {
  const found: string[] = [];
  for (const piece of question.trim().split(/(?<=[.?!])\s+|\n+/)) {
    const before = found.at(-1);
    if (before !== undefined && shortened.test(before))
      found[found.length - 1] = `${before} ${piece}`;
    else if (piece !== '') found.push(piece);
  }
  return found;
}

const asksAbout =
  /(?<!\p{L})(?:asks?|asking|wants? to know|wonders?|wondering|needs?|whether|how|which|what|can|could|should|will|would)(?!\p{L})/iu;
/** When somebody called, and who it was, as a note of it begins: “Mon 4:35 - Ray Pruitt.” */
const stamp =
  /^\s*(?:(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?,? )?\d{1,2}:\d{2} ?(?:[ap]m)? ?[-–—] ?/iu;
const caller =
  /^(?:(?:Mrs?\.|Ms\.|Dr\.) )?(?:\p{Lu}[\p{L}’'-]+(?: \p{Lu}[\p{L}’'-]+){0,2}(?:, [\d -]+)?|\p{L}+, no name)\. +(?=\S)/u;
/** A subject stands alone in the first line; what is asked about stands below it once more. */
const subject = /^\s*(?:[\p{L}’'-]+ ?){1,4}\n+(?=[^\n]{20})/u;

/** A question without what stands over it. */
function bareOf(question: string): string {
  const [over] = subject.exec(question) ?? [];
  const below =
    over !== undefined && !asksAbout.test(over) ? question.slice(over.length) : question;
  return stamp.test(below) ? below.replace(stamp, '').replace(caller, '') : below;
}

const wordsOf = (text: string): readonly string[] => text.trim().split(/\s+/);

/**
 * A question as it is read out: the whole of it in at most 25 words; else its last sentence that asks,
 * with as much of what leads up to it as fits, so that nobody hears a mere “Am I over?”.
 * The sentence right ahead of it tells what it is about, and may be longer.
 */
export function asSpoken(told: string): string {
  const question = bareOf(told);
  if (wordsOf(question).length <= mostWords) return wordsOf(question).join(' ');
  const sentences = sentencesOf(question);
  const marked = sentences.findLastIndex((each) => each.endsWith('?'));
  const asking = marked >= 0 ? marked : sentences.findIndex((each) => asksAbout.test(each));
  const at = Math.max(0, asking);
  let said = wordsOf(sentences[at] ?? '');
  for (const [back, before] of sentences.slice(0, at).toReversed().entries()) {
    const longer = [...wordsOf(before), ...said];
    const most = back === 0 || said.length < fewWords ? mostLedUp : mostWords;
    if (longer.length > most) break;
    said = longer;
  }
  return said.length <= mostLedUp ? said.join(' ') : `${said.slice(0, mostWords).join(' ')} …`;
}
