import { isClosed, point, rounded } from '../../quantity';
import { atMost, leftOf, overOf, sideOf } from '../answer/room';
import type { Answer, LimitAnswer, Step } from '../answer/shapes';
import type { Finding, Limit, Topic } from '../define/shapes';
import { message } from '../words/message';
import { nounOr, type Quantity, type Said, type Sayable, text } from '../words/value';
import { type Chain, cite, isOpen, stepNamed, tell, valueRead } from './chain';

export type AskedLimit = {
  readonly answer: Answer;
  readonly topic: Topic;
  readonly declared: Limit;
  readonly limit: LimitAnswer;
  readonly chain: Chain;
};

/** How a number is put: with its tenths where a sum has to come out, without in a sentence alone. */
type Put = 'exact' | 'margin';

/** “, less than the 5 % of it that is kept free” */
function margin({ answer, declared, limit }: AskedLimit): Said | null {
  const kept = answer.parameters.find(({ id }) => id === declared.margin);
  if (!kept || !limit.careAt) return null;
  if (!isClosed(limit.careAt)) return message('no-room', {});
  const least = answer.parameters.find(({ id }) => id === declared.marginLeast);
  const most = limit.limit.hi - limit.careAt.lo;
  const isLeast = least !== undefined && rounded(least.value) >= rounded(most);
  const { value, unit } = isLeast ? least : kept;
  const free: Quantity = { ...point(value), unit, style: 'exact' };
  const isLess = limit.used.lo > limit.careAt.hi;
  const than = limit.state === 'ok' ? 'more' : isLess ? 'less' : 'perhaps-less';
  const of = isLeast ? 'least' : declared.empty === undefined ? 'limit' : 'room';
  return message('kept-free', { free, than, of });
}

/** How it ends: a clause by itself after a colon, or one with a verb after “that”. */
function ending(asked: AskedLimit, style: Put): Said {
  const { limit } = asked;
  const bare = style === 'margin';
  const put = (between: Quantity): Quantity => ({ ...between, style });
  if (limit.state === 'stop') {
    return message('ends-too-much', { by: put(overOf(limit)), bare });
  }
  if (limit.state === 'unknown') {
    const [over, left] = [put(atMost(overOf(limit))), put(atMost(leftOf(limit)))];
    return message('ends-open', { over, left, bare });
  }
  if (limit.headroom.hi === 0) return message('ends-at-limit', { bare });
  return message('ends-left', { left: put(leftOf(limit)), margin: margin(asked), bare });
}

/** The facts that decide. */
function hangsOn({ answer, limit, topic }: AskedLimit): readonly Sayable[] {
  const facts = answer.missing.filter(({ decides }) => decides.includes(`limit.${limit.id}`));
  return facts.map(({ fact }) => nounOr(topic.facts[fact], fact));
}

type Asked = {
  readonly topic: Topic;
  readonly chain: Chain;
  readonly declared: Pick<Finding, 'label' | 'askedBy' | 'askedByKnown' | 'askedWhen'>;
};

/** What was not asked, and what would have asked it. */
export function notAsked({ topic, chain, declared }: Asked): Said {
  const label = text(declared.label);
  const needed =
    declared.askedWhen === undefined ? undefined : stepNamed(chain, declared.askedWhen);
  if (needed?.among?.join() === 'no') {
    return message('does-not-ask', { when: needed.messages.label, label });
  }
  const by = declared.askedBy ?? declared.askedByKnown ?? [];
  return message('nobody-told', { by: by.map((fact) => nounOr(topic.facts[fact], fact)), label });
}

function clause({ limit }: AskedLimit, step: Step, comes: boolean): Said {
  const { ends } = step;
  const { noun } = step.messages;
  if (isOpen(step) || ends?.lo === Infinity) return message('clause-unknown', { noun });
  const value = ends ? sideOf(limit, ends) : step.messages.value;
  return message('clause', { noun, value, comes });
}

function steps({ declared, chain }: AskedLimit): readonly [used: Step, rating: Step] | undefined {
  const [used, rating] = [stepNamed(chain, declared.used), stepNamed(chain, declared.limit)];
  return used && rating && [used, rating];
}

/** One sentence: how much against how much, and what that leaves. */
export function limitShort(asked: AskedLimit): Said {
  const { limit } = asked;
  const found = steps(asked);
  if (limit.state === 'not-asked' || !found) return notAsked(asked);
  const [used, rating] = [clause(asked, found[0], true), clause(asked, found[1], false)];
  if (limit.state === 'unknown' && !isClosed(limit.headroom)) {
    return message('limit-short', { used, rating, ending: null, hangs: hangsOn(asked) });
  }
  return message('limit-short', { used, rating, ending: ending(asked, 'margin'), hangs: [] });
}

/** The full chain: what is used, from its facts up; what stands against it; what that leaves. */
export function limitFull(asked: AskedLimit): void {
  const { limit, declared, chain } = asked;
  const { sentences } = chain;
  const found = steps(asked);
  if (limit.state === 'not-asked' || !found) {
    sentences.push(notAsked(asked));
    return;
  }
  const [used, rating] = found;
  tell(chain, declared.used);
  tell(chain, declared.limit);
  const source = cite(chain, limit.source);
  const whole = (step: Step): Said =>
    isOpen(step)
      ? message('clause-unknown', { noun: step.messages.noun })
      : message('clause', { noun: step.messages.noun, value: valueRead(step), comes: false });
  if (used.messages.told === undefined || isOpen(used)) {
    sentences.push(message('both-clauses', { used: whole(used), rating: whole(rating), source }));
  } else {
    const { noun } = rating.messages;
    const value = isOpen(rating) ? null : valueRead(rating);
    sentences.push(message('against-it', { noun, value, source }));
  }
  const hangs = limit.state === 'unknown' ? hangsOn(asked) : [];
  const isUnclear = limit.state === 'unknown' && !isClosed(limit.headroom);
  sentences.push(
    isUnclear
      ? message('cannot-be-said', { hangs })
      : message('that-ends', { ending: ending(asked, 'exact'), hangs }),
  );
}
