import { operatorNames } from '../condition/operators';
import { type ConditionRule, conditionRules, rulingLevels, rulingsAt } from '../condition/rules';
import { conditionFrom } from '../condition/text';
import type { Condition, Topic } from '../define/shapes';
import { againstName, allFormulas, declaredUnit } from '../define/topic';
import { FormulaError } from '../formula/grammar/problem';
import { holesIn } from '../words/fill';
import { described, isPlain } from './given';
import { meant } from './near';
import type { Note } from './noted';
import { noteFormula } from './told-of-formula';
import { wordsOf } from './words-of';

/** A unit as a sentence names it; a count has none. */
const unitSaid = (unit: string | undefined): string =>
  unit === undefined ? 'nothing' : unit === '' ? 'a plain number' : unit;

const keysAllowed: Readonly<Record<string, readonly string[]>> = {
  all: ['all'],
  any: ['any'],
  fact: ['fact', 'operator', 'value'],
};

/** What a condition can compare a value with: another by its name, a word, or one of several. */
const isCompared = (value: unknown): boolean =>
  isPlain(value)
    ? typeof value.fact === 'string'
    : [value].flat().every((each) => typeof each === 'string');

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
    if (!isPlain(condition)) {
      note('not-a-condition', at, described(condition));
      return;
    }
    const keys = Object.keys(condition);
    const shape = keys.includes('all') ? 'all' : keys.includes('any') ? 'any' : 'fact';
    const strange = keys.find((key) => !keysAllowed[shape]?.includes(key));
    if (strange) {
      note('strange-condition', at, strange, { options: Object.keys(keysAllowed) });
      return;
    }
    if ('all' in condition || 'any' in condition) {
      const inner = 'all' in condition ? condition.all : condition.any;
      if (!Array.isArray(inner)) {
        note('wrong-part', `${at} ${shape}`, described(inner), { of: 'a list of conditions' });
        return;
      }
      if (inner.length === 0) note('empty-condition', at, shape);
      for (const each of inner) walk(each);
      return;
    }
    const { fact, operator, value } = condition;
    const parts = { fact, operator, value };
    const isLacking = Object.entries(parts).filter(([name, part]) =>
      name === 'value' ? !isCompared(part) : typeof part !== 'string',
    );
    for (const [name, part] of isLacking) {
      const of = name === 'value' ? 'a word, a list of words or { fact }' : 'a text';
      if (part === undefined) note('missing-part', `${at} ${name}`, '', { of });
      else note('wrong-part', `${at} ${name}`, described(part), { of });
    }
    if (isLacking.length > 0) return;
    if (!operatorNames.includes(operator)) {
      const options = operatorNames;
      note('not-an-operator', at, operator, { options, ...meant(operator, options) });
    }
    const names = typeof value === 'object' && 'fact' in value ? [fact, value.fact] : [fact];
    for (const name of names) {
      if (!all.has(name)) {
        const isWord = (wordsOf(topic, unit, fact) ?? []).includes(name);
        if (isWord) note('word-without-quotes', at, name, { of: fact });
        else note('not-compared', at, name, meant(name, all));
      }
    }
    const [left, right] = names.map(unit);
    const worded = wordsOf(topic, unit, fact) !== undefined;
    if (names.length === 2 && left !== right) {
      note('compared-units', at, unitSaid(right), { of: unitSaid(left) });
    }
    if (names.length === 1 && !worded) {
      note('literal-number', at, String(value), { of: fact });
    }
    if (names.length === 1 && worded) checkWords(fact, value);
  };
  const checkWords = (fact: string, value: unknown): void => {
    const options = wordsOf(topic, unit, fact) ?? [];
    for (const word of Array.isArray(value) ? value : [value]) {
      if (!options.includes(word))
        note('not-an-option', at, String(word), {
          ...{ of: fact, options: options.filter(Boolean) },
          ...meant(String(word), options),
        });
    }
  };
  walk(raw);
}

/** Rulings as they are written: what reading them as conditions would leave out is told too. */
export function checkRulings(topic: Topic, all: ReadonlySet<string>, note: Note): void {
  for (const [id, finding] of Object.entries(topic.findings)) {
    for (const level of rulingLevels) {
      const at = `finding.${id}.${level}`;
      // What is no ruling at all is told with its shape.
      for (const { when, proviso, ...words } of rulingsAt(finding, level).filter(isPlain)) {
        if (typeof when === 'string') checkConditionText(topic, all, at, when, note);
        else checkCondition(topic, all, at, when, note);
        const isProviso = level === 'if' || (level === 'stop' && finding.stopOpen === 'if');
        if (isProviso && !proviso) {
          note('no-proviso', at, '');
        }
        checkHoles(all, at, [words.wrong, words.because, words.do, proviso], note);
      }
    }
    const { open, otherwise } = finding;
    checkHoles(all, `finding.${id}`, [otherwise, open?.wrong, open?.because, open?.do], note);
  }
  for (const [id, { do: over, near, cautious, limit }] of Object.entries(topic.limits)) {
    checkHoles(all, `limit.${id}`, [over, near], note);
    if (!isPlain(cautious)) continue;
    const { when, used } = cautious;
    const isEstimate: Condition = { fact: when, operator: 'equal', value: 'yes' };
    const exceeds: Condition = { fact: used, operator: 'greaterThan', value: { fact: limit } };
    checkCondition(topic, all, `limit.${id}.cautious`, { all: [isEstimate, exceeds] }, note);
  }
}

function checkConditionText(
  topic: Topic,
  all: ReadonlySet<string>,
  at: string,
  when: string,
  note: Note,
): void {
  try {
    checkCondition(topic, all, at, conditionFrom(when), note);
  } catch (problem) {
    noteFormula(problem, at, all, note);
  }
}

function checkHoles(
  all: ReadonlySet<string>,
  at: string,
  texts: readonly (string | undefined)[],
  note: Note,
): void {
  // What is no text is told with its shape.
  for (const name of texts.flatMap((text) => (typeof text === 'string' ? holesIn(text) : []))) {
    if (!all.has(name) && name !== againstName) note('not-a-hole', at, name, meant(name, all));
  }
}

/** The conditions of a topic; none where one cannot be read, which is told by its place. */
export function rulesOf(topic: Topic): readonly ConditionRule[] {
  try {
    return conditionRules(topic);
  } catch (problem) {
    if (!(problem instanceof FormulaError)) throw problem;
    return [];
  }
}

/** Every condition of a topic, and the words that go with it. */
export function checkConditions(topic: Topic, all: ReadonlySet<string>, note: Note): void {
  checkRulings(topic, all, note);
  for (const { name, conditions } of rulesOf(topic)) {
    if (name.startsWith('limit.')) checkCondition(topic, all, name, conditions, note);
  }
}
