import type { Fact } from '../define/shapes';
import { message } from '../words/message';
import { nounOr, type Sayable, text } from '../words/value';
import { askedFirst, isYesOrNo } from './asking';
import { stuck } from './deciding';
import { isAnythingTold, isTold, type Matter } from './matter';
import { everybodyFor } from './rule';
import { dangersUnknown, levelOf, unknownFacts } from './verdict';
import { whereToLook } from './where';

/** Up to so many facts told, a question is only begun. */
const fewTold = 3;

/** Where nothing decides yet, so many questions get it going. */
const mostToBegin = 3;

/**
 * What is asked next, once each: what decides; where so little was told that no single fact does,
 * what the question is about.
 */
export function asksOf(matter: Matter, asking: string | undefined): readonly Fact[] {
  const { topic, answer } = matter;
  const open = [...new Set(answer.missing.map(({ fact }) => fact))];
  const isLost = open.length === 0 && levelOf(matter) === 'unknown';
  const about = asking === undefined ? [] : (topic.askings?.[asking]?.impliedBy ?? []);
  // Of what decides, what the question is about comes first.
  const isAbout = (fact: string): boolean => about.includes(fact);
  const deciding = [...open.filter(isAbout), ...open.filter((fact) => !isAbout(fact))];
  const begin = isLost ? about.filter((fact) => !isTold(matter, fact)).slice(0, mostToBegin) : [];
  // Whatever asks, the first thing asked is the same.
  const first =
    levelOf(matter) === 'unknown' && !stuck(matter) ? nextFact(matter, asking) : undefined;
  const inOrder = [...(first === undefined ? [] : [first]), ...deciding, ...begin];
  return [...new Set(inOrder)].flatMap((fact) => topic.facts[fact] ?? []);
}

/** The facts that decide what was asked, the one that decides most first. */
function factsOfAsked({ topic, answer }: Matter, asking: string | undefined): readonly string[] {
  const results = (asking === undefined ? undefined : topic.askings?.[asking]?.results) ?? [];
  const isOfAsked = (of: string): boolean => {
    const [kind, id = ''] = of.split(/\.(.*)/);
    const decision = kind === 'finding' ? topic.findings[id]?.decision : undefined;
    return results.includes(of) || (decision !== undefined && results.includes(decision));
  };
  return answer.missing.filter(({ decides }) => decides.some(isOfAsked)).map(({ fact }) => fact);
}

/**
 * The one thing to find out next: of what decides, what the question is about; where none of that
 * decides and what was asked has no answer yet, what the question is about all the same.
 */
export function nextFact(matter: Matter, asking: string | undefined): string | undefined {
  const { topic, answer } = matter;
  const own = asking === undefined ? undefined : topic.everybody?.[asking];
  const about = [
    ...(own?.look ?? []),
    ...((asking === undefined ? undefined : topic.askings?.[asking]?.impliedBy) ?? []),
    ...(own ? [] : (everybodyFor(matter, asking)?.look ?? [])),
  ].filter((fact) => !isTold(matter, fact));
  const open = answer.missing.map(({ fact }) => fact);
  const isOpen = (fact: string): boolean => open.includes(fact);
  const isAnswered = askedFirst(matter, asking).length > 0;
  // Whoever told much is asked only what decides.
  const isMuchTold =
    Object.keys(matter.asked.facts).filter((each) => isTold(matter, each)).length > fewTold;
  const begin = isAnswered || isMuchTold ? [] : about;
  // What was asked has an answer, and what is open is another matter: what makes that answer sure.
  const ofAsked = factsOfAsked(matter, asking);
  const surer =
    ofAsked.length > 0 || isMuchTold
      ? []
      : (own?.look ?? []).filter((fact) => about.includes(fact));
  // A danger of which somebody does not know is asked before anything else.
  const dangerous = dangersUnknown(matter).flatMap((each) => unknownFacts(matter, each));
  const [fact] = [
    ...dangerous,
    ...about.filter((fact) => ofAsked.includes(fact)),
    ...about.filter(isOpen),
    ...begin,
    ...surer,
    ...ofAsked,
    ...open,
    ...about,
  ];
  return fact !== undefined && Object.hasOwn(topic.facts, fact) ? fact : undefined;
}

/**
 * Where a verdict stands and yet what was asked has no answer: what decides and nobody told, or what the
 * question is about, the first of it.
 */
export function lackedBy(matter: Matter, asking: string | undefined): string | undefined {
  const level = levelOf(matter);
  if (asking === undefined || level === 'unknown' || level === 'stop') return undefined;
  if (!isAnythingTold(matter) || isYesOrNo(matter, asking)) return undefined;
  if (askedFirst(matter, asking).length > 0) return undefined;
  const { everybody = {}, askings = {}, facts } = matter.topic;
  const deciding = matter.answer.missing.map(({ fact }) => fact);
  const { look = [] } = everybody[asking] ?? {};
  const about = askings[asking]?.impliedBy ?? [];
  return [
    ...factsOfAsked(matter, asking),
    ...look,
    // Yes or no to what the question is about comes before a figure that decides something else.
    ...about.filter((fact) => ['choice', 'yes-no'].includes(facts[fact]?.kind ?? '')),
    ...deciding,
    ...about,
  ].find((fact) => !isTold(matter, fact));
}

/** That what was asked has no answer before a fact is known. */
export function openUntil({ topic }: Matter, fact: string): readonly Sayable[] {
  const asked = topic.facts[fact];
  // A choice is asked for as a question, which is no name.
  if (asked?.kind !== 'quantity' || asked.noun === undefined) return [];
  return [message('open-until', { of: nounOr(asked, fact) })];
}

/** What to find out next, with where it is read. */
export function askedNext({ topic }: Matter, next: string | undefined): readonly Sayable[] {
  const fact = next === undefined ? undefined : topic.facts[next];
  if (!fact) return [];
  return [message('next-asked', { ask: text(fact.ask), where: whereToLook(fact) })];
}

/** Whether a finding is open for want of a fact. */
export const isOpenFor = ({ answer }: Matter, id: string, fact: string | undefined): boolean =>
  answer.missing.some((each) => each.fact === fact && each.decides.includes(`finding.${id}`));
