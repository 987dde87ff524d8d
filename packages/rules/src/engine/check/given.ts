/**
 * A fact as given: text as a person writes it ("5,000 lb", "4,950–5,050 lb", "560 ± 20 lb",
 * "about 500 lb", "unknown", "yes"), a number with its unit, or its ends with a unit, where an end
 * that is open is null; a count also as a bare number; a list as rows of such cells by column id.
 */
export type CellGiven =
  | string
  | number
  | { readonly value: number; readonly unit: string }
  | { readonly lo: number | null; readonly hi: number | null; readonly unit: string };
export type RowGiven = Readonly<Record<string, CellGiven>>;
export type FactGiven = CellGiven | readonly RowGiven[];
export type FactsGiven = Readonly<Record<string, FactGiven>>;

const isNumber = (value: unknown): value is number => Number.isFinite(value);
const isEnd = (value: unknown): value is number | null => value === null || isNumber(value);

export function isCell(given: unknown): given is CellGiven {
  if (typeof given === 'string' || isNumber(given)) return true;
  if (typeof given !== 'object' || given === null) return false;
  if (!('unit' in given) || typeof given.unit !== 'string') return false;
  // With anything more it would be taken for more exact than it was told.
  const { length } = Object.keys(given);
  if ('value' in given) return isNumber(given.value) && length === 2;
  return 'lo' in given && 'hi' in given && isEnd(given.lo) && isEnd(given.hi) && length === 3;
}

/** An object that is nothing but its entries, wherever it was made. */
export function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) return false;
  const above: unknown = Object.getPrototypeOf(value);
  return above === null || Object.getPrototypeOf(above) === null;
}

const isRow = (given: unknown): given is RowGiven =>
  isPlain(given) && Object.values(given).every(isCell);

export const isRows = (given: unknown): given is readonly RowGiven[] =>
  Array.isArray(given) && given.every(isRow);

/** As text, for what shows a fact as it was given. */
export function asWritten(given: CellGiven): string {
  if (typeof given === 'string') return given;
  if (typeof given === 'number') return `${given}`;
  const unit = given.unit === '' || given.unit === '1' ? '' : ` ${given.unit}`;
  if ('value' in given) return `${given.value}${unit}`;
  const { lo, hi } = given;
  if (lo === null) return hi === null ? 'unknown' : `at most ${hi}${unit}`;
  if (hi === null) return `at least ${lo}${unit}`;
  return lo === hi ? `${lo}${unit}` : `${lo}–${hi}${unit}`;
}

/** Something that is no fact, as a message quotes it. */
export function described(given: unknown): string {
  if (typeof given === 'string') return given.trim().slice(0, 60);
  if (!isPlain(given)) return Array.isArray(given) ? 'a list' : String(given).slice(0, 60);
  const told = Object.entries(given).map(([key, value]) => {
    if (typeof value === 'string') return `${key}: '${value.slice(0, 20)}'`;
    return `${key}: ${typeof value === 'object' && value !== null ? '…' : String(value)}`;
  });
  return told.length === 0 ? '{}' : `{ ${told.join(', ')} }`.slice(0, 90);
}
