import { operatorNames } from '../condition/operators';
import { type ConditionRule, conditionRules } from '../condition/rules';
import type { Condition, Source, Topic } from '../define/shapes';
import { allFormulas, declaredUnit } from '../define/topic';
import { compile } from '../formula/compile';
import { namesIn } from '../formula/nodes';
import { FormulaError, parseFormula } from '../formula/parse';
import { checkBeyond, checkText, namesBeyond, wordsOf } from './beyond';
import { checkChanges } from './changes';
import { nearest } from './near';
import type { Problem } from './problem';

type Note = (at: string, found: string, wanted: string) => void;

const classes: readonly string[] = [
  'published',
  'common-practice',
  'from-memory',
  'house',
  'invented',
];

function checkSources(topic: Topic, note: Note): void {
  const check = (at: string, source: Source | undefined): void => {
    if (!source || source.cite.trim() === '') note(at, 'it has no source', 'give every item one');
    else if (!classes.includes(source.class)) {
      note(at, `there is no source class “${source.class}”`, `use one of ${classes.join(', ')}`);
    }
  };
  const groups = {
    parameters: topic.parameters,
    tables: topic.tables,
    formulas: topic.formulas,
    limits: topic.limits,
    findings: topic.findings,
    wordTables: topic.wordTables ?? {},
    decisions: topic.decisions ?? {},
    selections: topic.selections ?? {},
    rankings: topic.rankings ?? {},
    simulations: topic.simulations ?? {},
    catalogues: topic.catalogues ?? {},
  };
  for (const [kind, group] of Object.entries(groups)) {
    for (const [id, entry] of Object.entries(group)) check(`${kind} ${id}`, entry.source);
  }
  for (const [id, fact] of Object.entries(topic.facts)) {
    if (fact.silent) check(`facts ${id}`, fact.silent.source);
  }
  for (const each of [...topic.assumptions, ...topic.cautions]) check(each.says, each.source);
}

const isDay = /^\d{4}-\d{2}-\d{2}$/;

function checkNumbers(topic: Topic, note: Note): void {
  for (const [id, fact] of Object.entries(topic.facts)) {
    if (fact.kind !== 'quantity') continue;
    if (fact.least > fact.most) note(`facts ${id}`, 'its least is over its most', 'swap them');
    const value = fact.silent?.value;
    if (value !== undefined && (value < fact.least || value > fact.most)) {
      note(
        `facts ${id}`,
        `its default ${value} is outside ${fact.least} to ${fact.most}`,
        'keep it inside',
      );
    }
  }
  for (const [id, { values, range }] of Object.entries(topic.parameters)) {
    if (values.length === 0)
      note(`parameters ${id}`, 'it has no value', 'give it one with its date');
    for (const { value, from, until } of values) {
      if (!isDay.test(from)) {
        note(`parameters ${id}`, `“${from}” is not a day`, 'write it as 2026-01-31');
      }
      if (until !== undefined && !(isDay.test(until) && until >= from)) {
        note(`parameters ${id}`, `it holds from ${from} until “${until}”`, 'end it on a later day');
      }
      if (range && (value < range[0] || value > range[1])) {
        note(
          `parameters ${id}`,
          `its value ${value} is outside ${range.join(' to ')}`,
          'keep it inside',
        );
      }
    }
  }
  for (const [id, { rows }] of Object.entries(topic.tables)) {
    const rising = rows.every(([key], i) => i === 0 || key > (rows[i - 1]?.[0] ?? key));
    if (rows.length === 0 || !rising) {
      note(`tables ${id}`, 'its keys do not rise from row to row', 'sort them, each once');
    }
  }
}

function checkFormulas(topic: Topic, note: Note): void {
  const all = allFormulas(topic);
  const units = new Map([...all].map(([name, { unit }]) => [name, unit]));
  for (const [name, { is, unit }] of all) {
    if (!/^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/.test(name)) {
      note(`formulas ${name}`, 'its name is not dotted camelCase', 'write it as axle.front');
    }
    checkText(topic, units, `formulas ${name}`, is, unit, note);
  }
  checkBeyond(topic, units, note);
  try {
    compile(topic);
  } catch (problem) {
    if (!(problem instanceof FormulaError)) throw problem;
    note('formulas', problem.message, 'each may use only what does not use it');
  }
}

const keysAllowed: Readonly<Record<string, readonly string[]>> = {
  all: ['all'],
  any: ['any'],
  fact: ['fact', 'operator', 'value'],
};

