import { namesIn, parseFormula, type Source, type Topic } from '@tarebook/rules/engine';
import { showNumber } from '@tarebook/rules/quantity';

/** What a name in a formula stands for. */
export type Named = {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly kind: 'asked' | 'number of the trade' | 'reckoned' | 'list';
};

const unitWords = (unit: string): string =>
  unit === 'yes-no' ? 'yes or no' : unit === '' ? 'a count' : unit === '1' ? 'a share' : unit;

/** What a name stands for in a topic; undefined for one that is explained where it stands. */
export function namedIn(topic: Topic, id: string): Named | undefined {
  const formula = topic.formulas[id];
  if (formula) {
    return { id, label: formula.label, unit: unitWords(formula.unit), kind: 'reckoned' };
  }
  const parameter = topic.parameters[id];
  if (parameter) {
    const { label, unit } = parameter;
    return { id, label, unit: unitWords(unit), kind: 'number of the trade' };
  }
  const fact = topic.facts[id];
  if (fact?.kind === 'rows') return { id, label: fact.label, unit: 'rows', kind: 'list' };
  if (fact) {
    const unit = fact.kind === 'quantity' ? unitWords(fact.unit) : unitWords('yes-no');
    return {
      id,
      label: fact.label,
      unit: fact.kind === 'choice' ? 'a choice' : unit,
      kind: 'asked',
    };
  }
  const dot = id.lastIndexOf('.');
  const list = topic.facts[id.slice(0, dot)];
  const column = list?.kind === 'rows' ? list.columns[id.slice(dot + 1)] : undefined;
  if (!list || !column) return undefined;
  const label = `${column.label} (${list.label.toLowerCase()})`;
  return { id, label, unit: unitWords(column.unit), kind: 'list' };
}

/** Every name of a formula with what it stands for, in the order of its text. */
export function legendOf(topic: Topic, is: string): readonly Named[] {
  return namesIn(parseFormula(is)).flatMap((id) => {
    const found = namedIn(topic, id);
    return found ? [found] : [];
  });
}

/** The first word of an id, by which facts and formulas stand together. */
export const familyOf = (id: string): string => id.slice(0, (id.indexOf('.') + 1 || 1) - 1) || id;

/** Entries by family, in the order in which the families first appear. */
export function families<T>(
  entries: Readonly<Record<string, T>>,
): readonly (readonly [family: string, entries: readonly (readonly [id: string, entry: T])[]])[] {
  const found = new Map<string, (readonly [string, T])[]>();
  for (const [id, entry] of Object.entries(entries)) {
    const family = familyOf(id);
    found.set(family, [...(found.get(family) ?? []), [id, entry] as const]);
  }
  return [...found];
}

export const cited = ({ cite, section, note }: Source): string =>
  `${cite}${section ? `, ${section}` : ''}${note ? `. ${note}` : ''}`;

/** Every source of a topic, once, by class, with the labels of what stands on it. */
export function sourcesIn(
  topic: Topic,
): readonly { readonly source: Source; readonly holds: readonly string[] }[] {
  const found = new Map<string, { source: Source; holds: string[] }>();
  const { facts, parameters, formulas, limits, findings, tables } = topic;
  const {
    wordTables = {},
    decisions = {},
    selections = {},
    rankings = {},
    simulations = {},
    catalogues = {},
  } = topic;
  const rest = [wordTables, decisions, selections, rankings, simulations, catalogues];
  for (const part of [parameters, formulas, limits, findings, tables, ...rest]) {
    for (const { label, source } of Object.values(part)) note(source, label);
  }
  for (const { label, silent } of Object.values(facts)) if (silent) note(silent.source, label);
  for (const { says, source } of topic.cautions) note(source, says);
  function note(source: Source, label: string): void {
    const key = `${source.class} ${cited(source)}`;
    const one = found.get(key) ?? { source, holds: [] };
    one.holds.push(label);
    found.set(key, one);
  }
  const order = ['published', 'common-practice', 'from-memory', 'house', 'invented'];
  return [...found.values()].sort(
    (a, b) => order.indexOf(a.source.class) - order.indexOf(b.source.class),
  );
}

/** A single number as a rule set keeps it. */
export const numberIn = (value: number, unit: string): string =>
  unit === '' || unit === '1' ? showNumber(value, 4) : `${showNumber(value, 4)} ${unit}`;
