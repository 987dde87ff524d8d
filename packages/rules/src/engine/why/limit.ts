import { type Interval, isClosed, point, show, showMargin } from '../../quantity';
import { capital, listed, lowered } from '../answer/phrases';
import { sideShown } from '../answer/room';
import type { Answer, LimitAnswer, Step } from '../answer/shapes';
import type { Limit, Topic } from '../define/shapes';
import { type Chain, cite, isOpen, nounOfStep, stepNamed, tell, valueRead } from './chain';

export type AskedLimit = {
  readonly answer: Answer;
  readonly topic: Topic;
  readonly declared: Limit;
  readonly limit: LimitAnswer;
  readonly chain: Chain;
};

/** How a number is put: with its tenths where a sum has to come out, without in a sentence alone. */
type Put = typeof show;

/** “, less than the 5 % of it that is kept free” */
function margin({ answer, declared, limit }: AskedLimit): string {
  const kept = answer.parameters.find(({ id }) => id === declared.margin);
  if (!kept || !limit.careAt) return '';
  const free = `than the ${show(point(kept.value), kept.unit)} of it that is kept free`;
  if (limit.state === 'ok') return `, more ${free}`;
  return limit.used.lo > limit.careAt.hi ? `, less ${free}` : `, perhaps less ${free}`;
}

/** How it ends, as a clause that stands after “that” or after a comma. */
type Ending = { readonly verb: string; readonly what: string; readonly bare: string };

function ending(asked: AskedLimit, put: Put): Ending {
  const { limit, chain } = asked;
  const amount = (ends: Interval) => put(ends, limit.headroom.unit, chain.trace.units);
  const { lo, hi } = limit.headroom;
  if (limit.state === 'stop') {
    const over = `${amount({ lo: -hi, hi: -lo })} too much`;
    return { verb: 'is', what: over, bare: over };
  }
  if (limit.state === 'unknown') {
    const [over, left] = [amount(point(-lo)), amount(point(hi))];
    return {
      verb: 'may be',
      what: `${over} too much or leave ${left}`,
      bare: `between ${over} too much and ${left} left`,
    };
  }
  if (hi === 0) {
    const within = 'at the limit is within it';
    return { verb: 'leaves', what: `nothing, and ${within}`, bare: `nothing left, and ${within}` };
  }
  const left = amount({ lo: Math.max(0, lo), hi });
  return { verb: 'leaves', what: left + margin(asked), bare: `${left} left${margin(asked)}` };
}

/** “, and hangs on the dry tongue”: the facts that decide. */
function hangsOn({ answer, limit, topic }: AskedLimit): string {
  const facts = answer.missing.filter(({ decides }) => decides.includes(`limit.${limit.id}`));
  return listed(facts.map(({ fact, label }) => topic.facts[fact]?.noun ?? lowered(label)));
}

/** One sentence on what nobody asked, and what would have asked it. */
export function notAsked(topic: Topic, label: string, by: readonly string[]): string {
  const names = by.map((fact) => lowered(topic.facts[fact]?.label ?? fact));
  const untold =
    names.length > 1 ? `${names.slice(0, -1).join(', ')} or ${names.at(-1)}` : names[0];
  return `Nobody told ${untold ?? 'what it takes'}; without that “${label}” is not asked.`;
}

function clause({ limit, chain }: AskedLimit, step: Step, verb: string): string {
  const { ends } = step;
  if (isOpen(step) || ends?.lo === Infinity) return `${nounOfStep(step)} is not known`;
  const value = ends ? sideShown(limit)(ends, ends.unit, chain.trace.units) : step.value;
  return `${nounOfStep(step)} ${verb} ${value}`;
}

function steps({ declared, chain }: AskedLimit): readonly [used: Step, rating: Step] | undefined {
  const [used, rating] = [stepNamed(chain, declared.used), stepNamed(chain, declared.limit)];
  return used && rating && [used, rating];
}

/** One sentence: how much against how much, and what that leaves. */
export function limitShort(asked: AskedLimit): string {
  const { limit, declared, topic } = asked;
  const found = steps(asked);
  if (limit.state === 'not-asked' || !found) {
    return notAsked(topic, limit.label, declared.askedBy ?? []);
  }
  const both = `${clause(asked, found[0], 'comes to')} and ${clause(asked, found[1], 'is')}`;
  if (limit.state === 'unknown' && !isClosed(limit.headroom)) {
    const facts = hangsOn(asked);
    return `${capital(both)}${facts === '' ? '' : `; it hangs on ${facts}`}.`;
  }
  return `${capital(both)}: ${ending(asked, showMargin).bare}.`;
}

/** The full chain: what is used, from its facts up; what stands against it; what that leaves. */
export function limitFull(asked: AskedLimit): void {
  const { limit, declared, topic, chain } = asked;
  const { sentences } = chain;
  const found = steps(asked);
  if (limit.state === 'not-asked' || !found) {
    sentences.push(notAsked(topic, limit.label, declared.askedBy ?? []));
    return;
  }
  const [used, rating] = found;
  tell(chain, declared.used);
  tell(chain, declared.limit);
  const isTold = used.told !== undefined && !isOpen(used);
  const source = cite(chain, limit.source);
  const against = isOpen(rating) ? `${nounOfStep(rating)} is not known` : undefined;
  if (isTold) {
    const stands = against
      ? capital(against)
      : `Against it stands ${nounOfStep(rating)}, ${valueRead(rating)}`;
    sentences.push(`${stands}${source}.`);
  } else {
    const own = isOpen(used)
      ? `${nounOfStep(used)} is not known`
      : `${nounOfStep(used)} is ${valueRead(used)}`;
    const other = against ?? `${nounOfStep(rating)} is ${valueRead(rating)}`;
    sentences.push(`${capital(own)}, and ${other}${source}.`);
  }
  const facts = limit.state === 'unknown' ? hangsOn(asked) : '';
  if (limit.state === 'unknown' && !isClosed(limit.headroom)) {
    const hangs = facts === '' ? '' : `; it hangs on ${facts}`;
    sentences.push(`So it cannot be said whether that holds${hangs}.`);
    return;
  }
  const { verb, what } = ending(asked, show);
  sentences.push(`That ${verb} ${what}${facts === '' ? '' : `; it hangs on ${facts}`}.`);
}
