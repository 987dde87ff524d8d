import { dangersIn } from '../danger/find';
import { heardIn } from '../learned/hunch';
import type { Urgency } from './shapes';

/** What is urgent about a message, the gravest first; null where nothing seems to be. */
export const urgentIn = (text: string): Urgency | null => heardIn(text).kind;

/** The same by words that name a danger outright; what a message is about does not hang on a hunch. */
export function namedIn(text: string): Urgency | null {
  const { kind } = heardIn(text);
  const isNamed = dangersIn(text).some(({ sign }) => !sign.told && !sign.mention);
  return isNamed ? kind : null;
}
