import { hasFields } from '../state/shelf';

/** What somebody changed of what was read in the line. */
export type Corrected = {
  /** Marks that were taken away; see `markKey`. */
  readonly dropped: readonly string[];
  /** Values written by hand, over what was read or beside it, by fact. */
  readonly values: Readonly<Record<string, string>>;
  /** Which fact a number is that nobody had said, by mark; '' for none. */
  readonly chosen: Readonly<Record<string, string>>;
  /** How many of a kind ride along. */
  readonly counts: Readonly<Record<string, number>>;
};

/** A line that is being worked on, with what was changed of it. */
export type Draft = Corrected & {
  readonly text: string;
  /** The topic that was chosen by hand; '' where the reader says. */
  readonly topic: string;
};

export const noDraft: Draft = {
  ...{ text: '', topic: '' },
  ...{ dropped: [], values: {}, chosen: {}, counts: {} },
};

const place = 'tarebook.line';

const recordOf = <T extends string | number>(
  value: unknown,
  isIt: (each: unknown) => each is T,
): Readonly<Record<string, T>> =>
  typeof value === 'object' && value !== null
    ? Object.fromEntries(
        Object.entries(value).filter((entry): entry is [string, T] => isIt(entry[1])),
      )
    : {};

const isText = (value: unknown): value is string => typeof value === 'string';
const isCount = (value: unknown): value is number => Number.isInteger(value);

/** The line as it was left on this device; what cannot be read of it is as if it were not there. */
export function keptDraft(): Draft {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(place) ?? 'null');
    if (!hasFields(value, { text: 'string', topic: 'string' })) return noDraft;
    const told = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
    const dropped = told('dropped');
    return {
      ...{ text: String(told('text')), topic: String(told('topic')) },
      dropped: Array.isArray(dropped) ? dropped.filter(isText) : [],
      values: recordOf(told('values'), isText),
      chosen: recordOf(told('chosen'), isText),
      counts: recordOf(told('counts'), isCount),
    };
  } catch {
    return noDraft;
  }
}

export function keepDraft(draft: Draft): void {
  try {
    if (draft === noDraft) localStorage.removeItem(place);
    else localStorage.setItem(place, JSON.stringify(draft));
  } catch {
    // It is worked on in this window alone.
  }
}
