import { dangersIn } from '../danger/find';
import { meantOf } from '../danger/meant';
import { heardIn } from '../learned/hunch';
import { refuseNoText } from './doors';
import type { Urgency } from './shapes';

/** What is urgent about a message, the gravest first; null where nothing seems to be. */
export function urgentIn(text: string): Urgency | null {
  refuseNoText(text);
  return heardIn(text).kind;
}

const mostWhy = 3;

/**
 * The words of a text for which it was taken to be urgent, at most three stretches of them: those that
 * name this kind of danger, else any other, else the ones that people use who are in one.
 */
export function whyUrgent(text: string): readonly string[] {
  const { kind, because } = heardIn(text);
  if (kind === null) return [];
  const signs = dangersIn(meantOf(text));
  const own = signs.filter(({ sign }) => sign.kind === kind);
  const named = (own.length > 0 ? own : signs).map((each) => each.because.join(' … '));
  const said = named.length > 0 ? named : because.filter((each) => each !== '');
  return [...new Set(said)].slice(0, mostWhy);
}

/** The same by words that name a danger outright; what a message is about does not hang on a hunch. */
export function namedIn(text: string): Urgency | null {
  const { kind } = heardIn(text);
  const isNamed = dangersIn(meantOf(text)).some(({ sign }) => !sign.told && !sign.mention);
  return isNamed ? kind : null;
}
