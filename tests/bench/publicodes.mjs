// The same formulas and checks as a general rule language has them, so that both can be timed.
import { conditionRules, parseFormula, readFacts } from '@tarebook/rules/engine';
import { findUnit } from '@tarebook/rules/quantity';
import Engine from 'publicodes';

const spoken = (id) =>
  id
    .replace(/#/g, ' ligne ')
    .replace(/\./g, ' ')
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .toLowerCase();

const names = new Map();
const taken = new Set();

/** In words of small letters two names may be alike, such as a.waterMoment and a.water.moment. */
function nameOf(id) {
  const known = names.get(id);
  if (known) return known;
  let name = spoken(id);
  while (taken.has(name)) name += ' bis';
  taken.add(name);
  names.set(id, name);
  return name;
}

const fits = { '==': '=', '!=': '!=' };

/**
 * A formula node as a mechanism; facts and parameters are rules of their own, and so is, by `apart`, a
 * least or a most within another formula: two of them in one rule take each other's names there.
 */
function mechanism(node, inputs, apart, inRow) {
  const inner = (each) => {
    const made = mechanism(each, inputs, apart, inRow);
    return each.kind === 'min' || each.kind === 'max' ? apart(made) : made;
  };
  switch (node.kind) {
    case 'number':
      return node.value;
    case 'word':
      return `'${node.text}'`;
    case 'name':
      return nameOf(inRow ? inRow(node.id) : node.id);
    case 'unlimited':
      return 1e15;
    case 'negative':
      return { '-': [0, inner(node.of)] };
    case 'arithmetic':
      return { [node.op]: [inner(node.a), inner(node.b)] };
    case 'compare':
      return { [fits[node.op] ?? node.op]: [inner(node.a), inner(node.b)] };
    case 'both':
      return { 'toutes ces conditions': [inner(node.a), inner(node.b)] };
    case 'either':
      return { 'une de ces conditions': [inner(node.a), inner(node.b)] };
    case 'not':
      return { '=': [inner(node.of), 'non'] };
    case 'choose':
      return {
        variations: [
          { si: inner(node.when), alors: inner(node.chosen) },
          { sinon: inner(node.otherwise) },
        ],
      };
    case 'min':
      return { 'le minimum de': node.of.map(inner) };
    case 'max':
    case 'largestKnown':
      return { 'le maximum de': node.of.map(inner) };
    case 'sum': {
      const { rows } = inputs.get(node.list);
      const each = rows.map((_, row) =>
        mechanism(node.of, inputs, apart, (id) =>
          id.startsWith(`${node.list}.`) ? `${id}#${row}` : id,
        ),
      );
      return each.length === 0 ? 0 : { somme: each };
    }
    case 'count':
      return inputs.get(node.list).rows.length;
    case 'given':
      return node.names.every((name) => inputs.get(name)?.status !== 'silent') ? 'oui' : 'non';
    case 'known':
      return node.names.every((name) => isKnown(inputs, name)) ? 'oui' : 'non';
    // Facts are exact, so that what may be is; a range has no counterpart, and either end is as dear.
    case 'needs':
    case 'may':
      return inner(node.of);
    case 'between':
      return inner(node.a);
    default:
      throw new Error(`${node.kind} is not put into the other language.`);
  }
}

function isKnown(inputs, name) {
  const input = inputs.get(name);
  if (input) return input.status === 'known';
  if (inputs.open.has(name)) return false;
  const dot = name.lastIndexOf('.');
  const list = inputs.get(name.slice(0, dot));
  if (list?.kind !== 'rows') return true;
  return list.rows.every((row) => row[name.slice(dot + 1)]?.status === 'known');
}

/** What has a figure at both ends. */
const isClosed = (result) => Number.isFinite(result?.lo) && Number.isFinite(result?.hi);

const wanted = (node) => (typeof node === 'object' ? node : { valeur: node });

/** Facts of an exact case in base units; what is silent and open is a number nobody looks at. */
function situation(inputs) {
  const facts = {};
  for (const [id, input] of inputs) {
    if (input.kind === 'number') facts[id] = input.open ? 1 : input.lo;
    if (input.kind === 'among') facts[id] = `'${input.options[0]}'`;
    if (input.kind === 'rows') {
      input.rows.forEach((row, i) => {
        for (const [column, cell] of Object.entries(row)) {
          facts[`${id}.${column}#${i}`] = cell.open ? 1 : cell.lo;
        }
      });
    }
  }
  return Object.fromEntries(Object.entries(facts).map(([id, value]) => [nameOf(id), value]));
}

/**
 * Returns a function that sets the facts and reckons every formula and every check once more.
 *
 * @param topic a rule set as published, its limits' formulas among the rest
 * @param results what our answer says of these facts: which formulas have a figure is settled before either
 *   is timed
 */
export function publicodesOf(topic, all, facts, asOf, results) {
  const inputs = readFacts(topic, facts).inputs;
  inputs.open = new Set(
    Object.keys(all).filter((id) => all[id].unit !== 'yes-no' && !isClosed(results[id])),
  );
  const given = situation(inputs);
  const rules = {};
  for (const [id, value] of Object.entries(given)) rules[id] = { 'par défaut': value };
  for (const [id, { values, unit }] of Object.entries(topic.parameters)) {
    const { value } = values.filter(({ from }) => from <= asOf).at(-1);
    rules[nameOf(id)] = { valeur: value * (unit === '' ? 1 : findUnit(unit).factor) };
  }
  let parts = 0;
  const apart = (made) => {
    parts += 1;
    const name = nameOf(`part${parts}`);
    rules[name] = made;
    return name;
  };
  for (const [id, { is }] of Object.entries(all)) {
    const node = mechanism(parseFormula(is), inputs, apart);
    rules[nameOf(id)] = wanted(node);
  }
  const checks = [];
  const check = (condition) => {
    if (condition.all) return { 'toutes ces conditions': condition.all.map(check) };
    if (condition.any) return { 'une de ces conditions': condition.any.map(check) };
    const { fact, operator, value } = condition;
    const right = value.fact ? nameOf(value.fact) : `'${value}'`;
    const yesNo = all[fact]?.unit === 'yes-no';
    if (yesNo) return { '=': [nameOf(fact), value === 'yes' ? 'oui' : 'non'] };
    const signs = {
      ...{ greaterThan: '>', lessThan: '<', greaterThanInclusive: '>=', lessThanInclusive: '<=' },
      ...{ equal: '=', notEqual: '!=' },
    };
    return { [signs[operator]]: [nameOf(fact), right] };
  };
  for (const { name, conditions } of conditionRules(topic)) {
    const id = `contrôle ${nameOf(name.replace(/-/g, ' '))}`;
    rules[id] = check(conditions);
    checks.push(id);
  }
  const engine = new Engine(rules, {
    logger: { log() {}, warn() {}, error() {} },
    strict: { noOrphanRule: false, checkPossibleValues: false },
  });
  const names = Object.keys(all);
  return () => {
    engine.setSituation(given);
    const values = new Map(names.map((id) => [id, engine.evaluate(nameOf(id)).nodeValue]));
    return { values, checks: checks.map((id) => engine.evaluate(id).nodeValue) };
  };
}
