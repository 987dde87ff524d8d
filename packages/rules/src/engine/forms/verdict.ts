import { gravestFirst } from '../answer/levels';
import { openingOf, urgentOf } from '../answer/sentence';
import type { FindingAnswer } from '../answer/shapes';
import { type Level, levels } from '../define/shapes';
import { message } from '../words/message';
import { nounOr, type Sayable, text } from '../words/value';
import type { Matter } from './matter';

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
    const edge = first.side === 'above' ? at.hi : at.lo;
    const stop = text(topic.outcomes.stop.sentence);
    const end = { ...at, lo: edge, hi: edge };
    return [message('hangs-and-tips', { of, at: end, above: first.side === 'above', stop })];
  }
  const more = second ? [nounOr(topic.facts[second.fact], second.fact)] : [];
  return [message('it-hangs-on', { of: [of, ...more] })];
}

/** How it stands in a sentence; where it cannot be told, what it hangs on. */
export function verdictSaid(matter: Matter): readonly Sayable[] {
  const level = levelOf(matter);
  if (level === 'unknown') return hinge(matter);
  return [openingOf(matter.topic, level, matter.answer.findings)];
}

/** The findings that are said beside the limits, the gravest first, without what is urgent. */
export function findingsTold(matter: Matter): readonly FindingAnswer[] {
  const urgent = urgentOf(matter.topic, matter.answer.findings);
  return gravestFirst(matter.answer.findings).filter(({ id }) => id !== urgent?.id);
}
