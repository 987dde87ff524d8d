import type { Condition, Finding, Limit, Source, Topic } from '../define/shapes';
import { allFormulas, declaredUnit, namesOf } from '../define/topic';
import { compile } from '../formula/compile';
import { FormulaError } from '../formula/grammar/problem';
import { namesIn } from '../formula/kinds';
import { parseFormula } from '../formula/parse';
import { topicProblems } from './asked';
import { checkBeyond, namesBeyond } from './beyond';
import { checkChanges } from './changes';
import { checkConditions, checkRulings, rulesOf } from './conditions';
import { checkEverybody } from './everybody';
import { checkFallbacks } from './fallbacks';
import { isPlain } from './given';
import { checkKeys } from './keys';
import { meant } from './near';
import { checkNeverIf } from './never-if';
import { type Note, noting } from './noted';
import { checkNumbers, checkPossible } from './numbers';
import type { Problem } from './problem';
import { shapeProblems } from './shaped';
import { checkTexts } from './text';
import { checkToldAbout, namesSaid } from './told-about';
import { noteFormula } from './told-of-formula';
import { trying } from './tried';

const classes: readonly string[] = [
  'published',
  'common-practice',
  'from-memory',
  'house',
  'invented',
];

function checkSources(topic: Topic, note: Note): void {
  const check = (at: string, source: Source | undefined): void => {
    if (!source || source.cite.trim() === '') note('no-source', at, '');
    else if (!classes.includes(source.class)) {
      note('no-such-class', at, source.class, { options: classes });
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
      note('wrong-name', `formulas ${name}`, name);
    }
  }
  checkTexts(topic, note);
  checkBeyond(topic, units, note);
  try {
    compile(topic);
  } catch (problem) {
    // What cannot be read by itself is told by its own place.
    if (!(problem instanceof FormulaError)) throw problem;
    if (problem.code === 'circular-formulas') noteFormula(problem, 'formulas', [], note);
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
    if (!mentioned) note('not-used', `facts ${id}`, id);
  }
  for (const id of Object.keys(topic.parameters)) {
    if (!used.has(id) && !said.has(id)) note('not-used', `parameters ${id}`, id);
  }
  checkAsked(topic, all, note);
  const tells = topic.tells ?? [];
  const results: Readonly<Record<string, readonly string[]>> = {
    apart: Object.values(topic.apart),
    headline: topic.headline,
    tells: tells.flatMap(({ of, when }) => (when === undefined ? [of] : [of, when])),
    assumptions: topic.assumptions.map(({ when }) => when),
  };
  for (const [at, names] of Object.entries(results)) {
    for (const name of names) {
      if (!all.has(name)) note('not-a-result', at, name, meant(name, all));
    }
  }
  for (const { of, says } of tells) {
    if (!says.includes('{of}')) note('told-without-value', 'tells', of);
  }
}

/** By what limits and findings are asked. */
function checkAsked(topic: Topic, all: ReadonlySet<string>, note: Note): void {
  const { facts, limits, findings } = topic;
  for (const [kind, group] of Object.entries({ limits, findings })) {
    for (const [id, entry] of Object.entries<Limit | Finding>(group)) {
      const { askedBy = [], askedWhen } = entry;
      const byKnown = 'askedByKnown' in entry ? (entry.askedByKnown ?? []) : [];
      const settling = 'settles' in entry && Array.isArray(entry.settles) ? entry.settles : [];
      for (const name of [...askedBy, ...byKnown, ...settling]) {
        if (!Object.hasOwn(facts, name))
          note('not-a-fact', `${kind} ${id} askedBy`, name, meant(name, Object.keys(facts)));
      }
      if (askedWhen !== undefined && declaredUnit(topic, askedWhen) !== 'yes-no') {
        note('not-yes-no', `${kind} ${id} askedWhen`, askedWhen, meant(askedWhen, all));
      }
    }
  }
}

function problemsOf(topic: Topic, isKept: boolean): readonly Problem[] {
  const none = topicProblems(topic);
  if (none.length > 0) return none;
  const problems: Problem[] = [...shapeProblems(topic)];
  const note = noting(problems);
  // What is of another kind than it must be is looked into no further; of a condition more can be told.
  if (problems.length > 0) {
    const isInFindings = problems.every(({ fact }) => /^findings\./.test(fact));
    if (isInFindings && Object.values(topic.findings).every(isPlain)) {
      checkRulings(topic, namesOf(topic), note);
    }
    return problems;
  }
  checkKeys(topic, note);
  checkSources(topic, note);
  checkNumbers(topic, note);
  // What is kept in no unit cannot be looked into.
  if (problems.some(({ code }) => code === 'not-a-unit')) return problems;
  checkFormulas(topic, note);
  checkNames(topic, note);
  checkChanges(topic, note);
  if (isKept) return problems;
  checkPossible(topic, note);
  checkNeverIf(topic, note);
  // What is broken cannot be tried.
  const isWhole = problems.length === 0;
  const reckon = isWhole ? trying(compile(topic)) : undefined;
  checkEverybody(topic, namesOf(topic), problems, reckon);
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
