import type { Entry } from './catalogue';

/** What a cell of an entry must be: the same word, or a number on one side of another. */
export type Wish = {
  readonly column: string;
  readonly is: '=' | '<=' | '>=';
  readonly value: string;
};

const written = /^\s*([^<>=]+?)\s*(<=|>=|=)\s*(.*?)\s*$/u;

/** `axles=2`, `length<=24`; undefined for what is none. */
export function readWish(text: string): Wish | undefined {
  const [, column, is, value] = written.exec(text) ?? [];
  if (column === undefined || value === undefined) return undefined;
  return is === '=' || is === '<=' || is === '>=' ? { column, is, value } : undefined;
}

/** The number a cell begins with, `24 ft` or `$18,900`; undefined where it has none. */
export function numberIn(cell: string): number | undefined {
  const [found] = /-?\d[\d,]*(?:\.\d+)?/.exec(cell) ?? [];
  return found === undefined ? undefined : Number(found.replaceAll(',', ''));
}

function isSo({ cells }: Entry, { column, is, value }: Wish): boolean {
  const cell = cells[column] ?? '';
  if (is === '=') return cell.toLowerCase() === value.toLowerCase();
  const [has, wanted] = [numberIn(cell), numberIn(value)];
  // Nobody says how long it is: that is not short enough.
  if (has === undefined || wanted === undefined) return false;
  return is === '<=' ? has <= wanted : has >= wanted;
}

/** Whether the catalogue says that it is sold. */
export const isSold = ({ cells }: Pick<Entry, 'cells'>): boolean =>
  /^sold\b/i.test((cells.lot ?? '').trim());

/** Its name, and that it is sold where it is. */
export const nameSaid = (name: string, entry: Pick<Entry, 'cells'>): string =>
  isSold(entry) ? `${name} (sold)` : name;

/** Whether an entry is as wished in everything; a cell nobody filled in is not as wished. */
export const isAsWished = (entry: Entry, wishes: readonly Wish[]): boolean =>
  wishes.every((wish) => isSo(entry, wish));
