import { type Level, levels, type Topic } from '../define/shapes';
import { message } from '../words/message';
import { heading, nounOr, type Said, type Sayable, text } from '../words/value';
import { atMost, leftOf, overOf, sideOf } from './room';
import type { FindingAnswer, LimitAnswer, Missing } from './shapes';

/** What is said before anything else: people get out before anybody hears a verdict. */
export const urgentOf = (
  topic: Topic,
  findings: readonly FindingAnswer[],
): FindingAnswer | undefined =>
  findings.find(({ id, level }) => level === 'stop' && topic.findings[id]?.first);

type Standing = {
  readonly topic: Topic;
  readonly limits: readonly LimitAnswer[];
  readonly findings: readonly FindingAnswer[];
  readonly binding: LimitAnswer | null;
  /** Found where it is asked for: a verdict that stands asks for nothing. */
  readonly missing: () => readonly Missing[];
  /** Results that belong into the sentence. */
  readonly told: readonly Sayable[];
};

const shortOf = (topic: Topic, { id, label }: LimitAnswer): Sayable => {
  const short = topic.limits[id]?.short;
  return short === undefined ? heading(label) : text(short);
};

const isExceeded = (topic: Topic, { id }: LimitAnswer): boolean =>
  topic.limits[id]?.exceeded ?? false;

/** Whether of these limits more than one thing is said. */
const areSeveral = (topic: Topic, limits: readonly LimitAnswer[]): boolean =>
  limits.length !== 1 || limits.some(({ id }) => topic.limits[id]?.plural ?? false);

/** All that is said of a finding. */
const allOf = ({ messages: { wrong, because, do: todo } }: FindingAnswer): readonly Sayable[] =>
  [wrong, because, todo].flatMap((each) => each ?? []);

const wrongs = (findings: readonly FindingAnswer[]): readonly Sayable[] =>
  findings.map(({ messages }) => messages.wrong);

/** Every limit that is over, the fullest first, and everything else that stops it. */
function stopped({ topic, limits, findings }: Standing): readonly Sayable[] {
  const over = limits.filter((limit) => limit.state === 'stop');
  const [first, ...rest] = over.toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi);
  const stops = findings.filter((each) => each.level === 'stop');
  const [finding, ...others] = stops;
  if (!first) return finding ? [...allOf(finding), ...wrongs(others)] : [];
  const exceeded = isExceeded(topic, first);
  const same = rest.filter((each) => isExceeded(topic, each) === exceeded);
  const other = rest.filter((each) => isExceeded(topic, each) !== exceeded);
  const limit = message('limits-over', {
    short: shortOf(topic, first),
    several: areSeveral(topic, [first]),
    exceeded,
    by: overOf(first),
    same: same.map((each) => shortOf(topic, each)),
    sameSeveral: areSeveral(topic, same),
    other: other.map((each) => shortOf(topic, each)),
    otherSeveral: areSeveral(topic, other),
  });
  return [limit, ...wrongs(stops)];
}

/** A limit that may hold or not, with both of its ends: “may be over by 20 lb or have 30 lb left”. */
function straddling({ topic, limits }: Standing): readonly Sayable[] {
  const open = limits.find(
    ({ state, headroom: { lo, hi } }) =>
      state === 'unknown' && Number.isFinite(lo) && Number.isFinite(hi) && lo < 0 && hi > 0,
  );
  if (!open) return [];
  return [
    message('straddling', {
      short: shortOf(topic, open),
      exceeded: isExceeded(topic, open),
      over: atMost(overOf(open)),
      left: atMost(leftOf(open)),
    }),
  ];
}

/** How many facts are asked for in one breath. */
const mostAsked = 2;

/** What two told facts prove, though they do not settle the verdict. */
const proved = ({ topic, findings }: Standing): readonly FindingAnswer[] =>
  findings.filter(({ id, code }) => code.startsWith('care') && topic.findings[id]?.saidOpen);

function unsettled(standing: Standing): readonly Sayable[] {
  const asked = standing.missing().slice(0, mostAsked);
  const of = asked.map(({ fact }) => nounOr(standing.topic.facts[fact], fact));
  const first = of.length === 0 ? [] : [message('find-out', { of })];
  return [...wrongs(proved(standing)), ...straddling(standing), ...first];
}

