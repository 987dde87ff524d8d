import { dangersIn } from '../danger/find';
import { type Urgency, urgencies } from './shapes';

const gravest = (kinds: ReadonlySet<Urgency>): Urgency | null =>
  urgencies.find((kind) => kinds.has(kind)) ?? null;

/** What is urgent about a message, the gravest first; null where nothing seems to be. */
export function urgentIn(text: string): Urgency | null {
  return gravest(new Set(dangersIn(text).map(({ sign }) => sign.kind)));
}

/** The same by words that name a danger outright; what a message is about does not hang on a hunch. */
export function namedIn(text: string): Urgency | null {
  const named = dangersIn(text).filter(({ sign }) => !sign.told && !sign.mention);
  return gravest(new Set(named.map(({ sign }) => sign.kind)));
}
