import type { Decision } from '../define/shapes';
import { type AmongValue, joinOn, nothing, type Value } from '../value/values';

/** More combinations of open inputs than this are not looked through one by one. */
const mostTried = 4096;

/** The options an input may be; a yes/no formula is one of two. */
function optionsOf(value: Value): readonly string[] {
  if (value.kind === 'among') return value.options;
  if (value.kind === 'number') throw new Error('A word was wanted here.');
  return [...(value.yes ? ['yes'] : []), ...(value.no ? ['no'] : [])];
}

type Row = Decision['rows'][number];

const accepts = (entry: Row['when'][number] | undefined, option: string): boolean =>
  typeof entry === 'string' ? entry === '-' || entry === option : (entry?.includes(option) ?? true);

const fits = (row: Row, options: readonly string[]): boolean =>
  options.every((option, i) => accepts(row.when[i], option));

/** Every combination of one option each. */
function combinations(inputs: readonly (readonly string[])[]): readonly (readonly string[])[] {
  return inputs.reduce<readonly (readonly string[])[]>(
    (before, options) => before.flatMap((one) => options.map((option) => [...one, option])),
    [[]],
  );
}

/** The rows that any combination comes to; `none` when one comes to no row. */
export function rowsFor(
  { rows }: Decision,
  inputs: readonly (readonly string[])[],
): { readonly rows: ReadonlySet<Row>; readonly none: readonly (readonly string[])[] } {
  const found = new Set<Row>();
  const none: (readonly string[])[] = [];
  for (const options of combinations(inputs)) {
    const row = rows.find((each) => fits(each, options));
    if (row) found.add(row);
    else none.push(options);
  }
  return { rows: found, none };
}

/** Rows that some option of every input would let through, when there are too many to try. */
function roughly({ rows }: Decision, inputs: readonly (readonly string[])[]): ReadonlySet<Row> {
  const could = (row: Row) =>
    inputs.every((options, i) => options.some((option) => accepts(row.when[i], option)));
  return new Set(rows.filter(could));
}

/** What a decision comes to: every result that the open inputs allow. */
export function decide(decision: Decision, values: readonly Value[]): AmongValue {
  const inputs = values.map(optionsOf);
  const tried = inputs.reduce((product, { length }) => product * length, 1);
  const rows = tried > mostTried ? roughly(decision, inputs) : rowsFor(decision, inputs).rows;
  const options = [...new Set([...rows].map(({ gives }) => gives))];
  const open = values.map((value) => (value.kind === 'number' ? nothing : value.on));
  return {
    kind: 'among',
    options,
    on: options.length > 1 ? open.reduce(joinOn, nothing) : nothing,
  };
}