function because(level: Level, standing: Standing): readonly Sayable[] {
  const { topic, limits, findings, binding } = standing;
  if (level === 'stop') return stopped(standing);
  if (level === 'unknown') return unsettled(standing);
  const cares = findings.filter((each) => each.level === 'care');
  const [first, ...others] = cares;
  // Where nothing is held against a limit, what is to be taken care of is all there is to say.
  if (first && limits.every(({ state }) => state === 'not-asked')) {
    return [...allOf(first), ...caresOf(others, mostCares - 1)];
  }
  const out = binding ? [runsOut(topic, binding)] : [];
  const told = caresOf(cares, mostCares);
  // Where every limit has room, the care is somewhere else, and that comes first.
  return limits.some(({ state }) => state === 'care') ? [...out, ...told] : [...told, ...out];
}

/** More than these nobody keeps in mind while listening. */
const mostCares = 2;

function caresOf(findings: readonly FindingAnswer[], most: number): readonly Sayable[] {
  const told = wrongs(findings.slice(0, most));
  const count = findings.length - told.length;
  return count === 0 ? told : [...told, message('more-cares', { count })];
}

function runsOut(topic: Topic, binding: LimitAnswer): Said {
  const left = leftOf(binding);
  return message('runs-out', {
    short: shortOf(topic, binding),
    several: areSeveral(topic, [binding]),
    left: left.hi === 0 ? null : left,
    of: sideOf(binding, binding.limit),
  });
}

/** What the verdict says first; where it hangs on what nobody told, what that is. */
export function openingOf(topic: Topic, level: Level, findings: readonly FindingAnswer[]): Sayable {
  const sentence = text(topic.outcomes[level].sentence);
  if (level !== 'if') return sentence;
  const provisos = findings.flatMap((each) =>
    each.level === 'if' && each.messages.proviso ? [each.messages.proviso] : [],
  );
  return message('fits-if', { sentence, provisos });
}

type Answered = {
  readonly outcome: string;
  readonly findings: readonly FindingAnswer[];
  readonly messages: { readonly sentence: Sayable };
};

const isSame = (a: Sayable, b: Sayable): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The sentences of an answer, one by one. */
const sentencesIn = (said: Sayable): readonly Sayable[] =>
  'code' in said && said.code === 'sentences' && Array.isArray(said.values.of)
    ? said.values.of
    : [said];

/**
 * The sentence of an answer where the verdict stands over it as a word: without the opening, which
 * says no more than that word. One that hangs on something keeps it, since what it hangs on is there.
 */
export function beneathWord(topic: Topic, { outcome, findings, messages }: Answered): Sayable {
  const level = levels.find((each) => topic.outcomes[each].id === outcome) ?? 'unknown';
  if (level === 'if') return messages.sentence;
  const opening = openingOf(topic, level, findings);
  const of = sentencesIn(messages.sentence).filter((each) => !isSame(each, opening));
  return of.length === 0 ? messages.sentence : message('sentences', { of });
}

/** One or two short sentences, fit to be said aloud; what people have to do at once comes first. */
export function sentenceOf(topic: Topic, level: Level, standing: Omit<Standing, 'topic'>): Said {
  const opening = openingOf(topic, level, standing.findings);
  const urgent = urgentOf(topic, standing.findings);
  const of = urgent
    ? [...allOf(urgent), opening]
    : [opening, ...standing.told, ...because(level, { topic, ...standing })];
  return message('sentences', { of });
}

/** On how many limits the verdict rests, and which were not asked; undefined where it rests on none. */
export function restsOn(topic: Topic, limits: readonly LimitAnswer[]): Said | undefined {
  const left = limits.filter((limit) => limit.state === 'not-asked');
  const asked = limits.length - left.length;
  const nouns = (of: readonly LimitAnswer[]) =>
    of.map(({ id, label }) => nounOr(topic.limits[id], label));
  // A question that no limit has to do with rests on none, and says nothing of them; nor does one that has a single limit.
  if (asked === 0 || limits.length === 1) return undefined;
  return message('rests-on', {
    asked,
    all: limits.length,
    silent: nouns(left.filter(({ uncalledFor }) => !uncalledFor)),
    uncalledFor: nouns(left.filter(({ uncalledFor }) => uncalledFor)),
  });
}
