import type { Condition, Topic } from '../define/shapes';
import { allFormulas, careName } from '../define/topic';

/** One condition of a topic, in the shape json-rules-engine takes. */
export type ConditionRule = {
  /** `limit.payload.stop`, `finding.unbraked.care` */
  readonly name: string;
  readonly conditions: Condition;
  readonly event: { readonly type: 'stop' | 'care'; readonly params: { readonly of: string } };
};

/** json-rules-engine wants `all` or `any` on top. */
const onTop = (condition: Condition): Condition =>
  'fact' in condition ? { all: [condition] } : condition;

const exceeds = (used: string, limit: string): Condition => ({
  all: [{ fact: used, operator: 'greaterThan', value: { fact: limit } }],
});

function ruleOf(of: string, type: 'stop' | 'care', conditions: Condition): ConditionRule {
  return { name: `${of}.${type}`, conditions: onTop(conditions), event: { type, params: { of } } };
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
  for (const [id, { used, limit, margin }] of Object.entries(topic.limits)) {
    rules.push(ruleOf(`limit.${id}`, 'stop', exceeds(used, limit)));
    if (margin) rules.push(ruleOf(`limit.${id}`, 'care', exceeds(used, careName(id))));
  }
  for (const [id, { stop, care }] of Object.entries(topic.findings)) {
    if (stop) rules.push(ruleOf(`finding.${id}`, 'stop', stop.when));
    if (care) rules.push(ruleOf(`finding.${id}`, 'care', care.when));
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

/** What a dealer tool that already runs json-rules-engine imports: rules, formulas, facts, sources. */
export function publish(topic: Topic): object {
  return {
    ...topic,
    formulas: Object.fromEntries(allFormulas(topic)),
    conditions: conditionRules(topic),
  };
}
