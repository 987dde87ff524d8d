import type { Place } from './shapes';

/**
 * What a document may have, counted before any parser sees it. The parsers' work grows with the
 * square of some of these, so that a page of text could keep a processor busy for minutes; a case
 * that somebody wrote comes to a tenth of each.
 */
export const budget = {
  characters: 60_000,
  lines: 1_200,
  lineCharacters: 10_000,
  tableRows: 400,
  bars: 3_000,
  nesting: 12,
  markers: 400,
  indent: 60,
  directives: 40,
  brackets: 800,
  emphases: 800,
  ticks: 2_000,
  angles: 300,
  addresses: 300,
  colons: 1_000,
  frontLines: 150,
  frontOpenings: 150,
} as const;

export type Budgeted = keyof typeof budget;

/** What is counted, as a person would call it. */
export const budgeted: Readonly<Record<Budgeted, string>> = {
  characters: 'characters',
  lines: 'lines',
  lineCharacters: 'characters in one line',
  tableRows: 'rows of tables',
  bars: 'bars of tables',
  nesting: 'quotations and lists inside one another',
  markers: 'lines of quotations and lists',
  indent: 'blanks before a line',
  directives: 'lines of `:::`',
  brackets: 'brackets and braces',
  emphases: 'stars, underscores and tildes',
  ticks: 'backticks',
  angles: 'signs of `<`',
  addresses: 'addresses',
  colons: 'colons',
  frontLines: 'lines of front matter',
  frontOpenings: 'keys, lists and braces in its front matter',
};

/** The first thing a document has too many of, where that became so, and how many it may have. */
export type Excess = { readonly of: Budgeted; readonly most: number; readonly place: Place };

type Counter = { readonly of: Budgeted; readonly each: RegExp };

/** Each is a set of characters or a short word, so that counting takes one walk over the text. */
const counters: readonly Counter[] = [
  { of: 'bars', each: /\|/g },
  { of: 'brackets', each: /[[\]{}]/g },
  { of: 'emphases', each: /[*_~]/g },
  { of: 'ticks', each: /`/g },
  { of: 'angles', each: /</g },
  { of: 'addresses', each: /@|www\.|https?:/gi },
  { of: 'colons', each: /:/g },
];

/** How many quotations and lists a line begins with, each inside the one before. */
function nestingOf(line: string): number {
  const marker = /[ \t]*(?:>|[*+-](?=[ \t]|$)|\d{1,9}[.)](?=[ \t]|$))/y;
  let depth = 0;
  while (marker.test(line)) depth += 1;
  return depth;
}

const indentOf = (line: string): number => /^[ \t>]*/.exec(line)?.[0].length ?? 0;

/** What this document has more of than it may; undefined where it may be read. */
export function excessOf(text: string): Excess | undefined {
  const excess = (of: Budgeted, place: Place): Excess => ({ of, most: budget[of], place });
  if (text.length > budget.characters) {
    return excess('characters', { line: 1, column: 1, offset: 0 });
  }
  const counts = new Map<Budgeted, number>();
  const over = (of: Budgeted, more = 1): boolean => {
    const count = (counts.get(of) ?? 0) + more;
    counts.set(of, count);
    return count > budget[of];
  };
  let offset = 0;
  let inFront = false;
  for (const [index, line] of text.split(/\r\n|\n|\r/).entries()) {
    const at = (column: number): Place => ({
      line: index + 1,
      column,
      offset: offset + column - 1,
    });
    if (over('lines')) return excess('lines', at(1));
    if (line.length > budget.lineCharacters) {
      return excess('lineCharacters', at(budget.lineCharacters + 1));
    }
    if (/^---[ \t]*$/.test(line) && (index === 0 || inFront)) inFront = index === 0;
    else if (inFront) {
      if (over('frontLines')) return excess('frontLines', at(1));
      const openings = line.match(/[[{&*]|(?:^|[ \t])-(?=[ \t])|:(?=[ \t]|$)/g)?.length ?? 0;
      if (over('frontOpenings', openings)) return excess('frontOpenings', at(1));
    }
    const markers = nestingOf(line);
    if (markers > budget.nesting) return excess('nesting', at(1));
    if (over('markers', markers)) return excess('markers', at(1));
    if (indentOf(line) > budget.indent && line.trim() !== '') return excess('indent', at(1));
    if (/^[ \t>*+-]*:::/.test(line) && over('directives')) return excess('directives', at(1));
    if (line.includes('|') && over('tableRows')) return excess('tableRows', at(1));
    for (const { of, each } of counters) {
      const more = line.match(each)?.length ?? 0;
      if (more > 0 && over(of, more)) return excess(of, at(1));
    }
    offset += line.length + (text.startsWith('\r\n', offset + line.length) ? 2 : 1);
  }
  return undefined;
}
