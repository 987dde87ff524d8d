/**
 * A fact as given: text as a person writes it ("5,000 lb", "4,950–5,050 lb", "560 ± 20 lb",
 * "unknown", "yes"), or its ends with a unit; a list as rows of such cells by column id.
 */
export type CellGiven =
  | string
  | { readonly lo: number; readonly hi: number; readonly unit: string };
export type RowGiven = Readonly<Record<string, CellGiven>>;
export type FactGiven = CellGiven | readonly RowGiven[];
export type FactsGiven = Readonly<Record<string, FactGiven>>;

const isNumber = (value: unknown): value is number => Number.isFinite(value);

export function isCell(given: unknown): given is CellGiven {
  if (typeof given === 'string') return true;
  if (typeof given !== 'object' || given === null) return false;
  if (!('lo' in given && 'hi' in given && 'unit' in given)) return false;
  return isNumber(given.lo) && isNumber(given.hi) && typeof given.unit === 'string';
}

/** An object that is nothing but its entries, wherever it was made. */
function isPlain(value: unknown): value is object {
  if (typeof value !== 'object' || value === null) return false;
  const above: unknown = Object.getPrototypeOf(value);
  return above === null || Object.getPrototypeOf(above) === null;
}

const isRow = (given: unknown): given is RowGiven =>
  isPlain(given) && Object.values(given).every(isCell);

export const isRows = (given: unknown): given is readonly RowGiven[] =>
  Array.isArray(given) && given.every(isRow);
