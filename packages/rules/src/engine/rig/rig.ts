import { type Asked, today } from '../answer/answer';
import type { Answer, FindingAnswer } from '../answer/shapes';
import { answerTraced } from '../answer/traced';
import { refuseTopic } from '../check/asked';
import { refuseUnlessParts } from '../check/doors';
import { readFacts } from '../check/facts';
import type { FactGiven, FactsGiven } from '../check/given';
import { sayProblem } from '../check/messages';
import { nearest } from '../check/near';
import { InputError, type Problem } from '../check/problem';
import { presentFacts } from '../check/renamed';
import { type Level, levels, type State, type Topic } from '../define/shapes';

export type Topics = Readonly<Record<string, Topic>>;

/** One topic of a rig: at the moment at which it stands worst, or at one moment. */
export type RigTopic = {
  readonly topic: Topic;
  /** `leaving`, `home` …; null where the rig has no moments. */
  readonly moment: string | null;
  readonly level: Level;
  readonly answer: Answer;
  /** What of the rig was asked of this topic. */
  readonly facts: FactsGiven;
};

export type RigAnswer = {
  /** Every topic that something told decides in, the worst first. */
  readonly answers: readonly RigTopic[];
  /** The same at each moment; empty where the rig has none. */
  readonly moments: Readonly<Record<string, readonly RigTopic[]>>;
  /** Of all other topics, the facts that they would want. */
  readonly needs: Readonly<Record<string, readonly string[]>>;
};

/** What is asked of a whole rig: facts of any topic, and at each moment those that then differ. */
export type RigAsked = Asked & {
  /** A fact replaces the one told above; a list replaces it whole. */
  readonly moments?: Readonly<Record<string, FactsGiven>>;
};

const presentIds = (topics: Topics): ReadonlySet<string> =>
  new Set(Object.values(topics).flatMap(({ facts }) => Object.keys(facts)));

/** What of a rig's facts a topic has; an old id of it counts where no topic has it today. */
export function factsFor(topic: Topic, facts: FactsGiven, present: ReadonlySet<string>) {
  const own = Object.entries(facts).filter(
    ([id]) =>
      Object.hasOwn(topic.facts, id) ||
      (!present.has(id) && Object.hasOwn(topic.renamed ?? {}, id)),
  );
  return presentFacts<FactGiven>(topic, Object.fromEntries(own));
}

/** Everything wrong with the facts of a rig, once each; an id that no topic has is told with the nearest. */
export function rigProblems(topics: Topics, facts: FactsGiven): readonly Problem[] {
  const present = presentIds(topics);
  const all = Object.values(topics);
  const strange = Object.keys(facts).flatMap((id): readonly Problem[] => {
    if (present.has(id) || all.some(({ renamed = {} }) => Object.hasOwn(renamed, id))) return [];
    const near = nearest(id, present);
    return [
      { code: 'no-such-fact', fact: id, found: id, wanted: 'any topic', ...(near && { near }) },
    ];
  });
  const found = all.flatMap((topic) => {
    const { facts: own, problems } = factsFor(topic, facts, present);
    return [...problems, ...readFacts(topic, own).problems];
  });
  const once = new Map<string, Problem>();
  for (const problem of [...strange, ...found]) {
    const { code, fact, row, column } = problem;
    once.set([code, fact, row ?? '', column ?? ''].join('\n'), problem);
  }
  return [...once.values()];
}

const statesOf = ({ limits, findings }: Answer): ReadonlyMap<string, State> =>
  new Map([
    ...limits.map(({ id, state }) => [`limit.${id}`, state] as const),
    ...findings.map(({ id, level }) => [`finding.${id}`, level] as const),
  ]);

const isSettled = (state: State): boolean => state !== 'unknown' && state !== 'not-asked';

/**
 * Whether something told decides in a topic: a limit is settled, a finding stops, or a verdict comes
 * out, and none of it by itself. A danger that is asked about though nobody said a word of it decides
 * nothing, nor does a finding that is in order because what it asks about is not there.
 */
