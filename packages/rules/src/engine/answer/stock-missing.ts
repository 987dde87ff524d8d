import { wordsOf } from '../check/words-of';
import { conditionRules } from '../condition/rules';
import type { Condition, Operator, Topic } from '../define/shapes';
import { allFormulas, declaredUnit } from '../define/topic';

/**
 * Conditions of a stock json-rules-engine, which has `not`. Ours are refused it, because a missing
 * name would pass; here it is asked for just that.
 */
export type StockCondition =
  | { readonly all: readonly StockCondition[] }
  | { readonly any: readonly StockCondition[] }
  | { readonly not: StockCondition }
  | {
      readonly fact: string;
      readonly operator: Operator;
      readonly value: { readonly fact: string } | string | readonly string[];
    };

/** Holds where a limit or finding cannot be decided, because a name that it compares is missing. */
export type MissingRule = {
  /** `limit.payload.missing` */
  readonly name: string;
  readonly conditions: { readonly all: readonly StockCondition[] };
  readonly event: { readonly type: 'missing'; readonly params: { readonly of: string } };
};

const not = (condition: StockCondition): StockCondition => ({ not: condition });
const all = (of: readonly StockCondition[]): StockCondition => ({ all: of });
const any = (of: readonly StockCondition[]): StockCondition => ({ any: of });

type Asked = (name: string) => StockCondition;

/** Whether a name has a value at all: a number compares with itself, a word is one of its options. */
function presence(topic: Topic): Asked {
  const formulas = allFormulas(topic);
  const unit = (name: string) => formulas.get(name)?.unit ?? declaredUnit(topic, name);
  return (fact) => {
    const options = wordsOf(topic, unit, fact);
    return options
      ? { fact, operator: 'in', value: options }
      : { fact, operator: 'greaterThanInclusive', value: { fact } };
  };
}

/** A condition asked as ours is asked of a range: is it certainly so, whatever the missing names are? */
function certainly(condition: Condition, isThere: Asked): StockCondition {
  if ('all' in condition) return all(condition.all.map((each) => certainly(each, isThere)));
  if ('any' in condition) return any(condition.any.map((each) => certainly(each, isThere)));
  return all([condition, ...namesOf(condition).map(isThere)]);
}

/** The same asked otherwise: could it be so? */
function possibly(condition: Condition, isThere: Asked): StockCondition {
  if ('all' in condition) return all(condition.all.map((each) => possibly(each, isThere)));
  if ('any' in condition) return any(condition.any.map((each) => possibly(each, isThere)));
  return any([condition, ...namesOf(condition).map((name) => not(isThere(name)))]);
}

/** Could it be so, and is it not certainly? Of one comparison that is: whether a name is missing. */
function openly(condition: Condition, isThere: Asked): StockCondition {
  if (!('fact' in condition)) {
    return all([possibly(condition, isThere), not(certainly(condition, isThere))]);
  }
  const [only, ...more] = namesOf(condition).map((name) => not(isThere(name)));
  return only && more.length === 0 ? only : any([...(only ? [only] : []), ...more]);
}

function namesOf({ fact, value }: Extract<Condition, { fact: string }>): readonly string[] {
  return typeof value === 'object' && 'fact' in value ? [fact, value.fact] : [fact];
}

/**
 * For each limit and finding a rule that says that it cannot be decided:
 *
 *     no certain stop, and some level that could be and is not certainly so
 *
 * A program that runs the conditions without it would take silence for “in order”.
 */
export function missingRules(topic: Topic): readonly MissingRule[] {
  const isThere = presence(topic);
  const rules = conditionRules(topic);
  const subjects = [...new Set(rules.map(({ event }) => event.params.of))];
  return subjects.map((of) => {
    const own = rules.filter(({ event }) => event.params.of === of);
    const at = (type: string) => own.find(({ event }) => event.type === type)?.conditions;
    const [stop, firm] = [at('stop'), at('firm')];
    const sure = [stop, firm].flatMap((each) => (each ? [certainly(each, isThere)] : []));
    const open = own.map(({ event, conditions }) => {
      const itself = openly(conditions, isThere);
      return event.type === 'firm' && stop ? all([possibly(stop, isThere), itself]) : itself;
    });
    return {
      name: `${of}.missing`,
      conditions: { all: [...(stop ? [not(all(sure))] : []), any(open)] },
      event: { type: 'missing', params: { of } },
    };
  });
}
