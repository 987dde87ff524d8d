import type { Asked } from '../answer/answer';
import { openingOf, urgentOf } from '../answer/sentence';
import type { Answer, Untraced } from '../answer/shapes';
import { answerTraced, withTrace } from '../answer/traced';
import { refuseName, refuseTopic } from '../check/asked';
import { type Level, levels, type Topic } from '../define/shapes';
import { message } from '../words/message';
import { say } from '../words/say';
import type { Voice } from '../words/speaker';
import { nounOr, type Said } from '../words/value';
import { newChain } from './chain';
import { findingFull, findingShort } from './finding';
import { limitFull, limitShort } from './limit';

export type Length = 'short' | 'full';

const isAnswer = (given: Untraced | Asked): given is Untraced =>
  typeof given === 'object' && given !== null && 'outcome' in given;

const partsOf = ({ limits, findings }: Answer): readonly string[] => [
  'verdict',
  ...limits.map(({ id }) => `limit.${id}`),
  ...findings.map(({ id }) => `finding.${id}`),
];

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

/** What else stands at the same level, in one sentence. */
function besides(
  answer: Answer,
  { limits, findings }: Topic,
  deciding: string,
  level: Level,
): readonly Said[] {
  if (level === 'ok') return [];
  const same = [
    ...answer.limits.filter(({ state }) => state === level).map(({ id }) => `limit.${id}`),
    ...answer.findings.filter((each) => each.level === level).map(({ id }) => `finding.${id}`),
  ].filter((of) => of !== deciding);
  const of = same.map((each) => {
    const [kind = '', id = ''] = each.split(/\.(.*)/);
    return nounOr(kind === 'limit' ? limits[id] : findings[id], id);
  });
  return of.length === 0 ? [] : [message('likewise', { of, level })];
}

function whyVerdict(answer: Answer, topic: Topic, length: Length): Said {
  const level = levelOf(answer, topic);
  const deciding = decidingOf(answer, topic);
  const sentence = openingOf(topic, level, answer.findings);
  if (deciding === undefined) return message('sentences', { of: [sentence] });
  const reason = whySaid(topic, answer, deciding, length);
  const rest = length === 'short' ? [] : besides(answer, topic, deciding, level);
  return message('sentences', { of: [sentence, reason, ...rest] });
}

/**
 * The shortest chain from the facts to a state, in plain sentences made from the trace.
 *
 * @param answer what came out
 * @param of `verdict`, `limit.<id>` or `finding.<id>`
 * @param length one sentence, or every step with its units, where it was read and its source
 * @throws Error when the topic has nothing of that name
 */
export function whySaid(topic: Topic, answer: Answer, of: string, length: Length): Said {
  if (of === 'verdict') return whyVerdict(answer, topic, length);
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  const chain = newChain(answer.trace);
  const limit = kind === 'limit' && answer.limits.find((each) => each.id === id);
  const ofLimit = kind === 'limit' ? topic.limits[id] : undefined;
  if (limit && ofLimit) {
    const asked = { answer, topic, declared: ofLimit, limit, chain };
    if (length === 'short') return limitShort(asked);
    limitFull(asked);
    return message('sentences', { of: chain.sentences });
  }
  const finding = kind === 'finding' && answer.findings.find((each) => each.id === id);
  const ofFinding = kind === 'finding' ? topic.findings[id] : undefined;
  if (!finding || !ofFinding) throw new Error(`“${topic.id}” has nothing named “${of}”.`);
  const asked = { topic, declared: ofFinding, finding, chain };
  if (length === 'short') return findingShort(asked);
  findingFull(asked);
  return message('sentences', { of: chain.sentences });
}

/** In whose words a reason is told, unless it is asked otherwise: those that were asked for before. */
const voiceOf = (given: Untraced | Asked): Voice =>
  isAnswer(given) ? { units: withTrace(given).trace.units } : given;

/**
 * The same in words.
 *
 * @param given an answer, or a case to answer
 * @throws InputError as `answer` does, and when the topic has nothing of that name
 */
export function why(
  topic: Topic,
  given: Untraced | Asked,
  of: string,
  length: Length,
  voice: Voice = voiceOf(given),
): string {
  refuseTopic(topic);
  const answer = isAnswer(given) ? withTrace(given) : answerTraced(topic, given);
  refuseName('no-such-part', topic.id, of, partsOf(answer));
  refuseName('no-such-part', 'length', length, ['short', 'full']);
  return say(whySaid(topic, answer, of, length), voice);
}
