import { gravestFirst } from '../answer/levels';
import { openingOf, urgentOf } from '../answer/sentence';
import type { FindingAnswer } from '../answer/shapes';
import { type Level, levels, type State } from '../define/shapes';
import { holesIn } from '../words/fill';
import { message } from '../words/message';
import { nounOr, type Sayable, text } from '../words/value';
import { isToldUnknown, type Matter } from './matter';

export const levelOf = ({ topic, answer }: Matter): Level =>
  levels.find((level) => topic.outcomes[level].id === answer.outcome) ?? 'unknown';

/** What people have to do before anything else. */
export function urgentSaid({ topic, answer }: Matter): readonly Sayable[] {
  const urgent = urgentOf(topic, answer.findings);
  return urgent ? partsOf(urgent) : [];
}

/** What is wrong, and what to do about it; why is left to whoever asks. */
export const partsOf = ({ messages: { wrong, do: todo } }: FindingAnswer): readonly Sayable[] =>
  todo ? [wrong, todo] : [wrong];

/** The facts that decide, as something to look up; never that it cannot be said. */
export function hinge({ topic, answer }: Matter): readonly Sayable[] {
  const [first, second] = answer.missing;
  if (!first) return [];
  const of = nounOr(topic.facts[first.fact], first.fact);
  if (first.tips && typeof first.tips === 'object' && first.side) {
    const at = { ...first.tips, style: 'round' } as const;
    const above = first.side === 'above';
    const edge = above ? at.hi : at.lo;
    const stop = text(topic.outcomes.stop.sentence);
    const fact = topic.facts[first.fact];
    if (fact?.kind === 'quantity' && fact.counted) {
      const count = above ? Math.floor(edge) + 1 : Math.ceil(edge) - 1;
      return [message('hangs-and-counts', { of, count, above, stop })];
    }
    return [message('hangs-and-tips', { of, at: { ...at, lo: edge, hi: edge }, above, stop })];
  }
  const more = second ? [nounOr(topic.facts[second.fact], second.fact)] : [];
  return [message('it-hangs-on', { of: [of, ...more] })];
}

/** Whether what a fact decides is what was asked: the verdict, a limit, or what is held against what. */
function isOfAsked({ topic }: Matter, decides: readonly string[], asking: string | undefined) {
  const results = asking === undefined ? [] : (topic.askings?.[asking]?.results ?? []);
  if (results.length === 0 || results.includes('verdict')) return true;
  return decides.some((of) => {
    const { used, limit } = topic.limits[of.replace(/^limit\./, '')] ?? {};
    return [of, used, limit].some((each) => each !== undefined && results.includes(each));
  });
}

/** Whether a figure that nobody told stands in for one, and would have to be named beside where it tips. */
const isPresuming = ({ topic, answer }: Matter): boolean =>
  answer.findings.some(
    ({ id, level }) =>
      level === 'if' &&
      [topic.findings[id]?.if ?? []]
        .flat()
        .some(
          ({ proviso }) =>
            proviso !== undefined &&
            holesIn(proviso).some((name) => Object.hasOwn(topic.facts, name)),
        ),
  );

/** Where it is open and the fact to look up has a figure at which what was asked tips: that sentence. */
export function tippingAt(
  matter: Matter,
  fact: string | undefined,
  asking: string | undefined,
): readonly Sayable[] {
  const [first] = matter.answer.missing;
  if (levelOf(matter) !== 'unknown' || !first || first.fact !== fact) return [];
  if (isPresuming(matter) || !isOfAsked(matter, first.decides, asking)) return [];
  return hinge(matter).filter((each) => 'code' in each && each.code.startsWith('hangs-and-'));
}

/** How it stands in a sentence; where it cannot be told, what it hangs on. */
export function verdictSaid(matter: Matter): readonly Sayable[] {
  const level = levelOf(matter);
  if (level === 'unknown') return hinge(matter);
  return [openingOf(matter.topic, level, matter.answer.findings)];
}

const dangerLevels: readonly State[] = ['unknown', 'care', 'if'];

const isDanger = ({ topic }: Matter, { id, level }: FindingAnswer): boolean =>
  topic.findings[id]?.first === true && dangerLevels.includes(level);

/** A verdict that is an *if* says its provisos itself. */
const isSaidAsProviso = (matter: Matter, { level }: FindingAnswer): boolean =>
  level === 'if' && levelOf(matter) === 'if';

/** Dangers that came up and stop nothing: what is not known, what is seen, what nobody mentioned. */
export const dangersTold = (matter: Matter): readonly FindingAnswer[] =>
  matter.answer.findings
    .filter((each) => isDanger(matter, each) && !isSaidAsProviso(matter, each))
    .toSorted(
      (a, b) =>
        // Of what somebody does not know, more than of what nobody spoke of.
        Math.sign(unknownFacts(matter, b).length) - Math.sign(unknownFacts(matter, a).length) ||
        dangerLevels.indexOf(a.level) - dangerLevels.indexOf(b.level),
    );

/** Facts of which somebody said that they do not know them. */
export const unknownFacts = (
  matter: Matter,
  { id }: Pick<FindingAnswer, 'id'>,
): readonly string[] =>
  (matter.topic.findings[id]?.askedBy ?? []).filter((fact) => isToldUnknown(matter, fact));

/** Dangers of which somebody said that they do not know: they come before everything else. */
export const dangersUnknown = (matter: Matter): readonly FindingAnswer[] =>
  dangersTold(matter).filter(
    (each) => each.level !== 'care' && unknownFacts(matter, each).length > 0,
  );

/** Beside what stops it, and beside a danger that nobody knows of, nothing is said to be in order. */
export const isNoneInOrder = (matter: Matter): boolean =>
  levelOf(matter) === 'stop' || dangersUnknown(matter).length > 0;

/** The findings that are said beside the limits, the gravest first, without what is urgent. */
export function findingsTold(matter: Matter): readonly FindingAnswer[] {
  const urgent = urgentOf(matter.topic, matter.answer.findings);
  const isQuiet = isNoneInOrder(matter);
  return gravestFirst(matter.answer.findings).filter(
    ({ id, level }) => id !== urgent?.id && !(isQuiet && level === 'ok'),
  );
}

/** What is so for certain, by a ruling of the rule set, and not only perhaps. */
export const isCertain = ({ code }: FindingAnswer): boolean => /^\w+\.\d+$/.test(code);

/**
 * What was told calls for care, whatever else is open; and what it would hang on of which somebody said
 * that they do not know.
 */
export const caresTold = (matter: Matter): readonly FindingAnswer[] =>
  findingsTold(matter).filter((each) => {
    if (!isCertain(each)) return false;
    const isProviso = each.level === 'if' && levelOf(matter) === 'unknown';
    return each.level === 'care' || (isProviso && unknownFacts(matter, each).length > 0);
  });

/** Whether what is safest for whoever does not know fits: not beside what is known to be wrong. */
export const isDefaultFit = (matter: Matter): boolean =>
  levelOf(matter) !== 'stop' &&
  dangersUnknown(matter).length === 0 &&
  caresTold(matter).length === 0;
