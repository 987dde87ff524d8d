import type { CaseDocument } from '@tarebook/casebook';
import { type Problem, readFacts, type Topic } from '@tarebook/rules/engine';

/** An entry that cannot be taken: where it stands, by its label, and what would be right. */
export type Refused = {
  readonly fact: string;
  /** Of a list: counts from 0. */
  readonly row?: number;
  readonly column?: string;
  readonly label: string;
  readonly says: string;
};

const labelOf = (topic: Topic, { fact, row, column }: Problem): string => {
  const label = topic.facts[fact]?.label ?? fact;
  if (row === undefined) return label;
  return `${label}, row ${row}${column === undefined ? '' : `, ${column.toLowerCase()}`}`;
};

const hint = (near: string | undefined): string =>
  near === undefined ? '' : ` Perhaps “${near}”?`;

/** What is wrong with an entry, for beside its field: the field says which it is. */
function wordsOf({ code, found, wanted, near }: Problem): string {
  switch (code) {
    case 'not-a-quantity':
      return `“${found}” is no number; write one such as 3,900, or 3,800–4,000.`;
    case 'no-unit':
      return `“${found}” has no unit; write one behind it.`;
    case 'no-such-unit':
      return `There is no unit “${found}”; write a number such as 3,900, with a unit behind it or the one beside the field.${hint(near)}`;
    case 'two-units':
      return `“${found}” mixes two units; write it in one.`;
    case 'two-ways':
      return `“${found}” may be thousands or a decimal; write ${found.replace('.', ',')}, or one digit more behind the point.`;
    case 'wrong-unit':
      return `“${found}” is not ${wanted}.`;
    case 'back-to-front':
      return `“${found}” runs back to front; write the smaller end first.`;
    case 'out-of-range':
      return `${found} is outside what it can be, ${wanted}.`;
    case 'no-such-option':
      return `“${found}” is not one of ${wanted}.${hint(near)}`;
    case 'missing-cell':
      return `Nothing is written here; write ${wanted}.`;
    default:
      return `“${found}” cannot be taken; wanted is ${wanted}.`;
  }
}

function columnLabel(topic: Topic, list: string, column: string): string | undefined {
  const declared = topic.facts[list];
  return declared?.kind === 'rows' ? declared.columns[column]?.label : undefined;
}

function columnOf(topic: Topic, { fact, column }: Problem): string | undefined {
  const declared = topic.facts[fact];
  if (declared?.kind !== 'rows') return undefined;
  return Object.entries(declared.columns).find(([, { label }]) => label === column)?.[0];
}

function refusedOf(topic: Topic, problem: Problem): Refused {
  const column = columnOf(topic, problem);
  return {
    fact: problem.fact,
    ...(problem.row !== undefined && { row: problem.row - 1 }),
    ...(column !== undefined && { column }),
    label: labelOf(topic, problem),
    says: wordsOf(problem),
  };
}

/** Under what a refusal is found: the fact, or `load.cargo.2.weight`, rows counted from 0. */
export const placeOf = ({ fact, row, column }: Omit<Refused, 'label' | 'says'>): string =>
  row === undefined ? fact : `${fact}.${row}.${column ?? ''}`;

/** Every entry of a case that cannot be taken, called as the case calls it, in the topic's order. */
export function refusedIn(doc: CaseDocument): readonly Refused[] {
  const { topic, facts, troubles, blocks } = doc;
  if (!topic || troubles.length === 0) return [];
  const rows = blocks.flatMap((block) => (block.kind === 'facts' ? block.rows : []));
  const called = new Map(rows.map(({ id, words }) => [id, words]));
  return readFacts(topic, facts)
    .problems.filter(({ code }) => code !== 'no-such-fact')
    .map((problem) => refusedOf(topic, problem))
    .map((each) => ({ ...each, label: called.get(each.fact) || each.label }));
}

/** What is wrong with one value of one fact; undefined: nothing. */
export function refusalOf(topic: Topic, id: string, text: string): Refused | undefined {
  const [problem] = readFacts(topic, { [id]: text }).problems;
  return problem && refusedOf(topic, problem);
}

/** The same of one cell of a list. */
export const cellRefusal = (
  topic: Topic,
  list: string,
  column: string,
  text: string,
): string | undefined => {
  const { problems } = readFacts(topic, { [list]: [{ label: '', [column]: text }] });
  const label = columnLabel(topic, list, column);
  const problem = problems.find((each) => each.column === label && each.fact === list);
  return problem && wordsOf(problem);
};
