import { nearest } from '@tarebook/rules/engine';
import { wordsOf } from './columns';

/** A column that is looked for, and what people call it. */
type Sought = { readonly column: string; readonly called: readonly string[] };

const joined = (items: readonly string[], last: string): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

const quoted = (heads: readonly string[]): readonly string[] =>
  heads.map((head) => `“${head.slice(0, 40)}”`);

/** So many columns are named; the rest is counted. */
const mostNamed = 10;

function found(heads: readonly string[]): string {
  const told = heads.filter((head) => head !== '');
  const more = told.length - mostNamed;
  const named = quoted(told.slice(0, mostNamed));
  if (more > 0) return `the columns ${named.join(', ')} and ${more} more`;
  return told.length === 1
    ? `the one column ${named.join('')}`
    : `the columns ${joined(named, 'and')}`;
}

/** Of the heads that nobody knows the one that is written nearly so, or has the very word in it. */
function nearTo({ column, called }: Sought, heads: readonly string[]): string | undefined {
  const names = [column, ...called].map(wordsOf);
  const within = heads.find((head) =>
    wordsOf(head)
      .split(' ')
      .some((word) => names.includes(word)),
  );
  // In so short a word nearly every letter may be another one.
  const long = names.filter((name) => name.length > 3);
  return within ?? heads.find((head) => nearest(wordsOf(head), long) !== undefined);
}

/**
 * Why nothing of a table can be taken, with what helps: the columns it has, those it needs, and
 * which may be meant.
 *
 * @param lacking the needed columns that are not there
 * @param free the heads that nobody knows
 */
export function lackingSaid(
  heads: readonly string[],
  needed: readonly string[],
  lacking: readonly Sought[],
  free: readonly string[],
): string {
  const missing = lacking.map(({ column }) => `the ${column}`);
  const near = lacking.flatMap((each) => {
    const head = nearTo(each, free);
    return head === undefined ? [] : [`${quoted([head]).join('')} may be the ${each.column}.`];
  });
  return [
    `no column is ${joined(missing, 'or')}.`,
    `It has ${found(heads)}; it needs ${joined(
      needed.map((each) => `${/^[aeiou]/.test(each) ? 'an' : 'a'} ${each}`),
      'and',
    )}.`,
    ...near,
    'Say which column is which (columns.csv keeps that), or call it so in the file.',
  ].join(' ');
}
