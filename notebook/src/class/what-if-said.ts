import type { CaseDocument, ListRow } from '@tarebook/casebook';
import { optionSaid } from './choice-said';
import { movableIn } from './movable';

type Lists = Readonly<Record<string, readonly ListRow[]>>;

const listsOf = ({ blocks }: CaseDocument): Lists =>
  Object.fromEntries(
    blocks.flatMap((block) => (block.kind === 'list' ? [[block.fact, block.rows]] : [])),
  );

const cellsOf = ({ cells }: ListRow): string =>
  Object.values(cells)
    .flatMap(({ text }) => (text === '' ? [] : text))
    .join(', ');

const isSame = (a: ListRow, b: ListRow): boolean =>
  a.label === b.label && cellsOf(a) === cellsOf(b);

/**
 * Rows that went and rows that came, and of those that stayed which is which: in their order, the
 * very same before one that only has its name.
 */
function paired(filed: readonly ListRow[], moved: readonly ListRow[]) {
  const gone: ListRow[] = [];
  const stayed: (readonly [from: number, to: number])[] = [];
  let to = 0;
  for (const [from, row] of filed.entries()) {
    const now = moved[to];
    const isHere = now?.label === row.label;
    const later = filed.slice(from + 1).some((each) => now && isSame(each, now));
    if (isHere && now && (isSame(row, now) || !later)) {
      stayed.push([from, to]);
      to += 1;
    } else gone.push(row);
  }
  return { gone, stayed, came: moved.slice(to) };
}

const joined = (parts: readonly string[]): string =>
  parts.length < 3
    ? parts.join(' and ')
    : `${parts.slice(0, -1).join(', ')}, and ${parts.at(-1) ?? ''}`;

/** What was moved of a case, as a question; undefined where nothing was. */
export function whatIfSaid(filed: CaseDocument, moved: CaseDocument): string | undefined {
  const [before, after] = [listsOf(filed), listsOf(moved)];
  const said: string[] = [];
  const values = new Map(movableIn(filed).map(({ key, value }) => [key, value]));
  /** By the key that a row's cell has in the case as filed. */
  const was = new Map<string, string>();
  const lists = [...new Set([...Object.keys(before), ...Object.keys(after)])].map((fact) => {
    const pairs = paired(before[fact] ?? [], after[fact] ?? []);
    for (const [from, to] of pairs.stayed) was.set(`${fact} ${to}`, `${fact} ${from}`);
    return pairs;
  });
  for (const { key, said: name, value, options } of movableIn(moved)) {
    const [, row = key, column = ''] = /^(\S+ \d+)( \S+)$/.exec(key) ?? [];
    const own = column === '' ? key : `${was.get(row)}${column}`;
    if (column !== '' && !was.has(row)) continue;
    if (values.get(own) !== value)
      said.push(`${name} were ${(options.length > 0 ? optionSaid(value) : value) || 'not known'}`);
  }
  for (const { came, gone } of lists) {
    for (const row of came) {
      const cells = cellsOf(row);
      said.push(`${row.label}${cells ? ` (${cells})` : ''} were there too`);
    }
    for (const { label } of gone) said.push(`${label || 'one of them'} were left out`);
  }
  return said.length === 0 ? undefined : `What if ${joined(said)}?`;
}