function checkCondition(
  topic: Topic,
  all: ReadonlySet<string>,
  at: string,
  raw: Condition,
  note: Note,
) {
  const units = new Map([...allFormulas(topic)].map(([name, { unit }]) => [name, unit]));
  const unit = (name: string): string | undefined => units.get(name) ?? declaredUnit(topic, name);
  const walk = (condition: Condition): void => {
    const keys = Object.keys(condition);
    const shape = keys.includes('all') ? 'all' : keys.includes('any') ? 'any' : 'fact';
    const strange = keys.find((key) => !keysAllowed[shape]?.includes(key));
    if (strange) {
      note(at, `a condition has “${strange}”`, 'only all, any and fact–operator–value are allowed');
      return;
    }
    if ('all' in condition || 'any' in condition) {
      const inner = 'all' in condition ? condition.all : condition.any;
      if (inner.length === 0) note(at, `its “${shape}” is empty`, 'name at least one condition');
      for (const each of inner) walk(each);
      return;
    }
    const { fact, operator, value } = condition;
    if (!operatorNames.includes(operator)) {
      note(at, `there is no operator “${operator}”`, `use one of ${operatorNames.join(', ')}`);
    }
    const names = typeof value === 'object' && 'fact' in value ? [fact, value.fact] : [fact];
    for (const name of names) {
      if (!all.has(name)) {
        const near = nearest(name, all);
        const hint = near ? `; did you mean “${near}”` : '';
        note(
          at,
          `it compares “${name}”, which is no named value${hint}`,
          'name a fact, formula or parameter',
        );
      }
    }
    const [left, right] = names.map(unit);
    const worded = wordsOf(topic, unit, fact) !== undefined;
    if (names.length === 2 && left !== right) {
      note(
        at,
        `it compares ${left ?? 'nothing'} with ${right ?? 'nothing'}`,
        'both sides must share a unit',
      );
    }
    if (names.length === 1 && !worded) {
      note(at, `it compares “${fact}” with a literal`, 'name the number in a parameter');
    }
    if (names.length === 1 && worded) checkWords(fact, value);
  };
  const checkWords = (fact: string, value: unknown): void => {
    const options = wordsOf(topic, unit, fact) ?? [];
    for (const word of Array.isArray(value) ? value : [value]) {
      if (!options.includes(word))
        note(at, `“${String(word)}” is no option of ${fact}`, options.join(', '));
    }
  };
  walk(raw);
}

function namesUsed(topic: Topic): ReadonlySet<string> {
  const used = new Set<string>();
  for (const { is } of allFormulas(topic).values()) {
    try {
      for (const name of namesIn(parseFormula(is))) used.add(name);
    } catch {
      // Told by checkFormulas.
    }
  }
  const noteCondition = (condition: Condition): void => {
    if ('all' in condition) condition.all.forEach(noteCondition);
    else if ('any' in condition) condition.any.forEach(noteCondition);
    else if ('fact' in condition) {
      used.add(condition.fact);
      if (typeof condition.value === 'object' && 'fact' in condition.value)
        used.add(condition.value.fact);
    }
  };
  for (const { conditions } of conditionRules(topic)) noteCondition(conditions);
  for (const name of namesBeyond(topic)) used.add(name);
  return used;
}

function checkNames(topic: Topic, rules: readonly ConditionRule[], note: Note): void {
  const all = new Set([
    ...Object.keys(topic.facts),
    ...Object.keys(topic.parameters),
    ...allFormulas(topic).keys(),
    ...Object.keys(topic.decisions ?? {}),
  ]);
  for (const { name, conditions } of rules) checkCondition(topic, all, name, conditions, note);
  const used = namesUsed(topic);
  for (const id of Object.keys(topic.facts)) {
    const mentioned = used.has(id) || [...used].some((name) => name.startsWith(`${id}.`));
    if (!mentioned) note(`facts ${id}`, 'nothing uses it', 'use it or leave it out');
  }
  for (const id of Object.keys(topic.parameters)) {
    if (!used.has(id)) note(`parameters ${id}`, 'nothing uses it', 'use it or leave it out');
  }
  const asked = [...Object.entries(topic.limits), ...Object.entries(topic.findings)];
  for (const [id, entry] of asked) {
    const names = [
      ...(entry.askedBy ?? []),
      ...('askedByKnown' in entry ? (entry.askedByKnown ?? []) : []),
    ];
    for (const name of names) {
      if (!Object.hasOwn(topic.facts, name))
        note(id, `it is asked by “${name}”, which is no fact`, 'name a fact');
    }
  }
  const results = [
    ...Object.values(topic.apart),
    ...topic.headline,
    ...(topic.tells ?? []).flatMap(({ of, when }) => (when === undefined ? [of] : [of, when])),
    ...topic.assumptions.map((a) => a.when),
  ];
  for (const name of results) {
    if (!all.has(name)) note(name, 'there is no such result', 'name a formula');
  }
  for (const { of, says } of topic.tells ?? []) {
    if (!says.includes('{of}')) note(of, 'it is told without its value', 'write {of} for it');
  }
}

/** Everything that is wrong with a rule set; nothing, when it may be used. */
export function checkTopic(topic: Topic): readonly Problem[] {
  const problems: Problem[] = [];
  const note: Note = (fact, found, wanted) =>
    problems.push({ code: 'rule-set', fact, found, wanted });
  checkSources(topic, note);
  checkNumbers(topic, note);
  checkFormulas(topic, note);
  checkNames(topic, conditionRules(topic), note);
  checkChanges(topic, note);
  return problems;
}
