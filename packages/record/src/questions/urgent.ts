import { dangersIn } from '../danger/find';
import { heardIn } from '../learned/hunch';
import { refuseNoText } from './doors';
import type { Urgency } from './shapes';

/** What is urgent about a message, the gravest first; null where nothing seems to be. */
export function urgentIn(text: string): Urgency | null {
  refuseNoText(text);
  return heardIn(text).kind;
}

/** The same by words that name a danger outright; what a message is about does not hang on a hunch. */
export function namedIn(text: string): Urgency | null {
  const { kind } = heardIn(text);
  const isNamed = dangersIn(text).some(({ sign }) => !sign.told && !sign.mention);
  return isNamed ? kind : null;
}
