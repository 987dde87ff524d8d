import { factsRead } from '../catalogue/facts-read';
import type { Decision, Topic } from '../define/shapes';
import { declaredUnit } from '../define/topic';
import { rowsFor } from '../formula/decide';
import type { NameUnits } from '../formula/dimensions';
import { namesIn } from '../formula/kinds';
import { parseFormula } from '../formula/parse';
import { checkCatalogue } from './catalogue';
import { type UnitOf, wordsOf } from './words-of';

type Note = (at: string, found: string, wanted: string) => void;

/** More combinations than this are no table that a person can read. */
const mostCombinations = 200_000;

function checkEntries(
  at: string,
  decision: Decision,
  inputs: readonly (readonly string[])[],
  note: Note,
) {
  for (const [i, { when, gives }] of decision.rows.entries()) {
    if (when.length !== inputs.length) {
      note(
        at,
        `row ${i + 1} has ${when.length} entries`,
        `one for each of ${decision.on.join(', ')}`,
      );
    }
    if (!Object.hasOwn(decision.results, gives)) {
      note(at, `row ${i + 1} comes to “${gives}”`, Object.keys(decision.results).join(', '));
    }
    for (const [column, entry] of when.entries()) {
      const words = inputs[column] ?? [];
      for (const word of typeof entry === 'string' ? [entry] : entry) {
        if (word === '-' || words.includes(word)) continue;
        note(at, `row ${i + 1} says “${word}” under ${decision.on[column]}`, words.join(', '));
      }
    }
  }
  for (const word of Object.keys(decision.results)) {
    if (!decision.rows.some(({ gives }) => gives === word)) {
      note(at, `no row comes to “${word}”`, 'add the row or leave the result out');
    }
  }
}

/** Every combination comes to a row, by `unique` to one only, and no row stands in another's shadow. */
function checkDecision(topic: Topic, unit: UnitOf, name: string, decision: Decision, note: Note) {
  const at = `decisions ${name}`;
  const inputs: (readonly string[])[] = [];
  for (const each of decision.on) {
    const words = wordsOf(topic, unit, each);
    if (!words) return note(at, `it looks at “${each}”`, 'a choice, a yes/no or another decision');
    inputs.push(words);
  }
  checkEntries(at, decision, inputs, note);
  const combinations = inputs.reduce((product, { length }) => product * length, 1);
  if (combinations > mostCombinations) {
    return note(at, `it has ${combinations} combinations`, 'split it into several tables');
  }
  const { rows, none } = rowsFor(decision, inputs);
  for (const options of none.slice(0, 3)) {
    note(at, `no row fits ${options.join(', ')}`, 'every combination must come to a result');
  }
  for (const [i, row] of decision.rows.entries()) {
    if (!rows.has(row))
      note(at, `row ${i + 1} is never reached`, 'a row above it takes all it fits');
  }
  if (decision.hit === 'first') return;
  const turned: Decision = { ...decision, rows: decision.rows.toReversed() };
  for (const row of decision.rows) {
    const alone = rowsFor({ ...decision, rows: [row] }, inputs).none.length;
    const above = takenBy(decision, row, inputs);
    const below = takenBy(turned, row, inputs);
    if (above + alone !== combinations || below + alone !== combinations) {
      note(
        at,
        `row ${decision.rows.indexOf(row) + 1} overlaps another`,
        'by “unique” one row at the most may fit',
      );
    }
  }
}

/** How many combinations come to a row when rows are tried from the top. */
function takenBy(
  decision: Decision,
  row: Decision['rows'][number],
  inputs: readonly (readonly string[])[],
) {
  const before = decision.rows.slice(0, decision.rows.indexOf(row));
  const free = rowsFor({ ...decision, rows: before }, inputs).none;
  return free.filter(
    (options) =>
      rowsFor(
        { ...decision, rows: [row] },
        options.map((o) => [o]),
      ).rows.size > 0,
  ).length;
}

function checkSimulations(topic: Topic, note: Note): void {
  for (const [id, { steps, states, values }] of Object.entries(topic.simulations ?? {})) {
    const at = `simulations ${id}`;
    if (typeof steps === 'string' && topic.facts[steps]?.kind !== 'rows') {
      note(at, `its steps are “${steps}”`, 'name a list, or give their number');
    }
    for (const name of [...Object.keys(states), ...Object.keys(values)]) {
      if (!name.startsWith(`${id}.`))
        note(at, `“${name}” stands in it`, `begin its name with ${id}.`);
    }
  }
}

/** Decisions, selections, rankings, simulations and tables of words. */
export function checkBeyond(topic: Topic, units: NameUnits, note: Note): void {
  const unit: UnitOf = (name) => units.get(name) ?? declaredUnit(topic, name);
  for (const [name, decision] of Object.entries(topic.decisions ?? {})) {
    checkDecision(topic, unit, name, decision, note);
  }
  for (const [id, { items, amounts }] of Object.entries(topic.selections ?? {})) {
    for (const [item, { when, amounts: own }] of Object.entries(items)) {
      const at = `selections ${id}.${item}`;
      if (when !== undefined && unit(when) !== 'yes-no') {
        note(at, `it is chosen when “${when}”`, 'name a yes/no fact or formula');
      }
      for (const [amount, name] of Object.entries(own)) {
        if (!Object.hasOwn(amounts, amount))
          note(at, `it has the amount “${amount}”`, Object.keys(amounts).join(', '));
        else if (unit(name) === undefined)
          note(at, `“${name}” is no value`, 'name a fact, parameter or formula');
      }
    }
  }
  for (const [id, { of }] of Object.entries(topic.rankings ?? {})) {
    const found = new Set(Object.values(of).map(({ by }) => unit(by)));
    if (found.size > 1 || found.has(undefined)) {
      note(`rankings ${id}`, `it compares ${[...found].join(', ')}`, 'values of one unit');
    }
  }
  for (const [id, { values }] of Object.entries(topic.wordTables ?? {})) {
    if (Object.keys(values).length === 0)
      note(`wordTables ${id}`, 'it is empty', 'give each option its number');
  }
  checkSimulations(topic, note);
  for (const [id, catalogue] of Object.entries(topic.catalogues ?? {})) {
    checkCatalogue(topic, `catalogues ${id}`, catalogue, note);
  }
}

/** The names that decisions, selections, rankings and simulations use. */
export function namesBeyond(topic: Topic): readonly string[] {
  const items = Object.values(topic.selections ?? {}).flatMap(({ items: all }) =>
    Object.values(all),
  );
  const simulations = Object.values(topic.simulations ?? {});
  const catalogues = Object.values(topic.catalogues ?? {});
  const texts = simulations.flatMap(({ states, values }) => [
    ...Object.values(states).flatMap(({ start, next }) => [start, next]),
    ...Object.values(values).map(({ is }) => is),
  ]);
  return [
    ...catalogues.flatMap(factsRead),
    ...catalogues.flatMap(({ rows }) => (rows ? [rows.list] : [])),
    ...Object.values(topic.decisions ?? {}).flatMap(({ on }) => on),
    ...items.flatMap(({ when, amounts }) => [...(when ? [when] : []), ...Object.values(amounts)]),
    ...Object.values(topic.rankings ?? {}).flatMap(({ of }) =>
      Object.values(of).map(({ by }) => by),
    ),
    ...simulations.flatMap(({ steps }) => (typeof steps === 'string' ? [steps] : [])),
    ...texts.flatMap((text) => {
      try {
        return namesIn(parseFormula(text));
      } catch {
        return []; // Told where its units are checked.
      }
    }),
  ];
}
