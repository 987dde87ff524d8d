import { type Answer, type Remedy, type State, type Topic, urgentOf } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { aloud } from './aloud';
import { sentenceBeneath } from './beneath';
import { findingLines, limitLines, numberLines, sourceLines, workingLines } from './told';
import { changeLines, decidedLines, rankingParts, selectionParts } from './told-beyond';

/** The three ways an answer leaves in words. */
export const replyKinds = ['spoken', 'post', 'letter'] as const;
export type ReplyKind = (typeof replyKinds)[number];

export type Reply = {
  readonly text: string;
  /** What must stand in the text, whatever else is changed in it. */
  readonly cautions: readonly string[];
};

export type Told = {
  readonly title: string;
  readonly topic: Topic;
  readonly answer: Answer;
  readonly system: UnitSystem;
  /** What would change the verdict; absent until it is found. */
  readonly remedies?: readonly Pick<Remedy, 'says' | 'outcome'>[];
};

/** How many cautions go with each; a letter carries them all. */
const cautionsWith: Readonly<Record<ReplyKind, number>> = { spoken: 1, post: 2, letter: Infinity };

/** How a limit stands, in words; those that nobody asked are not listed. */
const stateWords: Readonly<Record<State, string>> = {
  stop: 'over',
  unknown: 'cannot say',
  if: 'to be made sure of',
  care: 'with care',
  ok: 'within',
  'not-asked': 'not asked',
};

const bullets = (lines: readonly string[]): string => lines.map((line) => `– ${line}`).join('\n');

const part = (title: string, lines: readonly string[]): string =>
  lines.length === 0 ? '' : `${title}\n${bullets(lines)}`;

const joined = (parts: readonly string[], between: string): string =>
  parts.filter((each) => each !== '').join(between);

/** One sentence with a pause in it, where the answer has two. */
function inOneBreath({ answer, topic, system }: Told): string {
  const opening = Object.values(topic.outcomes).find(({ id }) => id === answer.outcome)?.sentence;
  const reason = sentenceBeneath(topic, answer, system);
  if (!opening || reason === answer.sentence || urgentOf(topic, answer.findings)) {
    return answer.sentence;
  }
  // GVWR and its like stay capital.
  const low = /^[A-Z][^A-Z]/.test(reason)
    ? `${reason.charAt(0).toLowerCase()}${reason.slice(1)}`
    : reason;
  return `${opening.replace(/\.$/, '')} – ${low}`;
}

const hasFigure = (text: string): boolean => /\d/.test(text);

/** The figure that the verdict hangs on, for a sentence that names none. */
function figure(told: Told): string {
  const { answer, topic, system } = told;
  const [tip] = answer.missing.filter(({ says }) => hasFigure(says));
  if (tip) return tip.says;
  const lines = limitLines(answer, system);
  const first = lines.find(({ limit }) => limit.id === answer.binding) ?? lines[0];
  if (first) {
    const left = first.left === '' ? '' : `, ${first.left}`;
    return `Nearest its limit: ${first.limit.label.toLowerCase()}, ${first.against}${left}.`;
  }
  const result = workingLines(answer, topic, system).find(({ value }) => hasFigure(value));
  return result ? `${result.label}: ${result.value}.` : '';
}

/** The figure for words that name none; whoever has to get out needs none, but of what is over. */
function figureBeside(words: string, told: Told): string {
  const isOver = told.answer.limits.some(({ state }) => state === 'stop');
  const isUrgent = urgentOf(told.topic, told.answer.findings) !== undefined;
  return hasFigure(words) || (isUrgent && !isOver) ? '' : figure(told);
}

function spoken(told: Told): string {
  const sentence = inOneBreath(told);
  return aloud(joined([sentence, figureBeside(sentence, told)], ' '));
}

/** Only a verdict has something that would change it: not an order to get out, nor a question. */
const isToChange = ({ answer, topic }: Told): boolean =>
  answer.missing.length === 0 && !urgentOf(topic, answer.findings);

/** The change that asks least, one that leads to a verdict before any that leads to a question. */
function firstChange(told: Told): string {
  const { topic, remedies = [] } = told;
  if (!isToChange(told)) return '';
  const { unknown } = topic.outcomes;
  const sure = remedies.filter(({ outcome }) => outcome !== unknown.id);
  const [first] = changeLines(sure.length > 0 ? sure : remedies);
  return first === undefined ? '' : `What would change it: ${first}`;
}

/** How many findings a post tells in full. */
const mostTold = 2;

