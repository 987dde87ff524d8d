import type { Topic } from './shapes';

/** Looks through a rule set before it is asked for the first time; it throws where that must not be. */
type Look = (topic: Topic) => void;

/**
 * How each rule set is looked through. One that is none of these is asked nothing: neither what was
 * merely written down, nor a changed copy of one that was right.
 *
 *     defineTopic, topicFromPublished ── before it is first asked
 *     ruleSet ── in the tests of this repository, which is why nothing of that is shipped
 */
const looks = new WeakMap<object, Look>();

/** Has a rule set looked through so, once, before it is first asked. */
export function lookedAtBy<const T extends Topic>(topic: T, look: Look): T {
  looks.set(topic, look);
  return topic;
}

const nothingLeft: Look = () => undefined;

/** A rule set of this repository. Names it and keeps its exact type. */
export function ruleSet<const T extends Topic>(made: T): T {
  return lookedAtBy(made, nothingLeft);
}

/** A copy in which nothing is other than what may be moved: looked at as that was. */
export function likewise<T extends object>(copy: T, of: Topic): T {
  const look = looks.get(of);
  if (onlyJudging.has(of)) onlyJudging.add(copy);
  if (look) looks.set(copy, look);
  return copy;
}

/** Whether anything looks through a rule set at all; if so, it is looked through now. */
export function isLookedAt(topic: Topic): boolean {
  const look = looks.get(topic);
  if (!look) return false;
  look(topic);
  looks.set(topic, nothingLeft);
  return true;
}

/** What of a rule set nobody needs who judges: it is said or tried beside an answer, or read in messages. */
const beside = ['askings', 'everybody', 'how', 'called', 'changes'] as const;

/** A rule set as far as it judges. */
export type Judging<T extends Topic> = Omit<T, (typeof beside)[number]>;

const onlyJudging = new WeakSet<object>();

/**
 * A rule set without what stands beside an answer, so that a page that judges need not carry it. The
 * build leaves it out of the index by this very call, see tsup.config.ts.
 */
export function judging<const T extends Topic>(whole: T): Judging<T> {
  const { askings: _, everybody: __, how: ___, called: ____, changes: _____, ...rest } = whole;
  onlyJudging.add(rest);
  return likewise(rest, whole);
}

/** Whether a rule set, or that of which it is a copy under a house layer, only judges. */
export const isOnlyJudging = (topic: Topic): boolean => onlyJudging.has(topic);
