import type { Topic } from '../define/shapes';
import { allFormulas, declaredUnit, namesOf } from '../define/topic';
import { checkFormulaUnit, type NameUnits } from '../formula/dimensions';
import type { Node } from '../formula/grammar/nodes';
import { below } from '../formula/kinds';
import { parseFormula } from '../formula/parse';
import type { Note } from './noted';
import { noteFormula } from './told-of-formula';
import { type UnitOf, wordsOf } from './words-of';

/** Every option of the choice that a table of words is looked up with has its number. */
function checkPicks(topic: Topic, unit: UnitOf, at: string, node: Node, note: Note): void {
  if (node.kind === 'pick' && node.at.kind === 'name') {
    const values = topic.wordTables?.[node.table]?.values ?? {};
    for (const word of wordsOf(topic, unit, node.at.id) ?? []) {
      if (!Object.hasOwn(values, word)) note('option-without-number', at, word, { of: node.table });
    }
  }
  for (const each of below(node)) checkPicks(topic, unit, at, each, note);
}

/** The text of a formula against the unit it must yield. */
function checkText(
  topic: Topic,
  units: NameUnits,
  at: string,
  text: string,
  wanted: string,
  note: Note,
) {
  try {
    const node = parseFormula(text);
    checkFormulaUnit(node, wanted, topic, units);
    checkPicks(topic, (name) => units.get(name) ?? declaredUnit(topic, name), at, node, note);
  } catch (problem) {
    noteFormula(problem, at, [...units.keys(), ...namesOf(topic)], note);
  }
}

/**
 * Every formula of a topic, those of its simulations too: that it can be read, and that its names,
 * units, words and tables fit together.
 */
export function checkTexts(topic: Topic, note: Note): void {
  const all = allFormulas(topic);
  const units = new Map([...all].map(([name, { unit }]) => [name, unit]));
  for (const [name, { is, unit }] of all) {
    checkText(topic, units, `formulas ${name}`, is, unit, note);
  }
  for (const [id, { states, values }] of Object.entries(topic.simulations ?? {})) {
    const at = `simulations ${id}`;
    for (const [name, { start, next, unit }] of Object.entries(states)) {
      checkText(topic, units, `${at} ${name}`, start, unit, note);
      checkText(topic, units, `${at} ${name}`, next, unit, note);
    }
    for (const [name, { is, unit }] of Object.entries(values)) {
      checkText(topic, units, `${at} ${name}`, is, unit, note);
    }
  }
}
