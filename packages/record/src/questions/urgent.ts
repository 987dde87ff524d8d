import { dangersIn } from '../danger/find';
import { type Urgency, urgencies } from './shapes';

/** What is urgent about a message, the gravest first; null where nothing seems to be. */
export function urgentIn(text: string): Urgency | null {
  const found = new Set(dangersIn(text).map(({ sign }) => sign.kind));
  return urgencies.find((kind) => found.has(kind)) ?? null;
}