function decides(topic: Topic, answer: Answer, level: Level, asOf: string): boolean {
  const nothing = answerTraced(topic, { facts: {}, asOf });
  const untold = statesOf(nothing);
  // What was told is a danger, whatever else the topic would have to know.
  const isDanger = ({ id, level: at, code }: FindingAnswer): boolean =>
    topic.findings[id]?.first === true &&
    code.startsWith(`${at}.`) &&
    untold.get(`finding.${id}`) !== at;
  if (answer.findings.some(isDanger)) return true;
  return [...statesOf(answer)].some(
    ([of, state]) =>
      isSettled(state) &&
      state !== untold.get(of) &&
      (level !== 'unknown' || of.startsWith('limit.') || state === 'stop'),
  );
}

function levelOf({ outcomes }: Topic, { outcome }: Answer): Level {
  const level = levels.find((each) => outcomes[each].id === outcome);
  if (level === undefined) throw new Error(`There is no outcome “${outcome}”.`);
  return level;
}

/** How much a level is worth telling first. */
const gravity = (level: Level): number => ({ stop: 4, unknown: 3, if: 2, care: 1, ok: 0 })[level];

const worstFirst = (all: readonly RigTopic[]): readonly RigTopic[] =>
  all.toSorted((a, b) => gravity(b.level) - gravity(a.level));

/** What a topic in which nothing was decided would want: what it asks for, else what its limits hang on. */
function wants(topic: Topic, answer: Answer): readonly string[] {
  const asked = answer.missing.map(({ fact }) => fact);
  if (asked.length > 0) return [...new Set(asked)];
  const hung = [...Object.values(topic.limits), ...Object.values(topic.findings)];
  const named = hung.flatMap(({ askedBy = [] }) => askedBy);
  const own = [...new Set(named)].filter((name) => Object.hasOwn(topic.facts, name));
  return own.length > 0 ? own : Object.keys(topic.facts).slice(0, 3);
}

/**
 * One rig, asked of every topic that can say something of it.
 *
 *     facts of the rig ─┬─► leaving ─► every topic ─┐
 *                       └─► home ────► every topic ─┴─► the worst of each; what the others would want
 *
 * @throws InputError for an id that no topic has, and for what a topic cannot read
 */
export function answerRig(topics: Topics, rig: RigAsked): RigAnswer {
  refuseUnlessParts('topics', topics, {}, 'rule sets by id, as `topics` of this package has them');
  for (const each of Object.values(topics)) refuseTopic(each);
  refuseUnlessParts('rig', rig, { facts: 'parts' }, '{ facts, moments, asOf }');
  const { moments = {}, ...asked } = rig;
  const kinds = Object.fromEntries(
    Object.keys(Object(moments)).map((id) => [id, 'parts' as const]),
  );
  refuseUnlessParts('moments', moments, kinds, 'facts by moment');
  const asOf = asked.asOf ?? today();
  const named = Object.entries(moments);
  const times: readonly (readonly [string | null, FactsGiven])[] =
    named.length === 0
      ? [[null, asked.facts]]
      : named.map(([moment, facts]) => [moment, { ...asked.facts, ...facts }]);
  const problems = times.flatMap(([, facts]) => rigProblems(topics, facts));
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  const present = presentIds(topics);
  const all = times.map(([moment, told]) =>
    Object.values(topics).map((topic) => {
      const { facts } = factsFor(topic, told, present);
      const answer = answerTraced(topic, { ...asked, asOf, facts });
      const level = levelOf(topic, answer);
      const is = Object.keys(facts).length > 0 && decides(topic, answer, level, asOf);
      return { topic, moment, level, answer, facts, decided: is };
    }),
  );
  const decided = new Set(all.flat().flatMap((each) => (each.decided ? [each.topic.id] : [])));
  const told = (each: (typeof all)[number]): readonly RigTopic[] =>
    each.flatMap(({ decided: _, ...rest }) => (decided.has(rest.topic.id) ? [rest] : []));
  const worst = new Map<string, RigTopic>();
  for (const each of all.flatMap(told)) {
    const before = worst.get(each.topic.id);
    if (!before || gravity(each.level) > gravity(before.level)) worst.set(each.topic.id, each);
  }
  const rest = (all[0] ?? []).filter(({ topic }) => !decided.has(topic.id));
  return {
    answers: worstFirst([...worst.values()]),
    moments: Object.fromEntries(
      named.map(([moment], i) => [moment, worstFirst(told(all[i] ?? []))]),
    ),
    needs: Object.fromEntries(rest.map(({ topic, answer }) => [topic.id, wants(topic, answer)])),
  };
}
