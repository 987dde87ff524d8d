import {
  formNames,
  InputError,
  nearest,
  type Problem,
  refuseUnlessParts,
  sayProblem,
} from '@tarebook/rules/engine';
import * as z from 'zod/mini';

/**
 * The ledger of a dealer: every answer that was given, with the whole verdict it stood on.
 *
 *     { version: 1, entries: [ { id, day, asking, form, language, text, saved } ] }
 */
export type LedgerEntry = {
  readonly id: string;
  /** The day it was given, `2026-11-28`. */
  readonly day: string;
  readonly asking?: string | null | undefined;
  /** In which form it left: spoken, post, letter … */
  readonly form: string;
  readonly language?: string | undefined;
  /** The very words that left. */
  readonly text: string;
  /** The verdict as `tarebook judge --json` writes it. */
  readonly saved: Readonly<Record<string, unknown>>;
};

export type Ledger = { readonly version: 1; readonly entries: readonly LedgerEntry[] };

/** More than this no dealer has given, and no page could show. */
const mostEntries = 100_000;

function makeShape() {
  // Its faster way builds code from text, which a strict content-security policy forbids.
  z.config({ jitless: true });
  const text = z.string();
  const entry = z.looseObject({
    id: text.check(z.minLength(1)),
    day: text.check(z.regex(/^\d{4}-\d{2}-\d{2}$/)),
    asking: z.optional(z.nullable(text)),
    form: text,
    language: z.optional(text),
    text,
    saved: z.looseObject({ topic: text, outcome: text }),
  });
  return z.object({
    version: z.literal(1),
    entries: z.array(entry).check(z.maxLength(mostEntries)),
  });
}

/** What is wrong with a ledger: the place, and what would be right. */
export class LedgerError extends InputError {
  constructor(problems: readonly Problem[]) {
    super(problems, sayProblem);
    this.name = 'LedgerError';
  }
}

const wanted: Readonly<Record<string, string>> = {
  id: 'a name of its own',
  day: 'a day such as 2026-11-28',
  form: 'the form it left in, such as spoken',
  text: 'the words that left',
  saved: 'a verdict as `tarebook judge CASE --json` writes it',
};

const below = (value: unknown, key: PropertyKey): unknown =>
  typeof value === 'object' && value !== null
    ? Object.getOwnPropertyDescriptor(value, key)?.value
    : undefined;

/** Forms in which an answer leaves; a page has names of its own beside, and those are left alone. */
const forms: readonly string[] = [...formNames, 'in a round'];

/** What one entry cannot tell of itself: a form that is nearly one of ours, an id that another has. */
function entryProblems(entries: readonly LedgerEntry[]): readonly Problem[] {
  const first = new Map<string, number>();
  return entries.flatMap(({ id, form }, at): readonly Problem[] => {
    const problems: Problem[] = [];
    const before = first.get(id);
    if (before === undefined) first.set(id, at);
    else {
      const wanted = `a name of its own is wanted, and entries.${before} has “${id}” already`;
      problems.push({ code: 'not-a-ledger', fact: `entries.${at}.id`, found: id, wanted });
    }
    const near = forms.includes(form) ? undefined : nearest(form, forms);
    if (near !== undefined) {
      const wanted = `“${form}” is no form in which an answer leaves`;
      const place = `entries.${at}.form`;
      problems.push({ code: 'not-a-ledger', fact: place, found: form, wanted, near });
    }
    return problems;
  });
}

/** @throws InputError for what is no ledger */
export const refuseNoLedger = (place: string, given: unknown): void =>
  refuseUnlessParts(place, given, { entries: 'list' }, 'a ledger, as `readLedger` gives it');

/** @throws LedgerError naming the first place that is not right. */
export function readLedger(value: unknown): Ledger {
  const read = makeShape().safeParse(value);
  if (read.success) {
    const problems = entryProblems(read.data.entries);
    if (problems.length > 0) throw new LedgerError(problems);
    return read.data;
  }
  const path = read.error.issues[0]?.path ?? [];
  const place = path.length === 0 ? 'the whole' : path.map(String).join('.');
  const last = path.map(String).findLast((key) => Object.hasOwn(wanted, key));
  const right =
    last === undefined
      ? 'a ledger has version 1 and a list of entries'
      : `${wanted[last]} is wanted`;
  const found = path.reduce<unknown>(below, value);
  throw new LedgerError([
    { code: 'not-a-ledger', fact: place, found: JSON.stringify(found) ?? '', wanted: right },
  ]);
}

const sameEntry = (a: LedgerEntry, b: LedgerEntry): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/**
 * Two colleagues' ledgers in one, by day and id. The same answer stands once; where both have
 * different words under one id, both stay, the second under an id of its own.
 */
export function mergeLedgers(mine: Ledger, theirs: Ledger): Ledger {
  refuseNoLedger('mine', mine);
  refuseNoLedger('theirs', theirs);
  const byId = new Map(mine.entries.map((entry) => [entry.id, entry]));
  for (const entry of theirs.entries) {
    const here = byId.get(entry.id);
    if (here && sameEntry(here, entry)) continue;
    let id = entry.id;
    for (let n = 2; byId.has(id) && !sameEntry({ ...entry, id }, byId.get(id) ?? entry); n += 1) {
      id = `${entry.id}-${n}`;
    }
    byId.set(id, { ...entry, id });
  }
  const entries = [...byId.values()].toSorted(
    (a, b) => a.day.localeCompare(b.day) || a.id.localeCompare(b.id),
  );
  return { version: 1, entries };
}
