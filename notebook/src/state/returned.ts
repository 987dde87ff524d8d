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

const isUnknown = (value: Returned[string] | undefined): boolean =>
  typeof value === 'string' && value.trim().toLowerCase() === 'unknown';

/**
 * What one that came back says beside what was known; the same again says nothing. That nobody knows
 * takes back what the question itself told: it stood in the link, and somebody took it out. What came
 * back before stands against it, since a link that was never filled in says the very same.
 *
 * @param own what the question itself tells
 */
export function changedIn(known: Returned, told: Returned, own: Returned = known): Returned {
  const isNew = (fact: string, value: Returned[string]): boolean => {
    const before = Object.hasOwn(known, fact) ? known[fact] : undefined;
    if (isUnknown(value)) return Object.hasOwn(own, fact) && !isUnknown(before);
    return JSON.stringify(before) !== JSON.stringify(value);
  };
  return Object.fromEntries(Object.entries(told).filter(([fact, value]) => isNew(fact, value)));
}

/** What came back before and stands, though this one says that it is not known. */
export const standsAgainst = (known: Returned, told: Returned, own: Returned): readonly string[] =>
  Object.keys(told).filter(
    (fact) =>
      isUnknown(told[fact]) &&
      !Object.hasOwn(own, fact) &&
      Object.hasOwn(known, fact) &&
      !isUnknown(known[fact]),
  );
