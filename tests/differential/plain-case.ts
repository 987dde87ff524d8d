import { at, type Ends, zeroUp } from './ends';

/** A case in canonical units: numbers, ranges, words, or 'unknown'; what is absent is silent. */
export type PlainFact = number | Ends | string;
export type PlainRow = { weight: PlainFact; ahead?: PlainFact };
export type PlainCase = Record<string, PlainFact | PlainRow[]>;

export type State = 'ok' | 'care' | 'if' | 'stop' | 'unknown' | 'not-asked';

export type PlainAnswer = {
  outcome: 'fits' | 'fits-with-care' | 'does-not-fit' | 'cannot-say';
  binding: string | null;
  limits: Record<string, { state: State; used: Ends; limit: Ends }>;
  findings: Record<string, State>;
  values: Record<string, Ends>;
  largestTrailer: Ends | null;
};

/** May it be yes, may it be no. */
export type Maybe = { yes: boolean; no: boolean };

export const surely = (yes: boolean): Maybe => ({ yes, no: !yes });
export const andBoth = (a: Maybe, b: Maybe): Maybe => ({ yes: a.yes && b.yes, no: a.no || b.no });
export const orEither = (a: Maybe, b: Maybe): Maybe => ({
  yes: a.yes || b.yes,
  no: a.no && b.no,
});
export const not = (a: Maybe): Maybe => ({ yes: a.no, no: a.yes });

/** Reads facts of one case the way the trade speaks of them. */
export function reader(c: PlainCase) {
  const raw = (id: string): PlainFact | PlainRow[] | undefined => c[id];
  const isKnownValue = (value: PlainFact | undefined): value is number | Ends =>
    typeof value === 'number' || (typeof value === 'object' && value !== null);
  const ends = (value: number | Ends): Ends => (typeof value === 'number' ? at(value) : value);
  const given = (id: string): boolean => raw(id) !== undefined;
  const known = (id: string): boolean => given(id) && raw(id) !== 'unknown';
  /** Known, or not a question at all. */
  const orSilent = (id: string): boolean => !given(id) || known(id);
  const number = (id: string, silent: Ends = zeroUp): Ends => {
    const value = raw(id);
    if (value === undefined) return silent;
    return !Array.isArray(value) && isKnownValue(value) ? ends(value) : zeroUp;
  };
  const rows = (id: string): PlainRow[] => {
    const value = raw(id);
    return Array.isArray(value) ? value : [];
  };
  const cell = (value: PlainFact | undefined): Ends => (isKnownValue(value) ? ends(value) : zeroUp);
  const isPlaced = (row: PlainRow): boolean => isKnownValue(row.ahead);
  /** A yes/no: silent or unknown may be either. */
  const maybe = (id: string): Maybe => {
    const value = raw(id);
    return value === 'yes'
      ? surely(true)
      : value === 'no'
        ? surely(false)
        : { yes: true, no: true };
  };
  const word = (id: string): string | undefined => {
    const value = raw(id);
    return typeof value === 'string' ? value : undefined;
  };
  return { given, known, orSilent, number, rows, cell, isPlaced, maybe, word };
}
