import type { Condition, Source, Topic } from '../define/shapes';
import { allFormulas, declaredUnit } from '../define/topic';
import { compile } from '../formula/compile';
import { FormulaError } from '../formula/grammar/problem';
import { namesIn } from '../formula/kinds';
import { parseFormula } from '../formula/parse';
import { topicProblems } from './asked';
import { checkBeyond, namesBeyond } from './beyond';
import { checkChanges } from './changes';
import { checkConditions, rulesOf } from './conditions';
import { checkEverybody } from './everybody';
import { checkFallbacks } from './fallbacks';
import { isPlain } from './given';
import { checkKeys } from './keys';
import { checkNeverIf } from './never-if';
import { checkNumbers, checkPossible } from './numbers';
import type { Problem } from './problem';
import { shapeProblems } from './shaped';
import { namesOf } from './sound';
import { checkTexts } from './text';
import { checkToldAbout, namesSaid } from './told-about';
import { trying } from './tried';

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

function checkFormulas(topic: Topic, note: Note): void {
  const all = allFormulas(topic);
  const units = new Map([...all].map(([name, { unit }]) => [name, unit]));
  for (const name of all.keys()) {
    if (!/^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/.test(name)) {
      note(`formulas ${name}`, 'its name is not dotted camelCase', 'write it as axle.front');
    }
  }
  checkTexts(topic, note);
  checkBeyond(topic, units, note);
  try {
    compile(topic);
  } catch (problem) {
    if (!(problem instanceof FormulaError)) throw problem;
    note('formulas', problem.message, 'each may use only what does not use it');
  }
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
  for (const { conditions } of rulesOf(topic)) noteCondition(conditions);
  for (const name of namesBeyond(topic)) used.add(name);
  return used;
}

function checkNames(topic: Topic, note: Note): void {
  const all = namesOf(topic);
  checkConditions(topic, all, note);
  checkToldAbout(topic, all, note);
  const used = namesUsed(topic);
  const said = namesSaid(topic);
  for (const id of Object.keys(topic.facts)) {
    const mentioned = used.has(id) || [...used].some((name) => name.startsWith(`${id}.`));
    if (!mentioned) note(`facts ${id}`, 'nothing uses it', 'use it or leave it out');
  }
  for (const id of Object.keys(topic.parameters)) {
    if (!used.has(id) && !said.has(id))
      note(`parameters ${id}`, 'nothing uses it', 'use it or leave it out');
  }
  const asked = [...Object.entries(topic.limits), ...Object.entries(topic.findings)];
  for (const [id, entry] of asked) {
    const names = [
      ...(entry.askedBy ?? []),
      ...('askedByKnown' in entry ? (entry.askedByKnown ?? []) : []),
      ...('settles' in entry && Array.isArray(entry.settles) ? entry.settles : []),
    ];
    for (const name of names) {
      if (!Object.hasOwn(topic.facts, name))
        note(id, `it is asked by “${name}”, which is no fact`, 'name a fact');
    }
    const { askedWhen } = entry;
    if (askedWhen !== undefined && declaredUnit(topic, askedWhen) !== 'yes-no') {
      note(
        id,
        `it is asked when “${askedWhen}” holds, which is no yes/no`,
        'name a yes/no formula',
      );
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

function problemsOf(topic: Topic, isKept: boolean): readonly Problem[] {
  const none = topicProblems(topic);
  if (none.length > 0) return none;
  const problems: Problem[] = [...shapeProblems(topic)];
  const note: Note = (fact, found, wanted) =>
    problems.push({ code: 'rule-set', fact, found, wanted });
  // What is of another kind than it must be is looked into no further; of a condition more can be told.
  if (problems.length > 0) {
    const isInFindings = problems.every(({ fact }) => /^findings\./.test(fact));
    if (isInFindings && Object.values(topic.findings).every(isPlain)) {
      checkConditions(topic, namesOf(topic), note);
    }
    return problems;
  }
  checkKeys(topic, note);
  checkSources(topic, note);
  checkNumbers(topic, note);
  checkFormulas(topic, note);
  checkNames(topic, note);
  checkChanges(topic, note);
  if (isKept) return problems;
  checkPossible(topic, note);
  checkNeverIf(topic, note);
  // What is broken cannot be tried.
  const isWhole = problems.length === 0;
  const reckon = isWhole ? trying(compile(topic)) : undefined;
  checkEverybody(topic, namesOf(topic), note, reckon);
  checkFallbacks(topic, note, reckon);
  return problems;
}

/** Everything that is wrong with a rule set; nothing, when it may be used. */
export const checkTopic = (topic: Topic): readonly Problem[] => problemsOf(topic, false);

/**
 * What keeps a rule set that was released from being run. It was looked through when it was released:
 * what is asked of those who write one today, it may lack.
 */
export const checkKept = (topic: Topic): readonly Problem[] => problemsOf(topic, true);
