import { type Asked, answerNow } from '../answer/answer';
import { lowered } from '../answer/phrases';
import { urgentOf } from '../answer/sentence';
import type { Answer } from '../answer/shapes';
import { type Level, levels, type Topic } from '../define/shapes';
import { newChain } from './chain';
import { findingFull, findingShort } from './finding';
import { limitFull, limitShort } from './limit';

export type Length = 'short' | 'full';

const isAnswer = (given: Answer | Asked): given is Answer => 'trace' in given;

function levelOf(answer: Answer, { outcomes }: Topic): Level {
  return levels.find((level) => outcomes[level].id === answer.outcome) ?? 'unknown';
}

/** The limit or finding that a verdict rests on: what is urgent, else the worst, of equals the fullest. */
export function decidingOf(answer: Answer, topic: Topic): string | undefined {
  const level = levelOf(answer, topic);
  const urgent = urgentOf(topic, answer.findings);
  if (urgent) return `finding.${urgent.id}`;
  const [asked] = answer.missing;
  if ((level === 'unknown' || level === 'if') && asked?.decides[0]) return asked.decides[0];
  const limits = answer.limits
    .filter(({ state }) => state === level)
    .toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi);
  const binding = limits.find(({ id }) => id === answer.binding);
  const limit = level === 'stop' ? limits[0] : (binding ?? limits[0]);
  if (limit) return `limit.${limit.id}`;
  const finding = answer.findings.find((each) => each.level === level);
  return finding && `finding.${finding.id}`;
}

const likewise = {
  stop: 'Not right either',
  care: 'Care is due there too',
  unknown: 'Open as well',
  if: 'To be made sure of as well',
  ok: '',
} as const;

/** What else stands at the same level, in one sentence. */
function besides(answer: Answer, deciding: string, level: keyof typeof likewise): string {
  const limits = answer.limits.filter(({ state }) => state === level);
  const findings = answer.findings.filter((each) => each.level === level);
  const labels = [
    ...limits.map(({ id, label }) => ({ of: `limit.${id}`, label })),
    ...findings.map(({ id, label }) => ({ of: `finding.${id}`, label })),
  ].flatMap(({ of, label }) => (of === deciding ? [] : [lowered(label)]));
  const head = likewise[level];
  return labels.length === 0 || head === '' ? '' : `${head}: ${labels.join('; ')}.`;
}

function whyVerdict(answer: Answer, topic: Topic, length: Length): string {
  const level = levelOf(answer, topic);
  const deciding = decidingOf(answer, topic);
  const { sentence } = topic.outcomes[level];
  if (deciding === undefined) return sentence;
  const reason = why(topic, answer, deciding, length);
  if (length === 'short') return `${sentence.replace(/\.$/, '')}, because ${lowered(reason)}`;
  return [sentence, reason, besides(answer, deciding, level)].filter((each) => each).join(' ');
}

/**
 * The shortest chain from the facts to a state, in plain sentences made from the trace.
 *
 * @param given an answer, or a case to answer; the words are in the units it was asked in
 * @param of `verdict`, `limit.<id>` or `finding.<id>`
 * @param length one sentence, or every step with its units, where it was read and its source
 * @throws Error when the topic has nothing of that name
 */
export function why(topic: Topic, given: Answer | Asked, of: string, length: Length): string {
  const answer: Answer = isAnswer(given) ? given : answerNow(topic, given);
  if (of === 'verdict') return whyVerdict(answer, topic, length);
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  const chain = newChain(answer.trace);
  const limit = kind === 'limit' && answer.limits.find((each) => each.id === id);
  const ofLimit = kind === 'limit' ? topic.limits[id] : undefined;
  if (limit && ofLimit) {
    const asked = { answer, topic, declared: ofLimit, limit, chain };
    if (length === 'short') return limitShort(asked);
    limitFull(asked);
    return chain.sentences.join(' ');
  }
  const finding = kind === 'finding' && answer.findings.find((each) => each.id === id);
  const ofFinding = kind === 'finding' ? topic.findings[id] : undefined;
  if (!finding || !ofFinding) throw new Error(`“${topic.id}” has nothing named “${of}”.`);
  const asked = { topic, declared: ofFinding, finding, chain };
  if (length === 'short') return findingShort(asked);
  findingFull(asked);
  return chain.sentences.join(' ');
}
