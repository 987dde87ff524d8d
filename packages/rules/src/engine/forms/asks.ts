import type { Fact } from '../define/shapes';
import { message } from '../words/message';
import { type Sayable, text } from '../words/value';
import { isTold, type Matter } from './matter';
import { levelOf } from './verdict';
import { whereToLook } from './where';

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
  return [...deciding, ...begin].flatMap((fact) => topic.facts[fact] ?? []);
}

/** What to ask first, with where it is read. */
export function nextAsked(matter: Matter, asking: string | undefined): readonly Sayable[] {
  const [fact] = asksOf(matter, asking);
  if (!fact) return [];
  return [message('asks-where', { ask: text(fact.ask), where: whereToLook(fact) })];
}
