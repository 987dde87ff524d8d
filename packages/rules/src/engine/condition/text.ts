import type { Condition, Operator } from '../define/shapes';
import type { Node } from '../formula/grammar/nodes';
import { FormulaError } from '../formula/grammar/problem';
import { parseFormula } from '../formula/parse';
import type { Compare } from '../value/truth';

/**
 * A condition as it is read, made into the JSON that json-rules-engine takes.
 *
 *     tongue.share < tongue.stopBelow && trailer.coupling == 'ball'
 *     a, !a                a yes/no name that is so, or is not
 *     a == 'x' || a == 'y' a choice that is one of several options
 *
 * Each comparison is of one named value with another, or of a choice with a word.
 */

const operators: Readonly<Record<Compare, Operator>> = {
  '<': 'lessThan',
  '<=': 'lessThanInclusive',
  '>': 'greaterThan',
  '>=': 'greaterThanInclusive',
  '==': 'equal',
  '!=': 'notEqual',
};

function nameIn(node: Node, text: string): string {
  if (node.kind === 'name') return node.id;
  throw new FormulaError(text, 'reckoned-in-condition');
}

const flat = (node: Node, kind: 'both' | 'either'): readonly Node[] =>
  node.kind === kind ? [...flat(node.a, kind), ...flat(node.b, kind)] : [node];

/** The one comparison of a choice with a word that a condition is, if it is one. */
function wordOf(condition: Condition): { fact: string; word: string } | undefined {
  if ('all' in condition) {
    const [only, ...more] = condition.all;
    return only && more.length === 0 ? wordOf(only) : undefined;
  }
  if ('any' in condition || typeof condition.value !== 'string') return undefined;
  const { fact, operator, value } = condition;
  return operator === 'equal' ? { fact, word: value } : undefined;
}

/**
 * Any of several conditions. One choice that is one of several words is asked in one comparison:
 * it is then certain though nobody knows which of them it is.
 */
export function anyOf(conditions: readonly Condition[]): Condition {
  const words = new Map<string, string[]>();
  const others: Condition[] = [];
  for (const each of conditions) {
    const found = wordOf(each);
    if (!found) others.push(each);
    else words.set(found.fact, [...(words.get(found.fact) ?? []), found.word]);
  }
  const asked = [...words].map(([fact, options]): Condition => {
    const [only = '', ...more] = options;
    return more.length === 0
      ? { fact, operator: 'equal', value: only }
      : { fact, operator: 'in', value: options };
  });
  const all = [...asked, ...others];
  const [only] = all;
  return only && all.length === 1 ? only : { any: all };
}

function conditionOf(node: Node, text: string): Condition {
  switch (node.kind) {
    case 'both':
      return { all: flat(node, 'both').map((each) => conditionOf(each, text)) };
    case 'either':
      return anyOf(flat(node, 'either').map((each) => conditionOf(each, text)));
    case 'name':
      return { fact: node.id, operator: 'equal', value: 'yes' };
    case 'not':
      return { fact: nameIn(node.of, text), operator: 'equal', value: 'no' };
    case 'compare': {
      const fact = nameIn(node.a, text);
      const operator = operators[node.op];
      if (node.b.kind === 'word') return { fact, operator, value: node.b.text };
      return { fact, operator, value: { fact: nameIn(node.b, text) } };
    }
    default:
      throw new FormulaError(text, 'not-a-condition');
  }
}

/** json-rules-engine wants `all` or `any` on top. */
export const onTop = (condition: Condition): Condition =>
  'fact' in condition ? { all: [condition] } : condition;

/** @throws FormulaError naming the text that is no condition. */
export const conditionFrom = (when: string | Condition): Condition =>
  onTop(typeof when === 'string' ? conditionOf(parseFormula(when), when) : when);
