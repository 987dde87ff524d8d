import type { Family, Part } from '../define/shapes';
import { allFormulas, simulationOf } from '../define/topic';
import { askedIn, namesIn } from './kinds';
import { parseFormula } from './parse';

type Kind = 'facts' | 'parameters' | 'tables' | 'wordTables' | 'formulas' | 'decisions';
const kinds: readonly Kind[] = ['facts', 'parameters', 'formulas', 'decisions'];

/** Every name and table that results of a topic stand on, themselves included. */
function reachedFrom(topic: Family, results: readonly string[]) {
  const formulas = allFormulas(topic);
  const names = new Set<string>();
  const tables = new Set<string>();
  const text = (is: string): void => {
    const node = parseFormula(is);
    for (const name of namesIn(node)) visit(name);
    for (const asked of askedIn(node)) {
      tables.add(asked);
      visitSimulation(asked);
    }
  };
  const visitSimulation = (id: string): void => {
    const simulation = topic.simulations?.[id];
    if (!simulation || names.has(id)) return;
    names.add(id);
    if (typeof simulation.steps === 'string') visit(simulation.steps);
    for (const { start, next } of Object.values(simulation.states)) [start, next].forEach(text);
    for (const { is } of Object.values(simulation.values)) text(is);
  };
  const visit = (name: string): void => {
    if (names.has(name)) return;
    const simulated = simulationOf(topic, name);
    if (simulated) visitSimulation(simulated[0]);
    if (simulated) return;
    names.add(name);
    const formula = formulas.get(name);
    if (formula) text(formula.is);
    for (const each of topic.decisions?.[name]?.on ?? []) visit(each);
    const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
    if (topic.facts[list]?.kind === 'rows') names.add(list);
  };
  for (const name of results) visit(name);
  return { names, tables };
}

type Known<T extends Family> = keyof T['formulas'] & string;

/**
 * What some results of one topic stand on, as a part for another: their formulas and, below them,
 * every fact, parameter, table, decision and simulation they need, under the same ids; no limit and
 * no finding. So the facts of a rig are asked in the same words everywhere, and a result of one topic
 * is reckoned inside another with its whole trace. Which of the facts it needs the compiler cannot
 * follow through the formulas: their type is all that there are, so that a misspelled one is an error.
 */
export function standingOn<T extends Family, N extends Known<T>>(
  topic: T,
  ...results: readonly N[]
): Omit<Part, 'limits' | 'findings' | 'formulas' | 'facts'> & {
  readonly facts: T['facts'];
  readonly formulas: Pick<T['formulas'], N>;
};
export function standingOn(topic: Family, ...results: readonly string[]): Part {
  const { names, tables } = reachedFrom(topic, results);
  const formulas = Object.fromEntries(allFormulas(topic));
  const missing = results.find((name) => !Object.hasOwn(formulas, name));
  if (missing !== undefined) throw new Error(`There is no result “${missing}” to stand on.`);
  const chosen = (group: object = {}, among: ReadonlySet<string> = names) =>
    Object.fromEntries(Object.entries(group).filter(([id]) => among.has(id)));
  const whole: Family = { ...topic, formulas };
  return {
    ...Object.fromEntries(kinds.map((kind) => [kind, chosen(whole[kind])])),
    tables: chosen(topic.tables, tables),
    wordTables: chosen(topic.wordTables, tables),
    simulations: chosen(topic.simulations),
  };
}
