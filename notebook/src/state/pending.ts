import { hasFields } from './shelf';

/**
 * What is on its way into the stores. Writing there takes a moment that a closing tab does not
 * have; this is written at once, and taken in when the page is next opened.
 */
export type Pending = {
  readonly topic: string;
  readonly name: string;
  readonly text: string;
  readonly at: number;
  /** The text that this one was made from; null: none was kept. */
  readonly base: string | null;
};

const prefix = 'tarebook-pending/';

function isPending(value: unknown): value is Pending {
  if (!hasFields(value, { topic: 'string', name: 'string', text: 'string', at: 'number' })) {
    return false;
  }
  const base: unknown = Object.getOwnPropertyDescriptor(value, 'base')?.value;
  return base === null || typeof base === 'string';
}

/** Notes it at once. A device that refuses loses nothing that it would have kept otherwise. */
export function notePending(pending: Pending): void {
  try {
    localStorage.setItem(`${prefix}${pending.topic}/${pending.name}`, JSON.stringify(pending));
  } catch {
    // Kept by the stores alone, then.
  }
}

export function dropPending(topic: string, name: string): void {
  try {
    localStorage.removeItem(`${prefix}${topic}/${name}`);
  } catch {
    // It was never noted.
  }
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return undefined;
  }
}

/** All that never reached the stores. */
export function allPending(): readonly Pending[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .map((key) => parsed(localStorage.getItem(key)))
      .filter(isPending);
  } catch {
    return [];
  }
}
