import type { Condition } from '../define/shapes';
import { Engine, type NestedCondition, type TopLevelCondition } from './library';
import { compare, type Literal, type Named, operatorNames, type Question } from './operators';
import { type ConditionRule, namesCompared } from './rules';
import { type NamedValues, valueNamed } from './walk';

const builtIn = ['contains', 'doesNotContain'];
const decorators = ['someFact', 'someValue', 'everyFact', 'everyValue', 'swap', 'not'];

const copy = (condition: Condition): NestedCondition => {
  if ('all' in condition) return { all: condition.all.map(copy) };
  if ('any' in condition) return { any: condition.any.map(copy) };
  return { ...condition };
};

function top(condition: Condition): TopLevelCondition {
  if ('all' in condition) return { all: condition.all.map(copy) };
  if ('any' in condition) return { any: condition.any.map(copy) };
  return { all: [copy(condition)] };
}

/** Conditions name whole values; a path into one is refused when a topic is checked. */
function noPaths(): never {
  throw new Error('A condition may not look inside a value.');
}

/** An engine with the rules of one question in it, and the names that they compare. */
type Ready = { readonly engine: Engine; readonly names: readonly string[] };

function made(rules: readonly ConditionRule[], question: Question): Ready {
  const engine = new Engine([], { pathResolver: noPaths });
  for (const name of builtIn) engine.removeOperator(name);
  for (const name of decorators) engine.removeOperatorDecorator(name);
  for (const name of operatorNames) {
    engine.addOperator(name, (left: Named, right: Named | Literal) =>
      compare(question, name, left, right),
    );
  }
  for (const { name, conditions, event } of rules) {
    engine.addRule({ name, conditions: top(conditions), event });
  }
  return { engine, names: rules.flatMap(({ conditions }) => namesCompared(conditions)) };
}

/** Engines that no run has in hand; to make one costs as much as to run it. */
const idle = new WeakMap<readonly ConditionRule[], Record<Question, Ready[]>>();
const mostIdle = 4;

/**
 * json-rules-engine, behind this one module: the same conditions, run once for each question with
 * its operators replaced by ours over ranges. Two runs at once on one engine can lose results
 * without a word, so each run has an engine to itself and every rule must be accounted for.
 */
export async function rulesHoldingByEngine(
  rules: readonly ConditionRule[],
  question: Question,
  values: NamedValues,
): Promise<ReadonlySet<string>> {
  const waiting = idle.get(rules) ?? { certain: [], possible: [] };
  idle.set(rules, waiting);
  const ready = waiting[question].pop() ?? made(rules, question);
  const facts: Record<string, Named> = {};
  for (const name of ready.names) facts[name] ??= valueNamed(values, name);
  const { results, failureResults } = await ready.engine.run(facts);
  const told = results.length + failureResults.length;
  if (told !== rules.length)
    throw new Error(`Of ${rules.length} rules only ${told} gave a result.`);
  if (waiting[question].length < mostIdle) waiting[question].push(ready);
  return new Set(results.map((result) => result.name));
}
