type Row = Readonly<Record<string, string>>;
/** Facts as a case writes them, a list as its rows; whoever was asked filled them in. */
export type Returned = Readonly<Record<string, string | readonly Row[]>>;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isRow = (value: unknown): value is Row =>
  isRecord(value) && Object.values(value).every((each) => typeof each === 'string');
const areFacts = (value: unknown): value is Returned =>
  isRecord(value) &&
  Object.values(value).every(
    (each) => typeof each === 'string' || (Array.isArray(each) && each.every(isRow)),
  );

/** Whether what a record holds came back whole, question by question. */
export const isReturned = (value: unknown): value is Readonly<Record<string, Returned>> =>
  isRecord(value) && Object.values(value).every(areFacts);

/** What one that came back says beside what was known; the same again says nothing. */
export function changedIn(known: Returned, told: Returned): Returned {
  const isKnown = (fact: string, value: Returned[string]): boolean =>
    Object.hasOwn(known, fact) && JSON.stringify(known[fact]) === JSON.stringify(value);
  return Object.fromEntries(
    Object.entries(told).filter(([fact, value]) => value !== 'unknown' && !isKnown(fact, value)),
  );
}
