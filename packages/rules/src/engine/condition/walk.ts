import type { Condition } from '../define/shapes';
import { compare, type Named, type Question } from './operators';
import type { ConditionRule } from './rules';

export type NamedValues = ReadonlyMap<string, Named>;

export function valueNamed(values: NamedValues, name: string): Named {
  const found = values.get(name);
  if (!found) throw new Error(`There is no value “${name}” to compare.`);
  return found;
}

/** The value of a name. */
export type Look = (name: string) => Named;

export const lookingIn =
  (values: NamedValues): Look =>
  (name) =>
    valueNamed(values, name);

/** Whether a condition holds, for one of the two questions; the same JSON, read synchronously. */
export function holds(condition: Condition, question: Question, look: Look): boolean {
  if ('all' in condition) return condition.all.every((each) => holds(each, question, look));
  if ('any' in condition) return condition.any.some((each) => holds(each, question, look));
  const { fact, operator, value } = condition;
  const right = typeof value === 'object' && 'fact' in value ? look(value.fact) : value;
  return compare(question, operator, look(fact), right);
}

/** The names of the rules that hold. */
export function rulesHolding(
  rules: readonly ConditionRule[],
  question: Question,
  values: NamedValues,
): ReadonlySet<string> {
  const look = lookingIn(values);
  return new Set(
    rules.filter((rule) => holds(rule.conditions, question, look)).map((rule) => rule.name),
  );
}
