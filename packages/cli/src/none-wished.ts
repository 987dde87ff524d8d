import { type Entry, isAsWished, numberIn, type Wish } from '@tarebook/sweep';

/** So many values of a column are told; the rest is counted. */
const mostValues = 12;

const listed = (all: readonly string[]): string =>
  all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;

/** What stands in a column: its words, or from where to where its numbers go. */
function valuesSaid(entries: readonly Entry[], column: string): string {
  const cells = entries.flatMap(({ cells: { [column]: cell = '' } }) => cell || []);
  const values = [...new Set(cells)].toSorted();
  if (values.length === 0) return `nobody filled in the column ${column}`;
  const isNumber = values.every((value) => /^[$\d]/.test(value));
  const numbers = isNumber ? values.map(numberIn) : [];
  const known = numbers.filter((each) => each !== undefined);
  if (known.length === values.length && known.length > 2) {
    return `the column ${column} goes from ${Math.min(...known)} to ${Math.max(...known)}`;
  }
  const more = values.length - mostValues;
  const told = more > 0 ? [...values.slice(0, mostValues), `${more} more`] : values;
  return `the column ${column} has ${listed(told)}`;
}

const written = ({ column, is, value }: Wish): string => `${column}${is}${value}`;

/** Why nothing of a catalogue is as wished, in one sentence: which wish none meets, and what its column has. */
export function noneWished(
  kind: 'trailer' | 'vehicle',
  entries: readonly Entry[],
  wishes: readonly Wish[],
): string {
  const head = `The catalogue has no such ${kind}`;
  const unmet = wishes.filter((wish) => !entries.some((entry) => isAsWished(entry, [wish])));
  if (unmet.length === 0) {
    return `${head}: some have ${listed(wishes.map(written))} each for itself, but none has all of it.`;
  }
  const each = unmet.map(
    (wish) => `none has ${written(wish)}; ${valuesSaid(entries, wish.column)}`,
  );
  return `${head}: ${each.join('; ')}.`;
}
