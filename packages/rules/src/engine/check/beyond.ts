import { factsRead } from '../catalogue/facts-read';
import type { Decision, Topic } from '../define/shapes';
import { allFormulas, declaredUnit } from '../define/topic';
import { rowsFor } from '../formula/decide';
import type { NameUnits } from '../formula/dimensions';
import { namesIn } from '../formula/kinds';
import { parseFormula } from '../formula/parse';
import { checkCatalogue } from './catalogue';
import { meant } from './near';
import type { Note } from './noted';
import { type UnitOf, wordsOf } from './words-of';

/** More combinations than this are no table that a person can read. */
const mostCombinations = 200_000;

function checkEntries(
  at: string,
  decision: Decision,
  inputs: readonly (readonly string[])[],
  note: Note,
) {
  const results = Object.keys(decision.results);
  for (const [i, { when, gives }] of decision.rows.entries()) {
    const row = i + 1;
    if (when.length !== inputs.length) {
      note('entries-of-row', at, `${when.length}`, { row, options: decision.on });
    }
    if (!results.includes(gives)) {
      note('row-to-no-result', at, gives, { row, options: results, ...meant(gives, results) });
    }
    for (const [place, entry] of when.entries()) {
      const words = inputs[place] ?? [];
      const column = decision.on[place] ?? '';
      for (const word of typeof entry === 'string' ? [entry] : entry) {
        if (word === '-' || words.includes(word)) continue;
        note('word-of-row', at, word, { row, column, options: words, ...meant(word, words) });
      }
    }
  }
  for (const word of results) {
    if (!decision.rows.some(({ gives }) => gives === word)) {
      note('result-without-row', at, word);
    }
  }
}

/** The words of each name that a decision looks at; one that has none is told. */
function lookedAt(
  topic: Topic,
  unit: UnitOf,
  at: string,
  { on }: Decision,
  note: Note,
): readonly (readonly string[])[] {
  return on.flatMap((each) => {
    const words = wordsOf(topic, unit, each);
    if (words) return [words];
    note('not-looked-at', at, each);
    return [];
  });
}

/** That whatever decisions look at is there: without it they cannot be asked at all. */
export function checkLookedAt(topic: Topic, note: Note): void {
  const formulas = allFormulas(topic);
  const unit: UnitOf = (name) => formulas.get(name)?.unit ?? declaredUnit(topic, name);
  for (const [name, decision] of Object.entries(topic.decisions ?? {})) {
    lookedAt(topic, unit, `decisions ${name}`, decision, note);
  }
}

/** Every combination comes to a row, by `unique` to one only, and no row stands in another's shadow. */
function checkDecision(topic: Topic, unit: UnitOf, name: string, decision: Decision, note: Note) {
  const at = `decisions ${name}`;
  const inputs = lookedAt(topic, unit, at, decision, note);
  if (inputs.length < decision.on.length) return;
  checkEntries(at, decision, inputs, note);
  const combinations = inputs.reduce((product, { length }) => product * length, 1);
  if (combinations > mostCombinations) {
    return note('too-many-combinations', at, `${combinations}`, { most: mostCombinations });
  }
  const { rows, none } = rowsFor(decision, inputs);
  for (const options of none.slice(0, 3)) {
    note('combination-left-out', at, options.join(', '));
  }
  for (const [i, row] of decision.rows.entries()) {
    if (!rows.has(row)) note('row-in-shadow', at, row.when.flat().join(', '), { row: i + 1 });
  }
  if (decision.hit === 'first') return;
  const turned: Decision = { ...decision, rows: decision.rows.toReversed() };
  for (const row of decision.rows) {
    const alone = rowsFor({ ...decision, rows: [row] }, inputs).none.length;
    const above = takenBy(decision, row, inputs);
    const below = takenBy(turned, row, inputs);
    if (above + alone !== combinations || below + alone !== combinations) {
      const place = { row: decision.rows.indexOf(row) + 1 };
      note('rows-overlap', at, row.when.flat().join(', '), place);
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
      note('not-a-list', `${at} steps`, steps);
    }
    for (const name of [...Object.keys(states), ...Object.keys(values)]) {
      if (!name.startsWith(`${id}.`)) note('outside-its-name', at, name, { of: id });
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
        note('not-yes-no', `${at} when`, when);
      }
      for (const [amount, name] of Object.entries(own)) {
        if (!Object.hasOwn(amounts, amount))
          note('not-an-amount', at, amount, { of: id, options: Object.keys(amounts) });
        else if (unit(name) === undefined) note('not-a-value', at, name);
      }
    }
  }
  for (const [id, { of }] of Object.entries(topic.rankings ?? {})) {
    const found = new Set(Object.values(of).map(({ by }) => unit(by)));
    if (found.size > 1 || found.has(undefined)) {
      // What is no value at all has no unit.
      const units = [...found].map((each) => each ?? 'nothing');
      note('ranked-units', `rankings ${id}`, units.join(', '), { options: units });
    }
  }
  for (const [id, { values }] of Object.entries(topic.wordTables ?? {})) {
    if (Object.keys(values).length === 0) note('empty-table', `wordTables ${id}`, '');
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
