import type { Condition, Finding, Rulings, Topic } from '../define/shapes';
import { careName } from '../define/topic';
import { anyOf, conditionFrom, onTop } from './text';

/**
 * What a condition means once it holds: a level, or that a limit stops even by the other way of
 * using the rig that may be (`firm`).
 */
export type RuleType = 'stop' | 'unknown' | 'if' | 'care' | 'firm';

/** One condition of a topic, in the shape json-rules-engine takes. */
export type ConditionRule = {
  /** `limit.payload.stop`, `finding.unbraked.care` */
  readonly name: string;
  readonly conditions: Condition;
  readonly event: { readonly type: RuleType; readonly params: { readonly of: string } };
};

const exceeds = (used: string, limit: string): Condition => ({
  all: [{ fact: used, operator: 'greaterThan', value: { fact: limit } }],
});

/** A condition of something that is asked only while a yes/no formula holds. */
export const whenAsked = (condition: Condition, askedWhen: string | undefined): Condition =>
  askedWhen === undefined
    ? condition
    : { all: [condition, { fact: askedWhen, operator: 'equal', value: 'yes' }] };

function ruleOf(of: string, type: RuleType, conditions: Condition): ConditionRule {
  return { name: `${of}.${type}`, conditions, event: { type, params: { of } } };
}

export const rulingLevels = ['stop', 'unknown', 'if', 'care'] as const;
export type RulingLevel = (typeof rulingLevels)[number];

const isSeveral = (rulings: Rulings): rulings is Exclude<Rulings, { readonly when: unknown }> =>
  Array.isArray(rulings);

/** The rulings of one level, in their order. */
export function rulingsAt(finding: Finding, level: RulingLevel) {
  const rulings = finding[level];
  if (rulings === undefined) return [];
  return isSeveral(rulings) ? rulings : [rulings];
}

const made = new WeakMap<Topic, readonly ConditionRule[]>();

/**
 * All conditions of a topic in the order of its declaration. They compare named values only, so the
 * same JSON runs in a stock json-rules-engine on plain numbers.
 */
export function conditionRules(topic: Topic): readonly ConditionRule[] {
  const before = made.get(topic);
  if (before) return before;
  const rules: ConditionRule[] = [];
  for (const [id, { used, limit, margin, relief, askedWhen }] of Object.entries(topic.limits)) {
    const of = `limit.${id}`;
    rules.push(ruleOf(of, 'stop', whenAsked(exceeds(used, limit), askedWhen)));
    if (relief) {
      const ruledOut: Condition = { fact: relief.when, operator: 'equal', value: 'no' };
      rules.push(ruleOf(of, 'firm', { any: [ruledOut, exceeds(used, relief.limit)] }));
    }
    if (margin) {
      rules.push(ruleOf(of, 'care', whenAsked(exceeds(used, careName(id)), askedWhen)));
    }
  }
  for (const [id, finding] of Object.entries(topic.findings)) {
    for (const level of rulingLevels) {
      const all = rulingsAt(finding, level).map(({ when }) => conditionFrom(when));
      if (all.length === 0) continue;
      const any = whenAsked(onTop(anyOf(all)), finding.askedWhen);
      rules.push(ruleOf(`finding.${id}`, level, any));
    }
  }
  made.set(topic, rules);
  return rules;
}

/** Every name a condition compares. */
export function namesCompared(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(namesCompared);
  if ('any' in condition) return condition.any.flatMap(namesCompared);
  const { fact, value } = condition;
  return typeof value === 'object' && 'fact' in value ? [fact, value.fact] : [fact];
}

const named = new WeakMap<Topic, readonly string[]>();

/** The names that all conditions of a topic compare, once each. */
export function allNamesCompared(topic: Topic): readonly string[] {
  const before = named.get(topic);
  if (before) return before;
  const names = [...new Set(conditionRules(topic).flatMap((r) => namesCompared(r.conditions)))];
  named.set(topic, names);
  return names;
}
