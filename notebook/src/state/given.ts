import type { Ledger, LedgerEntry } from '@tarebook/record';
import { checksum } from './checksum';
import { hasFields } from './shelf';

/** An answer that left: to which question, when, by whom, in which form, and the verdict it stood on. */
export type Given = {
  readonly kind: 'answer';
  readonly id: string;
  /** The day, `2026-11-28`. */
  readonly day: string;
  readonly by: string;
  readonly channel: string;
  /** The question without anything personal. */
  readonly question: string;
  readonly form: string;
  /** The very words that left. */
  readonly text: string;
  /** As `judge --json` writes it: facts, rules and their version. */
  readonly saved: Readonly<Record<string, unknown>>;
  /** Which catalogue counted when it left; records of before have none. */
  readonly catalogue?: string;
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether a stored record is an answer that left, whole. */
export function isGiven(value: unknown): value is Given {
  return (
    hasFields(value, {
      ...{ kind: 'string', id: 'string', day: 'string', by: 'string', channel: 'string' },
      ...{ question: 'string', form: 'string', text: 'string', saved: 'object' },
    }) &&
    Object.getOwnPropertyDescriptor(value, 'kind')?.value === 'answer' &&
    ['undefined', 'string'].includes(
      typeof Object.getOwnPropertyDescriptor(value, 'catalogue')?.value,
    )
  );
}

const bytes = new TextEncoder();

/** An id of its own: two colleagues never give the same answer at the same moment in the same words. */
export function given(answer: Omit<Given, 'kind' | 'id'>, now: number): Given {
  const sum = checksum(bytes.encode(JSON.stringify([answer.by, answer.question, answer.text])));
  return { ...answer, kind: 'answer', id: `${now.toString(36)}-${sum.toString(36)}` };
}

/** As a file that the command line and a colleague read. */
export const ledgerOf = (all: readonly Given[]): Ledger => ({
  version: 1,
  entries: all.map(({ kind: _, ...entry }) => ({ ...entry, asking: null, language: 'en' })),
});

const told = (entry: LedgerEntry, key: string): string => {
  const value: unknown = Object.getOwnPropertyDescriptor(entry, key)?.value;
  return typeof value === 'string' ? value : '';
};

/** An answer from a ledger; one that was not written here has nobody's name and no question. */
export const givenOf = (entry: LedgerEntry): Given => ({
  ...{ kind: 'answer', id: entry.id, day: entry.day, form: entry.form, text: entry.text },
  ...{ by: told(entry, 'by'), channel: told(entry, 'channel'), question: told(entry, 'question') },
  saved: isRecord(entry.saved) ? entry.saved : {},
  ...(told(entry, 'catalogue') !== '' && { catalogue: told(entry, 'catalogue') }),
});
