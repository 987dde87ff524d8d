import { urgentOf } from '../answer/sentence';
import type { FindingAnswer, LimitAnswer } from '../answer/shapes';
import { textOf } from '../answer/shown';
import { conditionRules, namesCompared } from '../condition/rules';
import { restsOnAny } from '../formula/rests-on';
import { message } from '../words/message';
import { type Sayable, text } from '../words/value';
import { wordsIn } from './length';
import { limitSaid, limitsInOrder, overSaid } from './limit';
import { isTold, type Matter } from './matter';
import { findingsTold, isCertain, levelOf } from './verdict';

/** What a verdict turns on: what is wrong, and what to do about it. */
export type Decider = {
  /** As an asking names its results: `limit.payload`, `finding.alarms`. */
  readonly names: readonly string[];
  readonly wrong: readonly Sayable[];
  readonly todo: Sayable | undefined;
};

const ofFinding = ({ id, messages }: FindingAnswer): Decider => ({
  names: [`finding.${id}`],
  wrong: [messages.wrong],
  todo: messages.do,
});

/** What to do about a limit as it stands: over, or kept only just. */
function todoOf(matter: Matter, { id, state, headroom }: LimitAnswer): Sayable | undefined {
  const { topic, compiled, run } = matter;
  const declared = topic.limits[id];
  const words = state === 'stop' ? declared?.do : declared?.near;
  if (words !== undefined) return textOf(compiled, run, words);
  // Of what carries a weight that is nearly all it may, one thing is to be done.
  return state === 'care' && headroom.unit === 'lb' ? message('add-nothing', {}) : undefined;
}

/** How a limit is named by an asking: itself, and what it holds against what. */
function namesOf({ topic }: Matter, { id }: LimitAnswer): readonly string[] {
  const { used, limit } = topic.limits[id] ?? {};
  return [`limit.${id}`, used, limit].flatMap((each) => each ?? []);
}

/** Limits over, or kept only just: the fullest, and what to do about the first that says so. */
function ofLimits(matter: Matter, state: 'stop' | 'care'): readonly Decider[] {
  const limits = limitsInOrder(matter).filter((each) => each.state === state);
  const [first] = limits;
  if (!first) return [];
  const [todo] = limits.flatMap((each) => todoOf(matter, each) ?? []);
  const wrong = state === 'stop' ? overSaid(matter, limits) : limitSaid(matter, first.id);
  return [{ names: namesOf(matter, first), wrong, todo }];
}

/** The fullest limit that is over, or kept only just, with what to do. */
export const limitAt = (matter: Matter, state: 'stop' | 'care'): Decider | undefined =>
  ofLimits(matter, state)[0];

/** What a verdict turns on that is settled, the gravest first; what is only perhaps so comes last. */
export function decidersOf(matter: Matter, asking?: string): readonly Decider[] {
  const level = levelOf(matter);
  if (level !== 'stop' && level !== 'care') return [];
  const findings = findingsTold(matter).filter((each) => each.level === level);
  const [certain = [], open = []] = [true, false].map((is) =>
    findings.filter((each) => isCertain(each) === is).map(ofFinding),
  );
  const limits = ofLimits(matter, level);
  // What was asked comes first; where nothing may go on, after what was found.
  const results = asking === undefined ? [] : (matter.topic.askings?.[asking]?.results ?? []);
  const isAsked = ({ names }: Decider): boolean => names.some((each) => results.includes(each));
  const placeOf = ({ names }: Decider): number => results.findIndex((each) => names.includes(each));
  const askedFirst = (all: readonly Decider[]): readonly Decider[] => [
    ...all.filter(isAsked).toSorted((a, b) => placeOf(a) - placeOf(b)),
    ...all.filter((each) => !isAsked(each)),
  ];
  if (level !== 'stop') return askedFirst([...certain, ...limits, ...open]);
  // A limit that is over waits for what was asked, or for the gravest alone: no part that is fitted mends it.
  const found = askedFirst(certain);
  const before = Math.max(1, certain.filter(isAsked).length);
  return [...found.slice(0, before), ...limits, ...found.slice(before), ...open];
}

/** Whether what was asked is just that. */
export function isAskedOf(matter: Matter, asking: string | undefined, { names }: Decider): boolean {
  const results = asking === undefined ? [] : (matter.topic.askings?.[asking]?.results ?? []);
  return results.some((each) => each === 'verdict' || names.includes(each));
}

/** So many further limits are named as close. */
const mostClose = 2;

/** Which further limits are kept only just. */
export function alsoClose(matter: Matter): readonly Sayable[] {
  const [, ...more] = limitsInOrder(matter).filter(({ state }) => state === 'care');
  const shorts = more.flatMap(({ id }) => matter.topic.limits[id]?.short ?? []);
  const named = shorts.filter((short) => wordsIn(short) <= 6).slice(0, mostClose);
  return named.length === 0 ? [] : [message('also-close', { of: named.map((s) => text(s)) })];
}

/** Whether a finding comes of anything that was told; that a fact was not told is no misreading. */
function isOfTold(matter: Matter, id: string): boolean {
  const { topic, compiled, asked } = matter;
  const told = Object.keys(asked.facts).filter((fact) => isTold(matter, fact));
  return conditionRules(topic)
    .filter(({ event }) => event.params.of === `finding.${id}`)
    .flatMap(({ conditions }) => namesCompared(conditions))
    .some((name) => told.includes(name) || restsOnAny(compiled, name, told));
}

/**
 * What no further fact settles, since what was told cannot be right: it is read again before
 * anything else is asked.
 */
export function stuck(matter: Matter): Decider | undefined {
  const { topic, answer } = matter;
  if (levelOf(matter) !== 'unknown' || urgentOf(topic, answer.findings)) return undefined;
  const decided = new Set(answer.missing.flatMap(({ decides }) => decides));
  const found = findingsTold(matter).find(
    (each) =>
      each.level === 'unknown' &&
      isCertain(each) &&
      each.messages.do !== undefined &&
      !decided.has(`finding.${each.id}`) &&
      isOfTold(matter, each.id),
  );
  return found && ofFinding(found);
}