function post(told: Told): string {
  const { answer, topic } = told;
  if (urgentOf(topic, answer.findings)) {
    return joined([answer.sentence, figureBeside(answer.sentence, told)], ' ');
  }
  const found = findingLines(answer);
  type Line = (typeof found)[number];
  const isBrief = (sentence: string, { says, wrong }: Line) =>
    !sentence.includes(says) && sentence.includes(wrong);
  // What the sentence only touches is told where it stands, not twice.
  const sentence = found
    .slice(0, mostTold)
    .reduce(
      (before, line) =>
        isBrief(before, line) ? before.replace(line.wrong, () => line.says) : before,
      answer.sentence,
    );
  const also = found.flatMap(({ says, wrong }) =>
    sentence.includes(wrong) || sentence.includes(says) ? [] : [says],
  );
  const asks = answer.missing.slice(0, 2).map(({ ask, where }) => `${ask} (${where}.)`);
  const [tip = ''] = answer.missing.map(({ says }) => says);
  const figured = figureBeside(`${sentence} ${tip}`, told);
  return joined(
    [sentence, ...asks, tip, figured, ...also.slice(0, mostTold), firstChange(told)],
    ' ',
  );
}

/** What the question was about where it is not a matter of limits: chosen, listed and ranked. */
function beyond({ answer, topic, system }: Told): string {
  const ranked = rankingParts(answer, system).map(({ title, lines }) =>
    [title, ...lines].join('\n'),
  );
  return joined(
    [
      part('What it comes to', decidedLines(answer, topic)),
      ...selectionParts(answer, system).map(({ title, lines }) => part(title, lines)),
      ...ranked,
    ],
    '\n\n',
  );
}

/** What would change it; nothing is said of that before it has been looked for. */
function changes(told: Told): string {
  const { remedies } = told;
  if (!remedies || !isToChange(told)) return '';
  const none =
    'No single change, and no two together, that this topic knows would turn the verdict.';
  const lines = changeLines(remedies);
  return part('What would change it', lines.length === 0 ? [none] : lines);
}

function letter(told: Told): string {
  const { title, topic, answer, system } = told;
  const limits = limitLines(answer, system).map(({ limit, against, left }) => {
    const word = left.endsWith(' over') ? '' : stateWords[limit.state];
    return joined([`${limit.label}: ${against}`, left, word], ', ');
  });
  const working = workingLines(answer, topic, system).map(
    ({ label, value, told: how, working: sum }) =>
      `${label}: ${value}${how !== '' ? `, from ${how}` : sum !== '' ? ` = ${sum}` : ''}`,
  );
  const asks = answer.missing.map(
    ({ label, ask, where, says }) => `${label}. ${ask} Read it from: ${where}. ${says}`,
  );
  const sentence = answer.sentence;
  return joined(
    [
      title,
      joined([sentence, figureBeside(sentence, told), answer.restsOn], ' '),
      part('Be careful', answer.cautions),
      part('Find out first', asks),
      changes(told),
      beyond(told),
      part('How close to each limit', limits),
      part(
        'Also',
        findingLines(answer).map(({ label, says }) => `${label}: ${says}`),
      ),
      part('The working', working),
      part(
        'Taken for granted',
        answer.assumed.map(({ says }) => says),
      ),
      part('Numbers used', numberLines(answer, system)),
      part('The house’s own numbers', answer.house?.parameters.map(({ says }) => says) ?? []),
      part('Sources', sourceLines(answer)),
      `Rules ${answer.topic} ${answer.rules}, as of ${answer.asOf}.`,
    ],
    '\n\n',
  );
}

const writers: Readonly<Record<ReplyKind, (told: Told) => string>> = { spoken, post, letter };

/** The reply of a kind, in the units chosen, with its figure and its cautions. */
export function replyOf(kind: ReplyKind, told: Told): Reply {
  const cautions = told.answer.cautions.slice(0, cautionsWith[kind]);
  return { text: guarded(writers[kind](told), cautions).text, cautions };
}

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

export type Guarded = { readonly text: string; readonly putBack: readonly string[] };

/**
 * A text with its cautions: those that no longer stand in it, word for word, are put back at its
 * end. Spaces, line breaks and capitals do not matter.
 */
export function guarded(text: string, cautions: readonly string[]): Guarded {
  const here = plain(text);
  const putBack = cautions.filter((each) => !here.includes(plain(each)));
  if (putBack.length === 0) return { text, putBack };
  const body = text.trimEnd();
  const added = body.includes('\n') ? part('Be careful', putBack) : putBack.join(' ');
  const between = body === '' ? '' : body.includes('\n') ? '\n\n' : ' ';
  return { text: `${body}${between}${added}`, putBack };
}

/** What an edited reply was written for: when this changes, its figures may be wrong. */
export function verdictKey({ answer, title }: Told): string {
  const { topic, rules, outcome, sentence, limits, findings, cautions } = answer;
  const ends = limits.map(({ id, used, limit, state }) => [id, state, used, limit]);
  const levels = findings.map(({ id, level }) => [id, level]);
  return JSON.stringify([title, topic, rules, outcome, sentence, ends, levels, cautions]);
}
