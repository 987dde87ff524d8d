import { unitOf } from '../../quantity';
import type { CellGiven, FactGiven, FactsGiven, RowGiven } from '../check/given';
import type { Topic } from '../define/shapes';
import type { Input, Inputs, NumberInput, RowsInput } from '../value/values';

export const exactInput = (at: number): NumberInput => ({
  kind: 'number',
  lo: at,
  hi: at,
  status: 'known',
  open: false,
});

export const edited = (inputs: Inputs, fact: string, input: Input): Inputs =>
  inputs.get(fact) === input ? inputs : new Map(inputs).set(fact, input);

function withRows(inputs: Inputs, fact: string, change: (list: RowsInput) => RowsInput['rows']) {
  const list = inputs.get(fact);
  if (list?.kind !== 'rows') return inputs;
  return edited(inputs, fact, { ...list, rows: change(list) });
}

export const withoutRow = (inputs: Inputs, fact: string, row: number): Inputs =>
  withRows(inputs, fact, ({ rows }) => rows.filter((_, index) => index !== row));

export const withCell = (
  inputs: Inputs,
  fact: string,
  row: number,
  column: string,
  cell: NumberInput,
): Inputs =>
  withRows(inputs, fact, ({ rows }) =>
    rows.map((each, index) => (index === row ? { ...each, [column]: cell } : each)),
  );

function cellGiven(input: NumberInput, unit: string): CellGiven {
  if (input.open) return 'unknown';
  const { factor } = unitOf(unit === '' ? '1' : unit);
  const end = (value: number): number => Math.round((value / factor) * 1e9) / 1e9;
  return { lo: end(input.lo), hi: end(input.hi), unit: unit === '' ? '1' : unit };
}

function rowsGiven(
  topic: Topic,
  fact: string,
  kept: readonly (readonly [RowGiven, RowsInput['rows'][number] | undefined])[],
  after: RowsInput,
): readonly RowGiven[] {
  const declared = topic.facts[fact];
  const columns = declared?.kind === 'rows' ? declared.columns : {};
  return after.rows.map((row, index) => {
    const [given = {}, before = {}] = kept[index] ?? [];
    const changed = Object.entries(row).filter(([id, cell]) => before[id] !== cell);
    const cells = changed.map(([id, cell]) => [id, cellGiven(cell, columns[id]?.unit ?? '')]);
    return { ...given, ...Object.fromEntries(cells) };
  });
}

const isRows = (given: FactGiven | undefined): given is readonly RowGiven[] => Array.isArray(given);

/**
 * Facts as a person gives them, after their inputs were edited; what was not touched stays as it
 * was written.
 *
 * @param left the rows that were left out, by list
 */
export function givenAfter(
  topic: Topic,
  given: FactsGiven,
  before: Inputs,
  after: Inputs,
  left: ReadonlyMap<string, ReadonlySet<number>>,
): FactsGiven {
  const made: Record<string, FactGiven> = { ...given };
  for (const [fact, input] of after) {
    const was = before.get(fact);
    const declared = topic.facts[fact];
    if (was === input || !declared) continue;
    if (input.kind === 'among')
      made[fact] = input.options.length > 1 ? 'unknown' : (input.options[0] ?? '');
    else if (input.kind === 'number') {
      made[fact] = cellGiven(input, declared.kind === 'quantity' ? declared.unit : '');
    } else if (was?.kind === 'rows') {
      const rows = given[fact];
      const kept = (isRows(rows) ? rows : [])
        .map((row, index) => [row, was.rows[index]] as const)
        .filter((_, index) => !left.get(fact)?.has(index));
      made[fact] = rowsGiven(topic, fact, kept, input);
    }
  }
  return made;
}
