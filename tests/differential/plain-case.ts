import { at, type Ends, zeroUp } from './ends';

/** A case in canonical units: numbers, ranges, words, or 'unknown'; what is absent is silent. */
export type PlainFact = number | Ends | string;
export type PlainRow = { weight: PlainFact; ahead?: PlainFact };
export type PlainCase = Record<string, PlainFact | PlainRow[]>;

export type State = 'ok' | 'care' | 'if' | 'stop' | 'unknown' | 'not-asked';

export type PlainAnswer = {
  outcome: 'fits' | 'fits-with-care' | 'fits-if' | 'does-not-fit' | 'cannot-say';
  binding: string | null;
  limits: Record<string, { state: State; used: Ends; limit: Ends }>;
  findings: Record<string, State>;
  values: Record<string, Ends>;
  largestTrailer: Ends | null;
};

/** May it be yes, may it be no. */
export type Maybe = { yes: boolean; no: boolean };

export const surely = (yes: boolean): Maybe => ({ yes, no: !yes });
export const never = surely(false);
export const perhaps: Maybe = { yes: true, no: true };
export const andBoth = (a: Maybe, b: Maybe): Maybe => ({ yes: a.yes && b.yes, no: a.no || b.no });
export const orEither = (a: Maybe, b: Maybe): Maybe => ({
  yes: a.yes || b.yes,
  no: a.no && b.no,
});

/** Reads facts of one case the way the trade speaks of them. */
export function reader(c: PlainCase) {
  const raw = (id: string): PlainFact | PlainRow[] | undefined => c[id];
  const isNumber = (value: PlainFact | PlainRow[] | undefined): value is number | Ends =>
    typeof value === 'number' ||
    (typeof value === 'object' && value !== null && !Array.isArray(value));
  const ends = (value: number | Ends): Ends => (typeof value === 'number' ? at(value) : value);
  /** Mentioned, if only as unknown. */
  const given = (id: string): boolean => raw(id) !== undefined;
  /** Mentioned, and not unknown. */
  const known = (id: string): boolean => given(id) && raw(id) !== 'unknown';
  /** A number; unknown, or silent without anything that stands in: from zero up. */
  const number = (id: string, silent: Ends = zeroUp): Ends => {
    const value = raw(id);
    if (value === undefined) return silent;
    return isNumber(value) ? ends(value) : zeroUp;
  };
  const rows = (id: string): PlainRow[] => {
    const value = raw(id);
    return Array.isArray(value) ? value : [];
  };
  const cell = (value: PlainFact | undefined): Ends => (isNumber(value) ? ends(value) : zeroUp);
  const place = ({ ahead }: PlainRow): Ends | undefined =>
    isNumber(ahead) ? ends(ahead) : undefined;
  const word = (id: string): string | undefined => {
    const value = raw(id);
    return typeof value === 'string' ? value : undefined;
  };
  /** What a choice may be: unknown may be any of its options. */
  const options = <T extends string>(id: string, all: readonly T[], silent: T): readonly T[] => {
    const told = word(id);
    if (told === undefined) return [silent];
    return told === 'unknown' ? all : all.filter((each) => each === told);
  };
  return { raw, given, known, number, rows, cell, place, word, options };
}

export type Reader = ReturnType<typeof reader>;
